// Floor 7. German: what became of a study, in a word and what that word means.
import type { In } from "../en/all.ts";
import type { status as english } from "../en/status.ts";

export const status: In<typeof english> = {
  "status.draft": "Entwurf",
  "status.draftMeans": "noch nicht fertig",
  "status.open": "Offen",
  "status.openMeans": "vorgeschlagen, noch nicht entschieden",
  "status.adopted": "Angenommen",
  "status.adoptedMeans": "von denen angenommen, die hier entscheiden",
  "status.declined": "Abgelehnt",
  "status.declinedMeans": "von denen nicht angenommen, die hier entscheiden",
  "status.withdrawn": "Zurückgezogen",
  "status.withdrawnMeans": "von den Autoren zurückgenommen",
};
