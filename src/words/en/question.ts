// Floor 7. English: questions to a class of what a change does, with answers for the teacher.

/** `names`, `name`, `was`, `is`: names of colours, or the two of an edge, as “white / red”. `grade`: weak, soft, clear or strong. */
export const question = {
  "question.hardest":
    "Look at the original from the other end of the room. Which two colours that meet are hardest to tell apart?",
  /** Its answer; the first letter is made a capital. `names`: a list. */
  "question.hardestAnswer": "{names}: contrast {contrast}, {grade}.",
  "question.hardestIsClear": "{names}: contrast {contrast}, {grade}. Even that is clear.",
  "question.lines": "How many lines between two colours has the redesign?",
  "question.linesAnswer": "None that counts: the colours that met have become one.",
  "question.grade":
    "In the redesign {one} beside {other} has a contrast of {contrast}. Which grade is that: weak, soft, clear or strong?",
  /** Answers: limits in percent. */
  "question.weak": "Weak: under {soft}.",
  "question.soft": "Soft: {soft} to under {clear}.",
  "question.clear": "Clear: {clear} to under {strong}.",
  "question.strong": "Strong: {strong} and over.",
  "question.price":
    "The change has a price, told above. Would you pay it? Or which colour of the original would you change, and into what, to make it clearer still?",
  "question.priceAnswer": "Whether the price is too much, no number says: ask for reasons.",
  /** `verdict`: a sentence. */
  "question.noGain": "{verdict} Can there be a reason to make the change all the same?",
  "question.noGainAnswer":
    "Not in these numbers. A reason has to come from elsewhere: what the colours stand for, who else flies them, or taste.",
  "question.gain": "Clarity was {before} and is {after} after the change. Where does the contrast grow most?",
  /** Where the flag has one edge alone. */
  "question.gainOfOne":
    "Clarity was {before} and is {after} after the change. Which two colours made the difference, and by how much?",
  /** Answers; the first letter is made a capital. */
  "question.gainAnswer": "{was}, from contrast {before} ({wasGrade}) to {after} ({grade}).",
  "question.gainAnswerRenamed": "{was}, from contrast {before} ({wasGrade}) to {after} ({grade}) as {is}.",
  "question.area": "Guess: which colour covers most of the original, and how much of it?",
  "question.areaAnswer": "{name}: {share} of the flag.",
  "question.more": "What would you add, so that this flag can be told from others across the room?",
  "question.moreAnswer":
    "There are many answers. Whatever is added has to be much lighter or much darker than {name}.",
  /** In place of a name. */
  "question.field": "the field",
} as const;
