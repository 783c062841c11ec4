// Floor 7. English: what becomes of an edge, as a word in tables.

export const outcome = {
  "outcome.gained": "gained",
  "outcome.lost": "lost",
  "outcome.better": "better",
  "outcome.worse": "worse",
  "outcome.same": "same",
  "outcome.merged": "merged",
  "outcome.parted": "parted",
} as const;
