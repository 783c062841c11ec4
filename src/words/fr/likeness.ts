// Floor 7. French: which flags a redesign could be taken for.
import type { In } from "../en/all.ts";
import type { likeness as english } from "../en/likeness.ts";

export const likeness: In<typeof english> = {
  "likeness.figure": "Écart de couleur moyen ΔE00 {difference}",
  "likeness.figureMirrored": "Écart de couleur moyen ΔE00 {difference}, vu de revers",
  "likeness.figureTurned": "Écart de couleur moyen ΔE00 {difference}, tête en bas",
  "likeness.flags":
    "{count, plural, one {# autre drapeau ou nouveau dessin} other {# autres drapeaux et nouveaux dessins}}",
  "likeness.hardly":
    "Difficilement. Sur {flags}, le plus proche est {nearest} : {figure} ; au-dessous de {limit}, un drapeau se prend facilement pour un autre.",
  "likeness.could":
    "C’est possible. Sur {flags}, {count, plural, one {un est proche} other {plusieurs sont proches}} : {names} ; au-dessous de {limit}, un drapeau se prend facilement pour un autre, et le plus proche a {figure}.",
  "likeness.rivals": "Les autres propositions pour ce drapeau ne sont pas comptées.",
  "likeness.own": "Ce nouveau dessin",
};
