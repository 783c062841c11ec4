// Floor 7. French: what a flag that is shown is called.
import type { In } from "../en/all.ts";
import type { plate as english } from "../en/plate.ts";

export const plate: In<typeof english> = {
  "plate.original": "Original",
  "plate.redesign": "Nouveau dessin",
  "plate.asItIs": "Le drapeau tel qu’il est",
  "plate.alt": "{label} : {paints}",
};
