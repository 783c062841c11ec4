// Floor 7. German: the edge map.
import type { In } from "../en/all.ts";
import type { map as english } from "../en/map.ts";

export const map: In<typeof english> = {
  "map.caption":
    "Wo zwei Farben aneinanderstoßen, nachgezeichnet aus der Betrachtungsentfernung. Durchgezogene Linien sind klar oder stark, gestrichelte nicht.",
  "map.bandNote": "Das Band umgibt, was gesehen werden muss.",
  "map.title": "Kantenkarte",
  "map.focusFound": "was gesehen werden muss (gefunden, {share} der Flagge)",
  "map.focusNamed": "was gesehen werden muss (von den Autoren benannt, {share} der Flagge)",
  "map.none": "Keine Kanten.",
  "map.firstGrade": "{grade}, {share} der Länge aller Kanten: {names}.",
  "map.grade": "{grade}, {share}: {names}.",
};
