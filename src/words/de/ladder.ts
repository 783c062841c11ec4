// Floor 7. German: the ladder of reflectance.
import type { In } from "../en/all.ts";
import type { ladder as english } from "../en/ladder.ts";

export const ladder: In<typeof english> = {
  "ladder.title": "Wie hell jede Farbe ist",
  "ladder.says": "Die hellste zuerst: {colours}. {before}, jetzt {after}.",
};
