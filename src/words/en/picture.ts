// Floor 7. English: link pictures, which sites and chats show when someone posts a link; and records for search.

export const picture = {
  /** Under the half that is the redesign. */
  "picture.redesign": "Redesign · unofficial study",
  /** Where the halves lie one above the other. `half` is what stands under a half. */
  "picture.above": "Above: {half}",
  "picture.below": "Below: {half}",
  /** What the number beside it is. */
  "picture.clarity": "{verdict}: clarity",
  "picture.oneColour": "One colour",
  /** `outcome` is what became of the edge, as a heading: “Gained”. */
  "picture.contrast": "{outcome}: contrast of this edge",
  /** The picture for those who do not see it. `measure` is “Clearer: clarity”, `move` is “74% to 100%”. */
  "picture.alt":
    "A flag divided {split}, half original and half redesign. {title}. {measure} {move}. Unofficial study.",
  /** With who wrote the study, or the study an edge is of. */
  "picture.altOf":
    "A flag divided {split}, half original and half redesign. {title} ({of}). {measure} {move}. Unofficial study.",
  /** How a flag is divided, as heraldry says it: upright, aslant from the top left, aslant from the top right, level. */
  "picture.perPale": "per pale",
  "picture.perBend": "per bend",
  "picture.perBendSinister": "per bend sinister",
  "picture.perFess": "per fess",
  /** For search: what kind of work it is. */
  "picture.genre": "Unofficial flag redesign study",
  /** Title of the window, for search, and where a page has moved: `title` is that of a page below a study. */
  "picture.within": "{title}, in {study}",
} as const;
