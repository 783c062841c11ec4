// Floor 7. English: the page of a series, and where a study stands in one.

export const seriesPage = {
  /** `entries` is “6 studies and 1 flag without a study”. */
  "seriesPage.count": "A series of {entries}",
  /** For search, before the sentence that the series ends with. */
  "seriesPage.description": "A series of {entries}.",
  /** Ways to other forms of the series. */
  "seriesPage.show": "Show it step by step",
  "seriesPage.sheet": "Print for a class",
  "seriesPage.vote": "Vote",
  /** One flag of a strip, for those who do not see it. */
  "seriesPage.step": "Number {number}: {title}",
  /** Under the strip of flags. */
  "seriesPage.today": "As they are today",
  /** Headings. */
  "seriesPage.gain": "Clarity, study by study",
  "seriesPage.cite": "Cite this",
  "seriesPage.unofficial": "The redesigns are unofficial studies.",
  /** Over the name of a flag. */
  "seriesPage.bare": "Without a study",
  /** What is asked of such a flag where its author asks nothing. */
  "seriesPage.ask": "What would you change here?",

  /** A heading on the front page. */
  "seriesPage.series": "Series",
  "seriesPage.firstShown": "{entries}, the first {number} shown",
  /** Names the ways between the studies of a series, read to screen readers. */
  "seriesPage.places": "In series",
  /** Numbers as text. */
  "seriesPage.place": "{number} of {count} in <a>{title}</a>",
  "seriesPage.before": "Before it: <a>{title}</a>",
  "seriesPage.next": "Next: <a>{title}</a>",
} as const;
