// Floor 7. English: sheets for a class, printed on paper: a handout, a worksheet and the answers for the teacher.

export const sheet = {
  /** Title of the window. */
  "sheet.title": "{title}, sheets for a class",
  "sheet.description": "Handout, worksheet and answers, to print. Unofficial redesign study.",
  "sheet.kind": "Sheets for a class",
  "sheet.print":
    "To print: the print command of your browser, A4 or Letter, upright. Each part fills a page of its own.",
  /** Links back. */
  "sheet.toStudy": "The study",
  "sheet.toSeries": "The series",
  /** Heads of the contents, which name the kinds of sheets; the last three stand over numbers of pages. */
  "sheet.contents": "Contents",
  "sheet.handout": "Handout",
  "sheet.worksheet": "Worksheet",
  "sheet.answers": "Answers",
  /** Under the second flag of the handout. */
  "sheet.redesign": "Redesign, unofficial study",
  "sheet.questions": "Three questions",
  /** Under the scale of the handout, which holds no answer. Values: limits in percent. */
  "sheet.scale":
    "Contrast is how far two colours that meet are apart in lightness: weak under {soft}, soft from {soft}, clear from {clear}, strong from {strong}.",
  "sheet.left": "{count, plural, one {# more edge is} other {# more edges are}} on the page of the study.",
  "sheet.noRuler": "One colour: no edges to measure.",
  "sheet.hatched": "In lines, for grey print",
  "sheet.hatchedHow":
    "Each colour has its own lines, after Silvester Petra Sancta, Rome 1638. Shades of one colour share them.",
  /** In place of pictures. */
  "sheet.originalInLines": "Original in lines",
  "sheet.redesignInLines": "Redesign in lines",
  "sheet.inOutlines": "{flag}, in outlines",
  /** Before a line on which a pupil writes. */
  "sheet.name": "Name",
  "sheet.change": "Change one colour. Colour the flag in, with the new one in its place.",
  "sheet.own": "The flag’s colours",
  "sheet.palette": "Colours to choose from",
  "sheet.guess":
    "Guess the contrast wherever two colours meet: a ring for the original, a dot for your flag.",
  /** A sentence to fill in: each `line` is room for a colour. */
  "sheet.reason": "I change <line></line> into <line></line>, because",
  "sheet.price": "What gets worse, and why I accept it:",
  "sheet.yours": "No study of this flag is here: it is yours.",
  "sheet.teacher": "For the teacher",
  /** Before what other changes of the flag there are; then before the next sentence. */
  "sheet.others": "Other changes",
  "sheet.onWorksheet": "The worksheet",
  "sheet.opinion":
    "On the worksheet no choice is right or wrong. What counts is a reason that names an edge.",
  "sheet.signs": "Colours in lines",
  "sheet.signsSource":
    "Lines that stand for colours. Source: Silvester Petra Sancta, “Tesserae gentilitiae”, Rome 1638; told in A. C. Fox-Davies, “A Complete Guide to Heraldry”, 1909, chapter VII. Orange and brown: later convention, on which books differ; no source. Grey and pink have no lines and stay grey: our own choice.",
  /** Colours, with what heraldry calls them. */
  "sheet.red": "red (gules)",
  "sheet.blue": "blue (azure)",
  "sheet.green": "green (vert)",
  "sheet.black": "black (sable)",
  "sheet.purple": "purple (purpure)",
  "sheet.yellow": "yellow (or)",
  "sheet.white": "white (argent)",
  "sheet.orange": "orange (tenné), later",
  "sheet.brown": "brown, later",
} as const;
