// Floor 7. English: the table of the survey, what can be done with flags chosen in it, and its picture of the whole field.

export const surveyTable = {
  /** Heading. */
  "surveyTable.every": "Every flag as it is",
  "surveyTable.everyOrdered": "Every flag as it is, least clear first",
  /** What stands over the table. */
  "surveyTable.captionHeads":
    "Large enough: half of what has to be seen is left at that distance, and its largest piece spans 5 arcminutes. No emblem found: the flag is fields alone.",
  /** Under it: what the boxes are for. */
  "surveyTable.choose":
    "Choose flags to see them alone, or to take a list of them to begin studies or a series from.",
  /** Heads of the table. */
  "surveyTable.flag": "Flag",
  "surveyTable.focus": "Clarity of what has to be seen",
  "surveyTable.lasts": "Large enough up to, in flag heights",
  /** In that column. */
  "surveyTable.lastsUnder": "under {distance, number}",
  "surveyTable.lastsOrMore": "{distance, number} or more",
  "surveyTable.weakest": "Weakest edge",
  "surveyTable.first": "Colour to change first",
  "surveyTable.best": "Best change of one colour",
  /** A box to tick, read to screen readers. */
  "surveyTable.chooseOne": "Choose {name}",
  "surveyTable.study": "Study: <a>{title}</a>",
  "surveyTable.named": "Named by readers.",
  "surveyTable.noEmblem": "no emblem found",
  /** Where no emblem was found, behind a column that says so. */
  "surveyTable.noLasts": "–",
  /** After a percentage. */
  "surveyTable.ofContrast": "contrast",
  "surveyTable.ofClarity": "clarity",
  /** Between two colours. */
  "surveyTable.or": "or",
  /** In place of a colour, and of a change. */
  "surveyTable.noFirst": "none",
  "surveyTable.noBest": "none",

  /** How many are chosen; `number` stands for the number itself, which changes. */
  "surveyTable.chosen": "{count, plural, one {{number} flag chosen} other {{number} flags chosen}}",
  /** Buttons and links beside it. */
  "surveyTable.onlyChosen": "Show only these",
  "surveyTable.list": "List to begin studies from",
  "surveyTable.series": "File to begin a series from",
  "surveyTable.chooseNone": "Choose none",
  "surveyTable.showAll": "Show all flags",
  /** Before the heads of the columns, which order the table, where they stand in a line. */
  "surveyTable.sortBy": "Sort by",
  /** How the file with the list begins. The word counterchange and the name flags/ stay as they are. */
  "surveyTable.listHead":
    "Flags chosen from the survey of {gallery}. Type the lines that begin with counterchange in the folder that holds flags/.",
  /** In the file of a series: its title, a note for whoever opens it, and the question it ends with. The word studies: stays. */
  "surveyTable.seriesTitle": "Flags chosen from the survey",
  "surveyTable.seriesNote":
    "For a series that is there: copy the lines from the first - to the last below its “studies:”.",
  "surveyTable.seriesClosing": "Which of their colours would you change, and to what?",

  /** The picture of all flags on one axis of clarity. */
  "field.title": "The whole field",
  "field.about": "Every flag at its clarity today; underlined where a study is about it.",
  "field.past": "Go past the picture",
  "field.without":
    "{count, plural, one {# of one colour has no edge and no place here.} other {# of one colour have no edge and no place here.}}",
  "field.flag": "{name}, clarity {clarity}",
  "field.least": "Least clear: {name}, clarity {clarity}",
  /** `one` and `other` are colours that meet. */
  "field.weakest": "Weakest: {one} / {other}, contrast {contrast}",
} as const;
