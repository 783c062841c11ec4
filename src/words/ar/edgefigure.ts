// Floor 7. Arabic: one edge, before and after, as a figure.
import type { In } from "../en/all.ts";
import type { edgefigure as english } from "../en/edgefigure.ts";

export const edgefigure: In<typeof english> = {
  "edgefigure.edge": "الحافة",
  "edgefigure.becomes": "، وتتحول إلى {is}",
  "edgefigure.outcome": ": {outcome}، على {extent}.",
  "edgefigure.sideBySide": "جنبًا إلى جنب؛ التباين {contrast}.",
  "edgefigure.says": "{edge}: التباين {before} قبلُ، و{after} بعدُ؛ {outcome}.",
  "edgefigure.saysAfter": "{edge}: التباين {after} بعدُ؛ {outcome}.",
};
