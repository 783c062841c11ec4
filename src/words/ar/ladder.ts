// Floor 7. Arabic: the ladder of reflectance.
import type { In } from "../en/all.ts";
import type { ladder as english } from "../en/ladder.ts";

export const ladder: In<typeof english> = {
  "ladder.title": "درجة إضاءة كل لون",
  "ladder.says": "من الأفتح إلى الأدكن: {colours}. يتحول {before} إلى {after}.",
};
