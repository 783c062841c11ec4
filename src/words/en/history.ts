// Floor 7. English: what came before a study and after it.

export const history = {
  /** The title of an older study follows. */
  "history.follows": "Takes the place of",
  /** The title of a newer study follows. */
  "history.followed": "Followed by",
  /** What was changed on that day, in the words of the author. */
  "history.revised": "<date></date>: {what}",
} as const;
