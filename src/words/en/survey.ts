// Floor 7. English: the survey of all flags as they are.

export const survey = {
  "survey.title": "Survey",
  "survey.lede":
    "Every flag of the gallery as it is today: how clear its edges are, which one is weakest, and which colour to change first. The numbers say nothing of beauty or meaning.",
  "survey.flags": "{count, plural, one {# flag} other {# flags}}",
  "survey.only": "{count, plural, one {# flag} other {# flags}}.",
  "survey.ordered": "{count, plural, one {# flag} other {# flags}}, least clear first.",
  /** For search. */
  "survey.description":
    "{count, plural, one {# flag} other {# flags}}, least clear first: the weakest edge of each, the colour to change first, the best single change.",
  "survey.told":
    "{weak, plural, =0 {In none} one {In #} other {In #}} the weakest edge has a contrast under {limit}; {helped, plural, =0 {in none} one {in #} other {in #}} one change of colour brings {points, plural, one {# point} other {# points}} of clarity or more.",
  "survey.how": "How the survey is made",
  "survey.empty": "There is nothing to survey yet.",
  "survey.more": "{count, plural, one {# more flag} other {# more flags}}",
  "survey.rest": "The {listed} least clear are listed; the other {rest} are in the files.",
  /** Headings. */
  "survey.failed": "Not measured",
  "survey.files": "Files",
  "survey.failedRest": "And {count} more, all of them in the JSON file.",
  "survey.csv": "The survey, CSV",
  "survey.json": "The survey, JSON",

  /** The link picture, which shows a sheet of flags. */
  "survey.pictured": "{count, plural, one {# flag} other {# flags}}, least clear first",
  "survey.range": "{least} to {most}",
  "survey.caution": "The numbers say nothing of beauty or meaning.",
  /** For those who do not see it. `flags` is “22 flags, least clear first”, `number` is “17% to 100%”. */
  "survey.alt": "A sheet of flags. Survey: {flags}. Clarity: {number}. {caution}",

  /** The form. */
  "survey.study": "Study",
  "survey.withStudy": "With a study",
  "survey.withoutStudy": "Without one",
  "survey.none": "No flag fits all of this. Take away a word or a choice, or show all.",
  /** What is said of a narrowed list. `found` is a number that changes as one types. */
  "survey.found": "{found} of {count, plural, one {# flag} other {# flags}}",
} as const;
