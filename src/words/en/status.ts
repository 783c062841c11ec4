// Floor 7. English: what became of a study, in a word and what that word means.

export const status = {
  "status.draft": "Draft",
  "status.draftMeans": "not finished",
  "status.open": "Open",
  "status.openMeans": "proposed, not yet decided",
  "status.adopted": "Adopted",
  "status.adoptedMeans": "accepted by those who decide here",
  "status.declined": "Declined",
  "status.declinedMeans": "not accepted by those who decide here",
  "status.withdrawn": "Withdrawn",
  "status.withdrawnMeans": "taken back by its authors",
} as const;
