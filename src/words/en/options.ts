// Floor 7. English: other single changes of a flag.

export const options = {
  "options.caption": "The best replacement for each colour",
  /** Heading. */
  "options.byColour": "The best for each colour",
  /** Heading: every change in one table. */
  "options.all": "All at once",
  "options.how":
    "Each colour of the flag is tried with the palette, with the flag’s other colours, and with the nearest shade of its own hue that clears. They stand by their numbers; which looks best is for the author to say. <how>How options are ranked</how>",
  /** Heading. */
  "options.tried": "Also tried by the author",
  /** Head of a column. */
  "options.changed": "Colour changed",
  /** Head of a column. */
  "options.best": "Best replacement",
  /** Head of a column beside “Clarity”. */
  "options.ofFocus": "Of what has to be seen",
  /** Head of a column. */
  "options.worse": "What gets worse",
  "options.share": "{share} of the flag",
  /** In the place of a best replacement. */
  "options.none": "None that leaves every charge its outline.",
  "options.bestLabel": "Best:",
  "options.worseLabel": "Gets worse:",
  /** Nothing gets worse. */
  "options.nothing": "Nothing.",
  /** Under the heading “Other changes of one colour”: beside which study. */
  "options.beside": "beside <study>{title}</study>",
  /** Heading of a page. */
  "options.title": "Other changes of one colour",
  /** Title of the window. */
  "options.titleOf": "Other changes of one colour, {study}",
  "options.description": "Every other change of one colour beside {title}, measured.",
  /** `standing` is a sentence: “7 of 35 changes of one colour are clearer.” */
  "options.standing": "This study: {standing}",
  "options.whole": "The original has a clarity of {clarity}: no change can raise it.",
  /** Two names of colours. */
  "options.clearest": "The clearest, {was} to {is}, reaches {clarity}.",
  "options.clearestTried": "The clearest, {was} to {is}, which the author tried, reaches {clarity}.",
  "options.clearestTriedInPart":
    "The clearest, {was} to {is} in {part}, which the author tried, reaches {clarity}.",
  "options.clearerTried": "The author’s {is} for {was} reaches {clarity}.",
  "options.clearerTriedInPart": "The author’s {is} for {was} in {part} reaches {clarity}.",
  /** Where a part of the flag has no name. */
  "options.onePart": "one part",
  /** The name of a colour follows. */
  "options.noneLevel": "No change helps; as clear as today:",
  "options.noneNearest": "No change helps; nearest:",
  "options.triedHas": "{name}, which the author tried, has {clarity}",
  /** What a flag with another change is called. */
  "options.option": "Option",
  /** For those who do not see it. */
  "options.triedAlt": "The flag where {was} is {is}",
  "options.triedAltInPart": "The flag where {was} is {is} in {part}",
  "options.changeInPart": "{before} becomes {after} in {part}.",
  "options.figure": "Clarity {clarity}",
  "options.figureAndFocus": "Clarity {clarity}, of what has to be seen {focus}",
  "options.strengthRises":
    "clarity stays, and strength, how far edges go beyond clear, rises from {was} to {is}",
  "options.strengthFalls":
    "clarity stays, and strength, how far edges go beyond clear, falls from {was} to {is}",
  "options.verdict": "{verdict}.",
  "options.verdictWhy": "{verdict}: {why}.",
} as const;
