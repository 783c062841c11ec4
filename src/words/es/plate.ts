// Floor 7. Spanish: what a flag that is shown is called.
import type { In } from "../en/all.ts";
import type { plate as english } from "../en/plate.ts";

export const plate: In<typeof english> = {
  "plate.original": "Original",
  "plate.redesign": "Rediseño",
  "plate.asItIs": "La bandera como es",
  "plate.alt": "{label}: {paints}",
};
