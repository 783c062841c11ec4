// Floor 7. French: the page of a flag with several redesigns, or that readers named.
import type { In } from "../en/all.ts";
import type { flagPage as english } from "../en/flagpage.ts";

export const flagPage: In<typeof english> = {
  "flagPage.two": "{flag} : {one} ou {other}",
  "flagPage.pair": "{one} et {other}",
  "flagPage.namedShort": "Désigné par les lecteurs.",
  "flagPage.named": "Désigné par les lecteurs",
  "flagPage.proposal": "Proposition {number}",
  "flagPage.marks": "Netteté {clarity}, limite la plus faible {contrast}",
  "flagPage.all": "Toutes les propositions",
  "flagPage.pairs": "Deux côte à côte : <list></list>",
  "flagPage.edges": "Ce que chacune gagne et perd",
  "flagPage.survey": "Ses chiffres dans le recensement",
  "flagPage.swap": "Alterner sur place",
  "flagPage.showAll": "Tout montrer",
  "flagPage.allShown": "Tous les drapeaux montrés",
  "flagPage.bothShown": "Les deux drapeaux montrés",
  "flagPage.shownAlone": "{name}, seul",
  "flagPage.head": "Proposition",
  "flagPage.verdict": "Verdict",
  "flagPage.focus": "De ce qui doit se voir",
  "flagPage.share": "Part qui change",
};
