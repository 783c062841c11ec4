// Floor 7. French: both flags as four kinds of sight have them.
import type { In } from "../en/all.ts";
import type { seen as english } from "../en/seen.ts";

export const seen: In<typeof english> = {
  "seen.title": "Vu autrement",
  "seen.caption":
    "L’original d’abord, puis le nouveau dessin : des approximations de ce que les lecteurs daltoniens, et l’impression en gris, font des deux drapeaux. Elles ne sont pas un test de la vue de quiconque. Les gris diffèrent d’un écart de couleur, ΔE00 : plus il est grand, mieux on distingue.",
  "seen.greys": "écart des deux gris les plus proches",
  "seen.clarity": "netteté du drapeau entier",
  "seen.looks": "{name} paraît {seen}",
  "seen.kept": "{names} {count, plural, one {garde son nom} other {gardent leur nom}}",
  "seen.inGrey": "{name} en gris",
  "seen.byProtan": "{name} vu par des yeux protans",
  "seen.byDeutan": "{name} vu par des yeux deutans",
  "seen.byTritan": "{name} vu par des yeux tritans",
};
