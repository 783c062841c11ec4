// Floor 7. French: the ladder of reflectance.
import type { In } from "../en/all.ts";
import type { ladder as english } from "../en/ladder.ts";

export const ladder: In<typeof english> = {
  "ladder.title": "La clarté de chaque couleur",
  "ladder.says": "De la plus claire à la plus sombre : {colours}. {before} devient {after}.",
};
