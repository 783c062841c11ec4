// Floor 7. French: what became of each edge of a study.
import type { In } from "../en/all.ts";
import type { edges as english } from "../en/edges.ts";

export const edges: In<typeof english> = {
  "edges.none": "Une seule couleur : aucune limite à mesurer.",
  "edges.where": "Où sont les limites",
  "edges.map": "La carte des limites",
  "edges.ruler": "La règle des contrastes",
  "edges.moreOnDistance": "En savoir plus sur la <distance>distance</distance>",
  "edges.moreOnDistanceAndCloth":
    "En savoir plus sur la <distance>distance</distance> et l’<cloth>étoffe</cloth>",
  "edges.fimbriations": "Lignes qui séparent deux couleurs",
  "edges.fimbriationMoves":
    "Du contraste des deux couleurs elles-mêmes à celui de la plus faible des deux limites qui les remplacent. <more>En savoir plus sur le liseré</more>",
  "edges.every": "Chaque limite, avant et après",
  "edges.betterAndWorse": "Ce qui gagne et ce qui perd",
  "edges.paged": "Les {paged} plus longues de ces {all} limites ont leur propre page.",
};
