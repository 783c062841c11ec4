// Floor 7. French: both flags of a study, and what swaps them.
import type { In } from "../en/all.ts";
import type { pair as english } from "../en/pair.ts";

export const pair: In<typeof english> = {
  "pair.swap": "Alterner sur place",
  "pair.both": "Montrer les deux",
  "pair.pressFlag": "Appuyez sur un drapeau",
  "pair.orKey": "ou une flèche du clavier, ou",
  "pair.pressKey": "Appuyez sur une flèche du clavier, ou",
  "pair.bothShown": "Les deux drapeaux montrés",
  "pair.shownAlone": "{name}, seul",
  "pair.split": "Moitié original, moitié nouveau dessin",
};
