// Floor 7. English: the letter or the form by which a reader answers.

export const answer = {
  /** Behind the link “Argue with this”. */
  "answer.byMail": "by mail to {address}, with the address of this page and its numbers in the letter.",
  /** Behind the link “Argue with this”; the host of a form. */
  "answer.at": "at {host}.",
  "answer.atWithAddress": "at {host}, with the address of this page.",
  "answer.atWithNumbers": "at {host}, with the numbers of this page.",
  "answer.atWithBoth": "at {host}, with the address of this page and its numbers.",
  /** The subject of a letter that names a flag. */
  "answer.flagFor": "A flag for {gallery}",
  /** A line of that letter, to be filled in. */
  "answer.flag": "The flag:",
  /** A line of that letter, to be filled in. */
  "answer.why": "Why:",
  /** Stands for the name of who answers, until they type it. */
  "answer.reader": "A reader",
  /** Stands for the text of an answer, until it is typed. */
  "answer.question": "Why?",
} as const;
