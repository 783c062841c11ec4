// Floor 7. French: the marks of a flag.
import type { In } from "../en/all.ts";
import type { mark as english } from "../en/mark.ts";

export const mark: In<typeof english> = {
  "mark.clarity": "Netteté",
  "mark.contrast": "Contraste",
  "mark.length": "Longueur",
  "mark.near": "au seuil",
  "mark.nearNow": "au seuil désormais",
  "mark.nearBefore": "au seuil auparavant",
  "mark.hue": "par la teinte seule",
  "mark.hueNow": "par la teinte seule désormais",
  "mark.hueBefore": "par la teinte seule auparavant",
  "mark.clarityMeans": "100 % quand chaque limite est nette",
  "mark.focusClarity": "Netteté de ce qui doit se voir",
  "mark.weakest": "Limite la plus faible",
  "mark.weakestMeans": "contraste des deux couleurs",
};
