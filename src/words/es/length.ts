// Floor 7. Spanish: how long an edge is.
import type { In } from "../en/all.ts";
import type { length as english } from "../en/length.ts";

export const length: In<typeof english> = {
  "length.heights": "{length} alturas de bandera",
  "length.offFocus": "{length} alturas de bandera, ninguna en el contorno de lo que debe verse",
  "length.onFocus": "{length} alturas de bandera, todas en el contorno de lo que debe verse",
  "length.partOnFocus": "{length} alturas de bandera, {part} de ellas en el contorno de lo que debe verse",
  "length.wholeOutline": "todo el contorno",
  "length.ofOutline": "{share} del contorno",
  "length.partly": "{length}, de ellas {own} en {part}",
  "length.wholly": "{length}, {part}",
};
