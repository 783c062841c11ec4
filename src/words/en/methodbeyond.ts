// Floor 7. English: the steps of the method beyond one comparison. `em` is an emphasised term, `i` the title of a paper.

export const methodBeyond = {
  "method.optionsText":
    "Every colour over 0.4% of the flag is replaced, one at a time: by each colour of the gallery’s palette, by each other colour of the flag, and by its <em>kept hue</em>, the same hue as much lighter or darker as brings {keptHue} of contrast with the neighbours it is not clear of. No grade may fall for that, and the colour keeps its family: pink is no red. Within ΔE*ab {departure} nothing is a change, since official flags of one nation differ by as much.",
  "method.optionsOrder":
    "The clearest stands first, then the strongest, the same family, the smaller difference. What merges a third of a charge’s outline has no place. The <em>colours to change first</em> are the {mostFirst} at most whose best comes within {firstWithin} points of the best of all, if that gains {leastGain}; without such a gain, a flag of {wholeClear} is clear as it is. Which looks best is for the author to say.",
  "method.optionsSource":
    "ΔE*ab {departure}: Melgosa and Gómez-Robledo, <i>Óptica Pura y Aplicada</i> 55(2), 2022, who propose it; abstract read. Lightness of the kept hue: <ottosson>Ottosson, 2020</ottosson>. Our own judgement: all other numbers, and the order.",
  "method.surveyText":
    "The <a>survey</a> measures every flag as it is today, each once, however many studies it has. The least clear stands first, a flag of one colour last. A low place does not say that a flag should change, nor a high one that it is good.",
  "method.surveySource": "Our own judgement: the order.",
  "method.likenessText":
    "A clearer flag may be a neighbour’s. So each redesign is laid on every other flag and redesign known here, but its own original and rivals. Both are divided into {columns} by {rows} cells of mean colour as cloth, and the number is the mean ΔE00 of the cells: 0 is the same picture, and a cell that one lacks counts 100. The other is also tried mirrored and upside down. Under {threshold} the study says so.",
  "method.likenessCare":
    "Large fields count for much and small charges for little, so a small number is a reason to look and no proof of how it came about. Drawings kept only for this are named, not shown: their licence is not ours to assume.",
  "method.likenessSource":
    "Our own judgement: the grid, the mean and {threshold}. Of the 36,585 pairs of an open collection 144 are nearer than that, 50 of them one flag under two names; half are over 36 apart.",
  "method.visionText":
    "Many people have eyes without one of the three kinds of cones. We recolour both drawings as such eyes have them, and in grey, and measure them again. Grey keeps every contrast as it was, so there we tell how far apart the nearest two greys are.",
  "method.visionSource":
    "Protan, deutan: Machado, Oliveira, Fernandes, <machado>2009</machado>, severity 1, in linear light, which the paper does not plainly say. Tritan, which that model does not reach: Brettel, Viénot, Mollon, 1997. Matrices read in published implementations.",
  "method.cautionProposal": "Every redesign is a proposal and no flag in use, unless its decision says so.",
  "method.cautionLaw":
    "Laws on flags differ. Follow the local ones before you make, alter or fly anything shown here, and respect each drawing’s licence.",
  "method.cautionEyes": "Pictures for other eyes are approximations, and no test of anyone’s sight.",
  "method.cautionWorth": "Contrast does not say whether a flag is good, what it means, or whose it is.",
  "method.cautionDistance": "Distance is a model: haze, glare and wind make every distance shorter.",
  "method.cautionCloth":
    "Numbers are of the drawing in daylight. Dyes differ, and cloth fades, gets wet and folds.",
} as const;
