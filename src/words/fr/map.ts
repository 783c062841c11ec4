// Floor 7. French: the edge map.
import type { In } from "../en/all.ts";
import type { map as english } from "../en/map.ts";

export const map: In<typeof english> = {
  "map.caption":
    "Là où deux couleurs se touchent, relevé à la distance d’observation. Les traits pleins sont des limites nettes ou fortes, les traits discontinus ne le sont pas.",
  "map.bandNote": "La bande entoure ce qui doit se voir.",
  "map.title": "Carte des limites",
  "map.focusFound": "ce qui doit se voir, trouvé : {share} du drapeau",
  "map.focusNamed": "ce qui doit se voir, désigné par l’auteur : {share} du drapeau",
  "map.none": "Aucune limite.",
  "map.firstGrade": "{grade}, {share} de la longueur totale des limites : {names}.",
  "map.grade": "{grade}, {share} : {names}.",
};
