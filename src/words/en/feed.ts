// Floor 7. English: what readers of feeds see, and the caption of a flag on somebody else’s page.

export const feed = {
  /** The feed of decisions; `title` is the gallery’s. */
  "feed.decisions": "{title}: decisions",
  /** The title of a decision: what was decided, as a heading, and the study. */
  "feed.decision": "{status}: {title}",
  /** What a study stands at, as a heading, what that means, and the decision, a sentence, where there is one. */
  "feed.status": "{status}, {meaning}.",
  "feed.statusDecided": "{status}, {meaning}. {decision}",
  "feed.redesigns": "The redesigns are unofficial studies.",
  /** `change` is a sentence, `verdict` a heading: “Clearer”. */
  "feed.proposed": "{change} {verdict}: clarity {before} → {after}.",
  /** In place of the two pictures. */
  "feed.flagToday": "{flag} today",
  "feed.flagRedesign": "{flag}, redesign",
  /** Captions, by the verdict. */
  "feed.clearer": "<a>{name}</a>: clearer. Unofficial study.",
  "feed.atAPrice": "<a>{name}</a>: clearer, at a price. Unofficial study.",
  "feed.mixed": "<a>{name}</a>: mixed. Unofficial study.",
  "feed.lessClear": "<a>{name}</a>: less clear. Unofficial study.",
  "feed.noGain": "<a>{name}</a>: no gain. Unofficial study.",
} as const;
