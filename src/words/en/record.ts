// Floor 7. English: the record at the end of a study.

export const record = {
  /** The tag is a selector of CSS. */
  "record.onlyIn": "only in {part} (<selector></selector>)",
  /** A link to where the drawing comes from. */
  "record.source": "Source",
  "record.sourceIs": "Source: {source}",
  /** The licence is a short name, such as CC0-1.0. */
  "record.licence": "Licence: {licence}.",
  "record.uncertain": "Where the figures are less certain",
  "record.colours": "Colours",
  "record.drawings": "Drawings and data",
  "record.tags": "Filed under",
  "record.history": "History",
  /** Heading. */
  "record.heading": "For the record",
  /** Heading. */
  "record.tincture": "By the rule of tincture",
  /** Heading. */
  "record.facts": "Facts",
  "record.reflectanceAndTincture": "Reflectance and tincture of each",
  "record.reflectance": "Reflectance of each",
  "record.noSource": "The study names no source for the original drawing.",
  "record.maker": "Adopted: a <sheet>sheet for makers</sheet>, with proportions, construction and colours.",
  "record.lesson": "Pictures of each step, for slides and recordings",
  /** A file to take away. */
  "record.originalSvg": "Original, SVG",
  "record.redesignSvg": "Redesign, SVG",
  "record.originalPng": "Original, PNG",
  "record.redesignPng": "Redesign, PNG",
  "record.edgesCsv": "All edges, CSV",
  "record.json": "Everything measured, JSON",
  /** Behind “only in”. */
  "record.selectedPart": "the selected part",
  /** Stands for its title. */
  "record.drawing": "The drawing",
  "record.by": "{title}, by {author}",
  /** The author of a drawing in a sentence, and its licence. */
  "record.rights": "{credit}, {licence}",
  "record.unofficial": "The redesign is an unofficial study: a proposal for discussion, not a flag in use.",
  "record.unofficialBy":
    "The redesign is an unofficial study published by {society}: a proposal for discussion, not a flag in use.",
} as const;
