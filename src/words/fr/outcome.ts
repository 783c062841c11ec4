// Floor 7. French: what becomes of an edge, as a word in tables.
import type { In } from "../en/all.ts";
import type { outcome as english } from "../en/outcome.ts";

export const outcome: In<typeof english> = {
  "outcome.gained": "gagnée",
  "outcome.lost": "perdue",
  "outcome.better": "meilleure",
  "outcome.worse": "pire",
  "outcome.same": "égale",
  "outcome.merged": "fondue",
  "outcome.parted": "séparée",
};
