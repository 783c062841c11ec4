// Floor 7. Arabic: what becomes of an edge, as a word in tables.
import type { In } from "../en/all.ts";
import type { outcome as english } from "../en/outcome.ts";

export const outcome: In<typeof english> = {
  "outcome.gained": "كُسبت",
  "outcome.lost": "فُقدت",
  "outcome.better": "تحسّنت",
  "outcome.worse": "ساءت",
  "outcome.same": "كما هي",
  "outcome.merged": "اندمجت",
  "outcome.parted": "انفصلت",
};
