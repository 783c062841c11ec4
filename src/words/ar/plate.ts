// Floor 7. Arabic: what a flag that is shown is called.
import type { In } from "../en/all.ts";
import type { plate as english } from "../en/plate.ts";

export const plate: In<typeof english> = {
  "plate.original": "الأصل",
  "plate.redesign": "التصميم الجديد",
  "plate.asItIs": "العلم كما هو",
  "plate.alt": "{label}: {paints}",
};
