// Floor 7. English: the sheet from which an adopted redesign is made as a flag.

export const maker = {
  /** Title of the window. */
  "maker.title": "{title}, sheet for makers",
  /** Before a sentence that says what a study is. */
  "maker.description": "Proportions, construction and colours of the adopted redesign, to print.",
  "maker.kind": "Sheet for makers",
  /** Behind the flag’s name. */
  "maker.for": "For makers",
  "maker.print": "To print: the print command of your browser, A4 or Letter, upright. One page.",
  "maker.toStudy": "The study",
  /** In place of the picture. */
  "maker.outline": "The redesign of {name} in outlines",
  "maker.proportions": "Height to width <number>{proportions}</number>. Hoist on the left.",
  /** Under the decision. */
  "maker.unofficial": "This gallery records it as adopted; the redesign is still an unofficial study.",
  "maker.unofficialBy": "{society} records it as adopted; the redesign is still an unofficial study.",
  "maker.built": "Construction",
  /** Heads of the table of shapes: how far each is from the flag’s hoist and from its upper edge. */
  "maker.shape": "Shape",
  "maker.fromHoist": "From hoist",
  "maker.fromTop": "From top",
  "maker.width": "Width",
  "maker.height": "Height",
  "maker.rectangle": "Rectangle",
  "maker.line": "Line",
  "maker.circle": "Circle, by its centre",
  "maker.ring": "Ring, by its centre",
  /** The diameter of a circle, and of the hole in a ring. */
  "maker.across": "{width} across",
  "maker.hole": "hole {height}",
  "maker.laid": "In the order in which they are laid: what comes later covers what is before.",
  "maker.none": "No plain shapes could be read from the drawing. The drawing file decides.",
  "maker.parts": "Whole numbers are parts of which the height has {parts}.",
  "maker.percent": "Positions and sizes in % are of the height, rounded.",
  "maker.untold":
    "{count, plural, one {# other shape is} other {# other shapes are}} left out, not plain or too many for this page: the drawing file decides.",
  /** A heading, and the head of the table of colours. */
  "maker.colours": "Colours",
  "maker.colour": "Colour",
  "maker.hex": "Hex",
  "maker.reflectance": "Reflectance",
  "maker.others":
    "{count, plural, one {# more colour is} other {# more colours are}} on the page of the study.",
  "maker.coloursHow":
    "sRGB in bytes; CIELAB under D65; reflectance of cloth, of a dye that matches the screen, between the gallery’s black and white cloth.",
  "maker.source": "Sources: IEC 61966-2-1 (sRGB), CIE 15:2004 (CIELAB).",
  "maker.cautions": "Before you make it",
  "maker.law": "Local law goes first: on what a flag looks like, who may make it, and who may fly it.",
  "maker.cloth":
    "Cloth and dye charts decide. A screen colour is no dye: choose from a chart in daylight, and keep the colours as far apart in lightness as they are here.",
  /** Before a link to the file. */
  "maker.file": "Where this sheet and the drawing file differ, the drawing file decides.",
} as const;
