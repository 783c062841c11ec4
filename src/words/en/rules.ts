// Floor 7. English: what stands around the rules for studies and drawings, which are English in every language.

export const rules = {
  "rules.title": "Rules for studies and drawings",
  /** For search. */
  "rules.description":
    "What each message about a study or a drawing means, with an example that is wrong and one that is right.",
  "rules.lede":
    "When you check a study, each fault is reported with the name of a rule. Here are all {count, plural, one {# rule} other {# rules}}: what each means, why it is there, and an example that is wrong beside one that is right.",
  "rules.note":
    "Each is an error, which leaves the study out of the gallery until it is mended, unless it is marked a warning, which leaves it in. Examples in a frame are what is typed, and have been tried: the wrong one raises its rule and nothing else, the right one raises nothing.",
  /** The label of a field to type in. */
  "rules.find": "Find rules with these words",
  "rules.count": "{count, plural, one {# rule} other {# rules}}",
  /** What is said of a narrowed list. `found` is a number that changes as one types. */
  "rules.found": "{found} of {count, plural, one {# rule} other {# rules}}",
  /** Stands before the name of a rule. */
  "rules.warning": "Warning",
  "rules.link": "Link to this rule",
  /** Over an example: told in words, typed in a file, or about the folder of the gallery. */
  "rules.wrong": "Wrong",
  "rules.wrongIn": "Wrong, in {file}",
  "rules.wrongInFolder": "Wrong, in the content folder",
  "rules.right": "Right",
  "rules.rightIn": "Right, in {file}",
  "rules.rightInFolder": "Right, in the content folder",
  /** What is right where nothing need be written. */
  "rules.leaveOut": "Leave it out.",
} as const;
