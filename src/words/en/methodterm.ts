// Floor 7. English: the definitions of the method. `em` is an emphasised term, `i` the title of a book; `move` stands for an
// example, “40% → 52%”.

export const methodTerm = {
  "method.numbersText":
    "An edge counts by how far its contrast comes towards {clear}, and in full from there on: 30 / 45 = 67%. Clarity is the mean of all edges, each weighed by its length and, once more, by the part of it that borders what has to be seen:",
  "method.numbersClose":
    "So a flag whose edges are all clear has 100%, and a long weak edge costs more than a short one. A flag of one colour has no edge and no clarity.",
  "method.numbersSource": "Our own judgement: the sum, and that what has to be seen counts twice.",
  /** A term and what it means, here and below. */
  "method.strength": "Strength",
  "method.strengthMeans": "the same sum towards {strong}; it orders what clarity leaves equal",
  "method.weakest": "Weakest edge",
  "method.weakestMeans": "the edge with the least contrast, the shortest left out",
  "method.clearShare": "Clear-edge share",
  "method.clearShareMeans":
    "the share of length that is clear or strong; it jumps at one step, so it decides nothing",
  "method.outcomesText": "To one edge a change does this:",
  "method.gained": "Gained, lost",
  "method.gainedMeans":
    "it becomes clear, or no longer is, and moves by {contrastStep} points or more: <move></move>",
  "method.better": "Better, worse",
  "method.betterMeans":
    "it moves as far without becoming clear or ceasing to be: <move></move>; nothing above {strong} counts",
  "method.same": "Same",
  "method.sameMeans": "it moves by less: <move></move>",
  "method.merged": "Merged",
  "method.mergedMeans": "its two colours come so near that they count as one",
  "method.parted": "Parted",
  "method.partedMeans": "it is new, because only a part of a colour was changed",
  "method.outcomesPrice":
    "The <em>price</em> of a change is the edges that are lost, worse, merged, or parted and not clear. The verdict goes by clarity in whole percent and, where that is level, by strength:",
  "method.clearer": "Clearer",
  "method.clearerMeans":
    "up by {leastMove, plural, one {# point} other {# points}} or more, at no price: <move></move>",
  "method.atAPrice": "Clearer, at a price",
  "method.atAPriceMeans": "up by {largeMove} points or more, the price named with it: <move></move>",
  "method.lessClear": "Less clear",
  "method.lessClearMeans":
    "down by {largeMove} points or more: <move></move>; or by {leastMove} with nothing gained, better, or parted and clear",
  "method.mixed": "Mixed",
  "method.mixedMeans": "gains and a price, clarity between: <move></move>",
  "method.noGain": "No gain",
  "method.noGainMeans": "every edge stays the same, or nothing above fits",
  "method.outcomesSource":
    "Our own judgement: the steps of {contrastStep}, {leastMove} and {largeMove} points. A merged edge keeps its length, for the shapes stay, and counts as contrast 0%. Numbers shown are rounded, those that decide are not.",
  "method.wordsText":
    "Sentences are put together by rule, from the numbers and names on the page alone. They speak of what has to be seen first, and of weak edges before strong ones. A <em>fimbriation</em> is a narrow line of a third colour that parts two others; while it can be seen, its own edges count, and the words say what it does for the pair.",
  "method.wordsSource":
    "What a fimbriation is: common practice, no source. Our own judgement, by which we know one: a mean width under 8% of the flag’s height, two sides within a third of each other in length, between colours that meet along a fifth of it at most.",
  "method.hue": "Hue alone",
  "method.hueMeans":
    "weak with a ΔE00 of 20 or more, in grey under 10: it goes in dusk, grey print and for many colour-blind eyes",
  "method.tincture": "Tincture",
  "method.tinctureMeans":
    "no metal (white, yellow) on metal, no colour (red, blue, green, black, purple) on colour. Exempt: parts of the field that both reach the border, fimbriations; furs too, not recognised here",
  "method.colours": "Colours",
  "method.coloursMeans": "those over 0.5% of the area, like shades as one; guides advise two or three",
  "method.factsSource":
    "A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, chapter VII; exemptions: common practice, no source. <good>Good Flag, Bad Flag</good>, North American Vexillological Association, 2006, third principle; <i>Guiding Principles of Flag Design</i>, Joint Commission on Vexillographic Principles, 2014, 3.1. Our own judgement: hue alone, the 0.5%.",
} as const;
