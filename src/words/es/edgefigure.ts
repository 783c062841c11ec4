// Floor 7. Spanish: one edge, before and after, as a figure.
import type { In } from "../en/all.ts";
import type { edgefigure as english } from "../en/edgefigure.ts";

export const edgefigure: In<typeof english> = {
  "edgefigure.edge": "Límite",
  "edgefigure.becomes": ", que pasa a {is}",
  "edgefigure.outcome": ": {outcome}, en {extent}.",
  "edgefigure.sideBySide": "Lado a lado; contraste {contrast}.",
  "edgefigure.says": "{edge}: contraste {before} antes, {after} después; {outcome}.",
  "edgefigure.saysAfter": "{edge}: contraste {after} después; {outcome}.",
};
