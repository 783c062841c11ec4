// Floor 7. The words of the page by which readers propose a study, those of its script among them.

export const partWords = {
  link: "Propose a study of your own",
  title: "Propose a study",
  description: "How to propose a redesign study to this gallery: two files, and a letter to send them with.",
  lede: "A study is a folder with two files: the drawing of a flag, and a text that names one change of colour and argues for it. You need no account and no program to write one.",
  filesHeading: "The two files",
  files: [
    "original.svg: the flag as it is, drawn in SVG, 512 KB at most. Pictures of pixels and photographs cannot be recoloured.",
    "study.md: plain text. Between the two lines of hyphens stand the title, the colour that is replaced and the colour that takes its place; under them, your reasons.",
  ],
  credit:
    "If the drawing is not yours, say whose it is and under which licence, in a line like this above the second line of hyphens:",
  creditLine: 'credit: { author: Ines Valcourt, source: "https://flags.example", licence: CC0-1.0 }',
  templateHeading: "A text to begin with",
  sendHeading: "Send it",
  send: "Attach the drawing to the letter: no page can do that for you.",
  sendForm: "Attach the drawing there if the place takes files, or say where it can be found.",
  letter: "Write the letter",
  sample: {
    title: "A lighter wheel",
    flag: "The ferry flag",
    before: "#7a1020",
    after: "#f4c430",
    why: "Why this change: what could not be seen before, and what it costs.",
  },
  makeHeading: "Try a change",
  private: "The drawing stays on your computer: this page uploads nothing and remembers nothing.",
  choose: "Choose a drawing (SVG)",
  tooBig: "This file is larger than 512 KB, which is the most that a drawing may have.",
  broken: "This file cannot be read as an SVG drawing. Save it again as a plain SVG, and choose that file.",
  endless: "This drawing is too large to be shown here, or refers to itself without end.",
  colourless: "No colour was found in this drawing that could be replaced.",
  chosen: "The drawing is shown below, with its colours.",
  replace: "Replace",
  palette: "with a colour of the gallery",
  typed: "or with one that you type",
  unknown: "This is no colour that hides what is behind it. Type, for example, #f4c430.",
  same: "This is the colour that is there already.",
  before: "Before",
  after: "After",
  alt: { before: "The drawing as it is", after: "The drawing with the change" },
  pairsHeading: "Contrast of its colours",
  pairs: "Pair",
  rough:
    "These are rough marks of every pair of colours, whether they touch or not. The gallery measures the edges themselves, with their lengths, and looks from a distance; its figures count.",
  more: "Only the first twelve colours are compared here.",
  grades: { weak: "weak", soft: "soft", clear: "clear", strong: "strong" },
  studyHeading: "Your text",
  studyTitle: "Title of the study",
  flag: "What the flag is called",
  author: "Your name, as it shall be published",
  why: "Why this change",
  untitled: "Give the study a title and say why: then the text below can be sent.",
  ready: "Save this as study.md beside the drawing, or send it as it is.",
  copy: "Copy the text",
  copied: "Copied.",
  refused: "The browser did not allow it; mark the text and copy it.",
  unscripted:
    "With scripts, this page shows a drawing from your computer with the change, and writes the text for you. Without them, copy the text above and fill it in.",
} as const;

/** Words of the letter that hold something of the gallery. */
export const letterWords = {
  title: (gallery: string): string => `A study for ${gallery}`,
  byMail: (address: string): string => `by mail to ${address}, with the text already in it.`,
  atForm: (host: string, isFilled: boolean): string =>
    isFilled ? `at ${host}, with the text already in it.` : `at ${host}; copy the text first.`,
};
