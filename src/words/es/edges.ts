// Floor 7. Spanish: what became of each edge of a study.
import type { In } from "../en/all.ts";
import type { edges as english } from "../en/edges.ts";

export const edges: In<typeof english> = {
  "edges.none": "Un solo color: no hay límites que medir.",
  "edges.where": "Dónde están los límites",
  "edges.map": "El mapa de límites",
  "edges.ruler": "La regla de contraste",
  "edges.moreOnDistance": "Más sobre la <distance>distancia</distance>",
  "edges.moreOnDistanceAndCloth": "Más sobre la <distance>distancia</distance> y la <cloth>tela</cloth>",
  "edges.fimbriations": "Líneas que separan dos colores",
  "edges.fimbriationMoves":
    "Del contraste de la propia pareja al del más débil de los dos límites que están en su lugar. <more>Más sobre el fileteado</more>",
  "edges.every": "Cada límite, antes y después",
  "edges.betterAndWorse": "Qué mejora y qué empeora",
  "edges.paged": "Los {paged} más largos de estos {all} límites tienen página propia.",
};
