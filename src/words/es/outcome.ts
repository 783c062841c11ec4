// Floor 7. Spanish: what becomes of an edge, as a word in tables.
import type { In } from "../en/all.ts";
import type { outcome as english } from "../en/outcome.ts";

export const outcome: In<typeof english> = {
  "outcome.gained": "ganado",
  "outcome.lost": "perdido",
  "outcome.better": "mejor",
  "outcome.worse": "peor",
  "outcome.same": "igual",
  "outcome.merged": "fundido",
  "outcome.parted": "separado",
};
