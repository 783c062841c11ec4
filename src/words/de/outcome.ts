// Floor 7. German: what becomes of an edge, as a word in tables.
import type { In } from "../en/all.ts";
import type { outcome as english } from "../en/outcome.ts";

export const outcome: In<typeof english> = {
  "outcome.gained": "gewonnen",
  "outcome.lost": "verloren",
  "outcome.better": "besser",
  "outcome.worse": "schlechter",
  "outcome.same": "gleich",
  "outcome.merged": "verschmolzen",
  "outcome.parted": "getrennt",
};
