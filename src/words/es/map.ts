// Floor 7. Spanish: the edge map.
import type { In } from "../en/all.ts";
import type { map as english } from "../en/map.ts";

export const map: In<typeof english> = {
  "map.caption":
    "Dónde se tocan dos colores, trazado a la distancia de lectura. Las líneas continuas son nítidas o fuertes; las discontinuas, no.",
  "map.bandNote": "La banda rodea lo que debe verse.",
  "map.title": "Mapa de límites",
  "map.focusFound": "lo que debe verse, hallado: {share} de la bandera",
  "map.focusNamed": "lo que debe verse, nombrado por el autor: {share} de la bandera",
  "map.none": "No hay límites.",
  "map.firstGrade": "{grade}, {share} de la longitud de todos los límites: {names}.",
  "map.grade": "{grade}, {share}: {names}.",
};
