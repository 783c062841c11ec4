// Floor 7. Arabic: from one value to another.
import type { In } from "../en/all.ts";
import type { move as english } from "../en/move.ts";

export const move: In<typeof english> = {
  "move.to": "إلى",
};
