// Floor 7. English: the steps of a study or a series for a projector, and what a speaker may say to each.

export const show = {
  /** Titles of windows, and descriptions; a sentence about the study follows. */
  "show.title": "{title}, step by step",
  "show.description": "Unofficial redesign study.",
  "show.seriesDescription": "Unofficial redesign studies, step by step.",
  /** Links back. */
  "show.toStudy": "The study",
  "show.toSeries": "The series",
  /** Read to screen readers: the buttons. */
  "show.steps": "Steps",
  /** Buttons. */
  "show.notes": "Notes",
  "show.back": "Back",
  "show.next": "Next",
  /** In the window of the author’s notes. */
  "show.noNote": "No note for this step.",
  /** Under flags. */
  "show.original": "The original",
  "show.redesign": "The redesign, an unofficial study",
  "show.both": "The original, and the redesign, an unofficial study",
  "show.ofOriginal": "Original",
  "show.ofRedesign": "Redesign, unofficial study",
  "show.redesigns": "Redesigns are unofficial studies",
  /** `from` is a number; the second is the same on a picture. */
  "show.from":
    "From {from, plural, one {<number>#</number> flag height} other {<number>#</number> flag heights}}, enlarged",
  "show.fromStill": "From {from, plural, one {# flag height} other {# flag heights}}, enlarged",
  /** Said: `name` is the flag’s. */
  "show.thisIs": "The flag as it is: {name}.",
  "show.keep": "Keep it in mind as it is.",
  /** A heading of the step, then what is said, here and below. */
  "show.focus": "What has to be seen",
  "show.focusKey":
    "Solid lines are clear, dotted lines are hard to see. The band marks what has to be seen before the rest.",
  "show.focusSaid": "What has to be seen first is {share} of the flag.",
  "show.weakest": "Its weakest edge",
  /** Two colours. */
  "show.weakestKey": "{names}: contrast {contrast}",
  "show.weakestSaid":
    "The weakest edge is where {first} meets {second}. It is {grade} ({contrast}); from {clear} on, an edge is clear.",
  /** In place of the picture. */
  "show.weakestShown": "The place where {names} meet",
  "show.afar": "From afar",
  "show.afarSaid": "This is how the flag looks from far away.",
  "show.colours": "Which colour could change?",
  "show.coloursKey":
    "Each row changes one colour. Under each flag stands its clarity, now {clarity}; the best of a row is underlined.",
  "show.coloursKeyOwn":
    "Each row changes one colour. Under each flag stands its clarity, now {clarity}; the best of a row is underlined, what this study proposes is framed.",
  /** `figures` say what a change comes to. */
  "show.tried": "Tried, an unofficial study. {figures}. {note}",
  /** `change` and `verdict` are sentences. */
  "show.triedSaid": "I also tried this: {change} {verdict} {figures}.",
  "show.before": "Before",
  "show.beforeSaid": "Here once more is the flag as it is.",
  /** `change` is a sentence. */
  "show.afterSaid": "And now: {change} This is an unofficial study.",
  "show.outcomes": "What got better and worse",
  "show.outcomesKey": "Ring: the original. Dot: the redesign.",
  /** `verdict` is a word, “Clearer”; `price` is a sentence or more. */
  "show.priceSaid":
    "{verdict}. The clarity of the original is {before} of 100 points, and that of the redesign {after}. {price}",
  "show.vision": "To colour-blind readers, and in grey",
  /** `visions` are sentences of the next kind. */
  "show.visionSaid": "This is about what readers with a colour-vision deficiency see. {visions}",
  /** “Protan, without the cones for long waves: clarity of the whole flag 74% to 100%.” */
  "show.visionOf": "{heading}, {explanation}: {measure} {before} to {after}.",
  "show.choose": "Original or redesign?",
  "show.chooseSaid": "The original, or the redesign? And what would you say to somebody who chose the other?",
  /** The last step of a series, where its author asks nothing. */
  "show.closing": "What would you change?",
  /** Over a study of a flag that was shown already. */
  "show.another": "{name}: another proposal",
  /** Who made a series, and how it begins. */
  "show.opening": "{authors}: {opening}",
  /** In the table of changes, for screen readers: over the names of its rows; a cell without a change; before that of the study. */
  "show.colourChanged": "Colour changed",
  "show.notTried": "not tried",
  "show.thisStudy": "This study:",
  /** In a cell: the new colour would run into its neighbour. */
  "show.merges": "merges",
} as const;
