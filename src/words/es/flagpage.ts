// Floor 7. Spanish: the page of a flag with several redesigns, or that readers named.
import type { In } from "../en/all.ts";
import type { flagPage as english } from "../en/flagpage.ts";

export const flagPage: In<typeof english> = {
  "flagPage.two": "{flag}: {one} o {other}",
  "flagPage.pair": "{one} y {other}",
  "flagPage.namedShort": "Señalada por lectores.",
  "flagPage.named": "Señalada por lectores",
  "flagPage.proposal": "Propuesta {number}",
  "flagPage.marks": "Nitidez {clarity}, límite más débil {contrast}",
  "flagPage.all": "Todas las propuestas",
  "flagPage.pairs": "Dos lado a lado: <list></list>",
  "flagPage.edges": "Qué mejora y qué empeora cada una",
  "flagPage.survey": "Sus cifras en el censo",
  "flagPage.swap": "Alternar en el sitio",
  "flagPage.showAll": "Mostrar todas",
  "flagPage.allShown": "Se muestran todas las banderas",
  "flagPage.bothShown": "Se muestran las dos banderas",
  "flagPage.shownAlone": "{name}, a solas",
  "flagPage.head": "Propuesta",
  "flagPage.verdict": "Veredicto",
  "flagPage.focus": "De lo que debe verse",
  "flagPage.share": "Parte que cambia",
};
