// Floor 7. English: the page of one edge.

export const edgepage = {
  "edgepage.place": "On the flag; the frame is shown large",
  "edgepage.numbers": "The edge in numbers",
  "edgepage.elsewhere": "The same two colours in other studies",
  "edgepage.study": "Study",
  "edgepage.elsewhereNote": "Colours of one name need not be one colour: compare the cloth, not the word.",
  "edgepage.siblings": "Edges of this study",
  /** `near` is one of edgepage.bothNear and edgepage.oneNear. */
  "edgepage.nearLine": "{near}: on other cloth it would be another. <why>Why</why>",
  "edgepage.how": "How <contrast>contrast</contrast> is made, and <beside>what stands beside it</beside>.",
  /** Name of a drawing, read to screen readers. */
  "edgepage.locator": "Where the edge is",
  /** Read to screen readers. */
  "edgepage.locatorSays": "The original flag in pale, with the lines traced where {one} and {other} meet.",
  /** Before a number. */
  "edgepage.contrast": "contrast",
  /** Before a number, a ΔE00. */
  "edgepage.difference": "colour difference",
  "edgepage.sides": "The original first, then the redesign.",
  "edgepage.seenNote":
    "Grey keeps the contrast. Colour difference is ΔE00: the more, the easier to tell apart. Approximations of the strongest form of each deficiency, and no test of anyone’s sight. <how>How they are made</how>",
  /** In the place of a number. */
  "edgepage.noEdge": "no edge",
  /** A link. */
  "edgepage.all": "All on one ruler",
  "edgepage.of": "An edge, where two colours meet, of <study>{title}</study>",
  /** Two pairs of colours, such as “white / red becomes white / gold”. */
  "edgepage.becomes": "{was} becomes {is}",
  /** `outcome` is a word such as “gained”. */
  "edgepage.description": "One edge of an unofficial redesign study, {outcome}.",
  /** Of a picture; `label` is “Original” or its like. */
  "edgepage.placeAlt": "{label}, the place where {one} and {other} meet",
  /** Under a picture. */
  "edgepage.unofficial": "Redesign, unofficial study",
  "edgepage.bothNear": "Both grades are near the line",
  "edgepage.originalNear": "The grade of the original is near the line",
  "edgepage.redesignNear": "The grade of the redesign is near the line",
} as const;
