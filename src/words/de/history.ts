// Floor 7. German: what came before a study and after it.
import type { In } from "../en/all.ts";
import type { history as english } from "../en/history.ts";

export const history: In<typeof english> = {
  "history.follows": "Tritt an die Stelle von",
  "history.followed": "Abgelöst von",
};
