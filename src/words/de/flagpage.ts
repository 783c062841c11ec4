// Floor 7. German: the page of a flag with several redesigns, or that readers named.
import type { In } from "../en/all.ts";
import type { flagPage as english } from "../en/flagpage.ts";

export const flagPage: In<typeof english> = {
  "flagPage.two": "{flag}: {one} oder {other}",
  "flagPage.pair": "{one} und {other}",
  "flagPage.namedShort": "Von Lesern genannt.",
  "flagPage.named": "Von Lesern genannt",
  "flagPage.proposal": "Vorschlag {number}",
  "flagPage.marks": "Klarheit {clarity}, schwächste Kante {contrast}",
  "flagPage.all": "Alle Vorschläge",
  "flagPage.pairs": "Zwei nebeneinander: <list></list>",
  "flagPage.edges": "Was jeder Vorschlag besser und schlechter macht",
  "flagPage.survey": "Ihre Zahlen in der Übersicht",
  "flagPage.swap": "Am Platz wechseln",
  "flagPage.showAll": "Alle zeigen",
  "flagPage.allShown": "Alle Flaggen sind zu sehen",
  "flagPage.bothShown": "Beide Flaggen sind zu sehen",
  "flagPage.shownAlone": "{name} ist allein zu sehen",
  "flagPage.head": "Vorschlag",
  "flagPage.verdict": "Urteil",
  "flagPage.focus": "Dessen, was gesehen werden muss",
  "flagPage.share": "Geänderter Anteil",
};
