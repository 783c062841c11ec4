// Floor 7. German: one edge, before and after, as a figure.
import type { In } from "../en/all.ts";
import type { edgefigure as english } from "../en/edgefigure.ts";

export const edgefigure: In<typeof english> = {
  "edgefigure.edge": "Kante",
  "edgefigure.becomes": ", jetzt {is}",
  "edgefigure.outcome": ": {outcome}, auf {extent}.",
  "edgefigure.sideBySide": "Nebeneinander; Kontrast {contrast}.",
  "edgefigure.says": "{edge}: Kontrast vorher {before}, nachher {after}; {outcome}.",
  "edgefigure.saysAfter": "{edge}: Kontrast nachher {after}; {outcome}.",
};
