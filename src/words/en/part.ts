// Floor 7. English: the page by which readers propose a study, with the words of its script and of the letter.

export const part = {
  /** A link at the foot of every page. */
  "part.link": "Propose a study of your own",
  "part.title": "Propose a study",
  "part.description":
    "How to propose a redesign study to this gallery: two files, and a letter to send them with.",
  "part.lede":
    "A study is a folder with two files: the drawing of a flag, and a text that names one change of colour and argues for it. You need no account and no program to write one.",
  "part.files": "The two files",
  /** What is said of each file, whose name stands above it. */
  "part.drawing":
    "The flag as it is, drawn in SVG, 512 KB at most. Pictures of pixels and photographs cannot be recoloured.",
  "part.textFile": "Plain text: what changes, and why.",
  /** Over a text to be filled in: what stands where in it. */
  "part.study":
    "Between the two lines of hyphens stand the title, the colour that is replaced and the colour that takes its place; under them, your reasons.",
  /** Before a line of a file. */
  "part.credit":
    "If the drawing is not yours, say whose it is and under which licence, in a line like this above the second line of hyphens:",
  "part.template": "The text",
  /** A study to be filled in: its title and the flag’s name, neither with a colon in it, and its text. */
  "part.sampleTitle": "A lighter wheel",
  "part.sampleFlag": "The ferry flag",
  "part.sampleWhy": "Why this change: what could not be seen before, and what it costs.",
  "part.send": "Send it",
  "part.sendByMail": "Attach the drawing to the letter: no page can do that for you.",
  "part.sendAtForm": "Attach the drawing there if the place takes files, or say where it can be found.",
  /** A button, and what stands behind it. `host` is the name of a site. */
  "part.letter": "Write the letter",
  "part.byMail": "by mail to {address}, with the text already in it.",
  "part.atForm": "at {host}, with the text already in it.",
  "part.atFormEmpty": "at {host}; copy the text first.",
  /** The subject of the letter. */
  "part.subject": "A study for {gallery}",
  "part.try": "Try a change",
  "part.private": "The drawing stays on your computer: this page uploads nothing and remembers nothing.",
  "part.choose": "Choose a drawing (SVG)",
  "part.tooBig": "This file is larger than 512 KB, which is the most that a drawing may have.",
  "part.broken":
    "This file cannot be read as an SVG drawing. Save it again as a plain SVG, and choose that file.",
  "part.endless": "This drawing is too large to be shown here, or refers to itself without end.",
  "part.colourless": "No colour was found in this drawing that could be replaced.",
  "part.chosen": "The drawing is shown below, with its colours.",
  /** Labels of three fields: replace a colour, with one of these, or with one that is typed. */
  "part.replace": "Replace",
  "part.palette": "with a colour of the gallery",
  "part.typed": "or with one that you type",
  "part.unknown": "This is no colour that hides what is behind it. Type, for example, #f4c430.",
  "part.same": "This is the colour that is there already.",
  /** Under the two drawings, and over two columns of contrasts. */
  "part.before": "Before",
  "part.after": "After",
  /** In place of the drawings. */
  "part.beforeShown": "The drawing as it is",
  "part.afterShown": "The drawing with the change",
  "part.pairs": "Contrast of its colours",
  "part.pair": "Pair",
  "part.rough":
    "These are rough marks of every pair of colours, whether they touch or not. The gallery measures the edges themselves, with their lengths, and looks from a distance; its figures count.",
  "part.more": "Only the first twelve colours are compared here.",
  "part.text": "Your text",
  /** Labels of fields. */
  "part.textTitle": "Title of the study",
  "part.textFlag": "What the flag is called",
  "part.textAuthor": "Your name, as it shall be published",
  "part.textWhy": "Why this change",
  "part.untitled": "Give the study a title and say why: then the text below can be sent.",
  "part.ready": "Save this as study.md beside the drawing, or send it as it is.",
  "part.copy": "Copy the text",
  "part.copied": "Copied.",
  "part.refused": "The browser did not allow it; mark the text and copy it.",
  "part.unscripted":
    "With scripts, this page shows a drawing from your computer with the change, and writes the text for you. Without them, copy the text above and fill it in.",
} as const;
