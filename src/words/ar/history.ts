// Floor 7. Arabic: what came before a study and after it.
import type { In } from "../en/all.ts";
import type { history as english } from "../en/history.ts";

export const history: In<typeof english> = {
  "history.follows": "تحل محل",
  "history.followed": "تليها",
};
