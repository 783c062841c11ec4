// Floor 7. German: what became of each edge of a study.
import type { In } from "../en/all.ts";
import type { edges as english } from "../en/edges.ts";

export const edges: In<typeof english> = {
  "edges.none": "Eine einzige Farbe: keine Kanten zu messen.",
  "edges.where": "Wo die Kanten liegen",
  "edges.map": "Die Kantenkarte",
  "edges.ruler": "Das Kontrastlineal",
  "edges.moreOnDistance": "Mehr zur <distance>Entfernung</distance>",
  "edges.moreOnDistanceAndCloth": "Mehr zur <distance>Entfernung</distance> und zum <cloth>Tuch</cloth>",
  "edges.fimbriations": "Linien, die zwei Farben trennen",
  "edges.fimbriationMoves":
    "Vom Kontrast der beiden Farben selbst zu dem der schwächeren der beiden Kanten, die an ihrer Stelle stehen. <more>Mehr zum Saum</more>",
  "edges.every": "Jede Kante, vorher und nachher",
  "edges.betterAndWorse": "Was besser und was schlechter wird",
  "edges.paged": "Die {paged} längsten dieser {all} Kanten haben eigene Seiten.",
};
