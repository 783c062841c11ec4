// Floor 7. Spanish: how far what has to be seen lasts, as a figure.
import type { In } from "../en/all.ts";
import type { lasting as english } from "../en/lasting.ts";

export const lasting: In<typeof english> = {
  "lasting.caption":
    "Nitidez de lo que debe verse a tantas alturas de bandera: un anillo para el original, un punto para el rediseño.",
  "lasting.model": "Un modelo de la vista",
};
