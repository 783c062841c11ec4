// Floor 7. English: the method page's opening, headings and figures.

export const method = {
  "method.title": "Method",
  "method.description":
    "How every number on these pages is made: formulas, sources, grades, outcomes, cautions.",
  "method.lede": "How every number here is made.",
  "method.ledeShown": "How every number here is made, shown on one flag: <a>{name}</a>.",
  "method.count": "The small print beside each step says where its numbers come from.",
  /** Read to screen readers: the list of the steps. */
  "method.contents": "On this page",
  /** Headings of the steps. */
  "method.edges": "Edges",
  "method.distance": "Distance",
  "method.lasting": "From afar",
  "method.reflectance": "Reflectance",
  "method.contrast": "Contrast and grade",
  "method.numbers": "Clarity",
  "method.outcomes": "Outcome and verdict",
  "method.words": "The words",
  "method.options": "Other changes",
  "method.survey": "The survey",
  "method.likeness": "Could it be mistaken?",
  "method.beside": "Other measures",
  "method.facts": "Facts",
  "method.vision": "To colour-blind readers, and in grey",
  "method.cautions": "Cautions",
  /** Words in formulas. Of these two, the place below the line: Y of cloth; the higher and the lower Y of two. */
  "method.inCloth": "cloth",
  "method.inHigh": "high",
  "method.inLow": "low",
  /** The quantities that formulas are made of: how much an edge counts, the weight of an edge. */
  "method.ofContrast": "contrast",
  "method.ofCount": "count",
  "method.ofClarity": "clarity",
  "method.ofWeight": "weight",
  /** A figure under a picture or behind a name: what it is of, and the figure. */
  "method.figure": "{name}: <number>{value}</number>",
  /** The same of a change: the names of the two colours in it, which link to it. */
  "method.figureOfChange": "<change></change>: <number>{value}</number>",
  "method.labels": "Labels",
  "method.labelsShown": "{name}, each colour as a grey of its own.",
  "method.traced":
    "Each colour by its number, shown as a grey; and the lines where two meet, broken where the edge is not clear.",
  /** `focus` is what has to be seen: “the tower”. */
  "method.marked": "The band lies along {focus}.",
  "method.afarFigure":
    "From {distance, plural, one {# flag height} other {# flag heights}}: <number>{clarity}</number>",
  /** In place of the picture. */
  "method.afarShown": "{name} from {distance, plural, one {# flag height} other {# flag heights}}.",
  "method.afarNote": "Enlarged, with the clarity of what has to be seen.",
  "method.cloth": "{name}: luminance, and reflectance in percent",
  "method.sumTitle": "Clarity of {name} as a sum: {clarity}",
  /** Read to screen readers: one edge in the sum. */
  "method.sumBar": "{names}: {share} of all weight, counts {counts}",
  /** What all edges in the sum end with. */
  "method.sumAll": "{bars}.",
  "method.sumNote":
    "An area for each edge, as wide as its weight and filled as far as it counts: {clarity} in all.",
  "method.changeTo": "<a>The change to {name}</a>: ring before, dot after",
  "method.visionNote": "The clarity of the whole flag.",
  /** In place of the picture: the kind of vision, and what becomes of the colours. */
  "method.visionShown": "{heading}: {looks}.",
  "method.saidNote": "What the page of <a>{name}</a> says.",
  "method.optionNote": "The best change of each colour, with the clarity that it brings.",
  "method.placedNote": "{name} in the survey, with its neighbours there and their clarity.",
} as const;
