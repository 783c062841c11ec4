// Floor 7. Spanish: the matrix of all single changes.
import type { In } from "../en/all.ts";
import type { matrix as english } from "../en/matrix.ts";

export const matrix: In<typeof english> = {
  "matrix.notTried": "sin probar",
  "matrix.own": "este estudio",
  "matrix.note": "nota {number}",
  "matrix.merges": "se funde",
  "matrix.clearest": "el más nítido de la fila",
  "matrix.title": "Cada cambio de un color",
  "matrix.ownHue": "su propio tono",
  "matrix.studys": "{name} del estudio",
  "matrix.unranked": "sin puesto: se funde {share} del contorno de una figura",
  "matrix.moreColours":
    "{count, plural, one {# color más de la bandera} other {# colores más de la bandera}}",
  "matrix.moreReplacements": "{count, plural, one {# sustituto más} other {# sustitutos más}}",
  "matrix.reading": "Una fila cambia un color de la bandera; una columna dice por cuál.",
  "matrix.clarity": "Bajo cada bandera, su nitidez.",
  "matrix.clarityToday": "Bajo cada bandera, su nitidez; el original tiene {today}.",
  "matrix.bold": "En negrita, el más nítido de su fila; más de uno si están a la par.",
  "matrix.mergesNote": "«Se funde»: dos colores se vuelven uno.",
  "matrix.greyNote": "En gris: sin puesto, pues se fundiría un tercio o más del contorno de una figura.",
  "matrix.dash": "Una raya: sin probar, o sin cambio visible.",
  "matrix.partAlone": "El cambio de este estudio es de una sola parte y no está entre ellos.",
  "matrix.left": "No se muestra: {what}.",
};
