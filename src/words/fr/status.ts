// Floor 7. French: what became of a study, in a word and what that word means.
import type { In } from "../en/all.ts";
import type { status as english } from "../en/status.ts";

export const status: In<typeof english> = {
  "status.draft": "Brouillon",
  "status.draftMeans": "pas encore achevée",
  "status.open": "Ouverte",
  "status.openMeans": "proposée, pas encore tranchée",
  "status.adopted": "Adoptée",
  "status.adoptedMeans": "acceptée par ceux qui décident ici",
  "status.declined": "Refusée",
  "status.declinedMeans": "non acceptée par ceux qui décident ici",
  "status.withdrawn": "Retirée",
  "status.withdrawnMeans": "retirée par ses auteurs",
};
