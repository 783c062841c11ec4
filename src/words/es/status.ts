// Floor 7. Spanish: what became of a study, in a word and what that word means.
import type { In } from "../en/all.ts";
import type { status as english } from "../en/status.ts";

export const status: In<typeof english> = {
  "status.draft": "Borrador",
  "status.draftMeans": "sin terminar",
  "status.open": "Abierto",
  "status.openMeans": "propuesto, aún sin decidir",
  "status.adopted": "Adoptado",
  "status.adoptedMeans": "aceptado por quienes deciden aquí",
  "status.declined": "Rechazado",
  "status.declinedMeans": "no aceptado por quienes deciden aquí",
  "status.withdrawn": "Retirado",
  "status.withdrawnMeans": "retirado por sus autores",
};
