// Floor 7. English: facts beside the numbers of a study.

export const facts = {
  "facts.heading": "Facts beside the numbers, none of them a score",
  /** Of a table, read to screen readers. */
  "facts.caption": "Facts beside the numbers",
  /** Head of a column. */
  "facts.fact": "Fact",
  "facts.clearShareNote":
    "The clear-edge share jumps where a grade does, so it is data and decides nothing. <near>Near the line</near>",
  "facts.hueNote":
    "Hue alone: a contrast under 30% with ΔE00 of 20 or more, and under 10 in grey. Such an edge goes in dusk, in grey print and for many colour-blind readers. The steps are our own judgement.",
  /** Titles of books stay as they are. */
  "facts.tinctureNote":
    "Rule of tincture: no metal on metal, no colour on colour; A. C. Fox-Davies, <book>A Complete Guide to Heraldry</book>, 1909, chapter VII. Parted fields, fimbriations and furs are exempt; furs are not recognised here.",
  /** Titles of books stay as they are. */
  "facts.countNote":
    "Colours over half a percent of the area. The booklet <book>Good Flag, Bad Flag</book>, 2006, advises two or three; the <book>Guiding Principles of Flag Design</book>, 2014, prefer fewer to more.",
  /** A link. */
  "facts.more": "More on these facts",
  "facts.clearShare": "Clear-edge share: clear or strong, of all edge length",
  "facts.near": "Grade near the line, another on other cloth",
  "facts.hue": "Told apart by hue alone",
  "facts.tincture": "Against the rule of tincture",
  "facts.count": "Number of colours; guides advise two or three",
  /** No edge. */
  "facts.none": "none",
  /** A pair of colours; heraldry. */
  "facts.metalOnMetal": "{names}, both metals",
  /** A pair of colours; heraldry. */
  "facts.colourOnColour": "{names}, both colours",
  /** The rule of tincture. */
  "facts.ruleKept": "Nothing goes against it, neither before nor after.",
  "facts.ruleBroken": "Against it before and after: {names}.",
  /** Each is a list of pairs, or facts.none. */
  "facts.ruleMoved": "Against it in the original: {was}. In the redesign: {is}.",
  "facts.exemptFimbriation": "Exempt, a fimbriation: {names}.",
  "facts.exemptField": "Exempt, parts of the field: {names}.",
  /** `lightest` and `darkest` are hex codes. */
  "facts.uneven":
    "An uneven colour: {name} runs from {lightest} to {darkest}; an edge of it is clear only if both ends are.",
} as const;
