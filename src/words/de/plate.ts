// Floor 7. German: what a flag that is shown is called.
import type { In } from "../en/all.ts";
import type { plate as english } from "../en/plate.ts";

export const plate: In<typeof english> = {
  "plate.original": "Original",
  "plate.redesign": "Neuentwurf",
  "plate.asItIs": "Die Flagge, wie sie ist",
  "plate.alt": "{label}: {paints}",
};
