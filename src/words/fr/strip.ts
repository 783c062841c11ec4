// Floor 7. French: the distance strip.
import type { In } from "../en/all.ts";
import type { strip as english } from "../en/strip.ts";

export const strip: In<typeof english> = {
  "strip.from": "À <number>{distance}</number> hauteurs de drapeau",
  "strip.focus": "ce qui doit se voir :",
  "strip.clarity": "netteté",
  "strip.caption":
    "L’original d’abord, puis le nouveau dessin, tels qu’un œil perçant les voit de là, ramenés à la même taille : sans vent, sans brume, sans éblouissement.",
  "strip.title": "Bande des distances",
  "strip.label": "{label} à {distance} hauteurs de drapeau",
  "strip.blur": "Flou de {blur} pour cent de sa hauteur.",
  "strip.blurAndFocus": "Flou de {blur} pour cent de sa hauteur ; {focus}.",
  "strip.focusClarity": "ce qui doit se voir a une netteté de {clarity}",
  "strip.focusLost": "ce qui doit se voir est trop petit pour être reconnu",
  "strip.lost": "agrandi : à sa vraie taille, trop petit pour être reconnu",
  "strip.describe":
    "Les deux drapeaux tels qu’on les voit à {distances} hauteurs de drapeau, de plus en plus flous.",
  "strip.onlyThere": "La netteté n’est dite que là où ce qui doit se voir peut encore être reconnu.",
  "strip.level":
    "Aussi loin qu’on peut le reconnaître, ce qui doit se voir a une netteté de {before} dans l’original et de {after} dans le nouveau dessin.",
  "strip.rises":
    "Elle monte de plus loin, là où des parties fines aux limites faibles ne se voient plus et ne comptent plus.",
};
