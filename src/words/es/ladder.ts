// Floor 7. Spanish: the ladder of reflectance.
import type { In } from "../en/all.ts";
import type { ladder as english } from "../en/ladder.ts";

export const ladder: In<typeof english> = {
  "ladder.title": "La claridad de cada color",
  "ladder.says": "Del más claro al más oscuro: {colours}. {before} pasa a {after}.",
};
