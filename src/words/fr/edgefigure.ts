// Floor 7. French: one edge, before and after, as a figure.
import type { In } from "../en/all.ts";
import type { edgefigure as english } from "../en/edgefigure.ts";

export const edgefigure: In<typeof english> = {
  "edgefigure.edge": "Limite",
  "edgefigure.becomes": ", qui devient {is}",
  "edgefigure.outcome": " : {outcome}, sur {extent}.",
  "edgefigure.sideBySide": "Côte à côte ; contraste {contrast}.",
  "edgefigure.says": "{edge} : contraste {before} avant, {after} après ; {outcome}.",
  "edgefigure.saysAfter": "{edge} : contraste {after} après ; {outcome}.",
};
