// Floor 7. French: the matrix of all single changes.
import type { In } from "../en/all.ts";
import type { matrix as english } from "../en/matrix.ts";

export const matrix: In<typeof english> = {
  "matrix.notTried": "non essayé",
  "matrix.own": "cette étude",
  "matrix.note": "note {number}",
  "matrix.merges": "se fond",
  "matrix.clearest": "le plus net de la ligne",
  "matrix.title": "Chaque changement d’une couleur",
  "matrix.ownHue": "sa propre teinte",
  "matrix.studys": "{name} de l’étude",
  "matrix.unranked": "non classé : {share} du contour d’un meuble se fondent",
  "matrix.moreColours":
    "{count, plural, one {# autre couleur du drapeau} other {# autres couleurs du drapeau}}",
  "matrix.moreReplacements": "{count, plural, one {# autre remplacement} other {# autres remplacements}}",
  "matrix.reading": "Une ligne change une couleur du drapeau, une colonne dit en laquelle.",
  "matrix.clarity": "Sous chaque drapeau, sa netteté.",
  "matrix.clarityToday": "Sous chaque drapeau, sa netteté ; l’original a {today}.",
  "matrix.bold": "En gras : le plus net de la ligne, plusieurs s’ils sont à égalité.",
  "matrix.mergesNote": "« Se fond » : deux couleurs n’en font plus qu’une.",
  "matrix.greyNote": "En gris : non classé, car un tiers ou plus du contour d’un meuble se fondrait.",
  "matrix.dash": "Un tiret : non essayé, ou sans changement visible.",
  "matrix.partAlone": "Le changement de cette étude ne porte que sur une partie et n’y figure pas.",
  "matrix.left": "Non montré : {what}.",
};
