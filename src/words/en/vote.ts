// Floor 7. English: the vote on a series, flag by flag.

export const vote = {
  /** In the head of the page, and for search. */
  "vote.title": "Vote: {series}",
  "vote.description": "Original or redesign? A vote on {series}, flag by flag, before any number is seen.",
  "vote.on": "A vote on <a>{series}</a>",
  "vote.heading": "Which would you fly?",
  "vote.how":
    "The flag as it is, and what is proposed in its place. Which is which is not said, and no number is shown, until you have chosen.",
  "vote.unscripted":
    "To vote on this page takes a script, which this browser does not run. In a room it goes without: print the page, hold up the flags one by one, and tick a box for each hand. Each question says at its end which is which.",
  /** Names the buttons, read to screen readers. */
  "vote.questions": "Questions",
  "vote.back": "Back",
  "vote.next": "Next",

  /** One question. */
  "vote.place": "{number} of {count}",
  /** What a flag without a name is called. */
  "vote.flag": "Flag {number}",
  /** A flag for those who do not see it: its words may not tell which is which. */
  "vote.alt": "A flag: {paints}",
  "vote.neither": "Neither",
  "vote.original": "The original",
  "vote.redesign": "The redesign",
  "vote.redesignOf": "The redesign “{title}”",
  /** `name` is one of the two above. */
  "vote.unofficial": "{name}, an unofficial study",
  "vote.cautionOne": "One of them is the flag as it is; what is proposed is an unofficial study.",
  "vote.cautionMany": "One of them is the flag as it is; what is proposed are unofficial studies.",
  "vote.why": "Why? (optional)",
  /** A button. */
  "vote.choose": "This is my choice",
  "vote.missing": "Choose a flag first, or neither.",

  /** What is told once the choice is made. */
  "vote.told": "Which is which, and the numbers",
  "vote.which": "{flag}: which is which",
  /** Heads of the table. */
  "vote.headFlag": "Flag",
  "vote.headChosen": "Chosen, of {count, plural, one {# voter} other {# voters}}",
  "vote.own": "your choice",
  /** Two percentages. */
  "vote.range": "{low} to {high}",
  "vote.study": "The study",
  /** `sentence` begins with an upper case letter and ends with a stop. */
  "vote.verdictOf": "{name}: {sentence}",
  /** What a voter said; `side` is what that voter chose. */
  "vote.said": "<quiet>{side}:</quiet> <said></said>",

  /** What the voter chose. */
  "vote.ballot": "Your ballot",
  "vote.answer": "{flag}: {choice}",
  "vote.answerWhy": "{flag}: {choice}, “{why}”",
  "vote.unanswered": "{flag}: not answered",
  "vote.kept":
    "It is kept in this browser alone, under a number drawn by lot, and nobody is told of it until you hand it in.",
  "vote.copy": "Copy this line",
  "vote.copied": "Copied.",
  "vote.refused": "The browser did not allow it; mark the line and copy it.",
  "vote.save": "Save as a table (CSV)",
  "vote.mail": "Send by mail",
  "vote.form": "Send with a form",
  "vote.anew": "Begin another ballot",
  /** Subject of a letter. */
  "vote.letter": "A ballot on {series}",

  /** For whoever asks a class. */
  "vote.room": "For a class or a meeting",
  "vote.same":
    "<same>The same order for everyone</same> · <own>An order of your own</own>. With the first, everyone who opens it sees A and B as you see them now; with the second, each voter sees them in an order drawn by lot.",
  "vote.paper":
    "Printed, this page is a tally sheet: the flags, boxes for the hands, and on the last page which is which.",
  "vote.ballots":
    "{count, plural, one {# ballot} other {# ballots}} came back. Beside each share stands the range in which, with 95% confidence, that of all would lie if the voters had been drawn by lot (Wilson’s interval); voters who came of themselves were not.",
  "vote.noBallots": "No ballot has come back yet.",
  /** On paper alone. */
  "vote.key": "For whoever counts: which is which",
  /** `sides` become names of flags, each with its letter. */
  "vote.sides": "{flag}: <sides></sides>",
} as const;
