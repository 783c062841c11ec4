// Floor 7. Arabic: the page of a flag with several redesigns, or that readers named.
import type { In } from "../en/all.ts";
import type { flagPage as english } from "../en/flagpage.ts";

export const flagPage: In<typeof english> = {
  "flagPage.two": "{flag}: {one} أو {other}",
  "flagPage.pair": "{one} و{other}",
  "flagPage.namedShort": "سمّاه القراء.",
  "flagPage.named": "سمّاه القراء",
  "flagPage.proposal": "الاقتراح {number}",
  "flagPage.marks": "الوضوح {clarity}، أضعف حافة {contrast}",
  "flagPage.all": "كل الاقتراحات",
  "flagPage.pairs": "اثنان جنبًا إلى جنب: <list></list>",
  "flagPage.edges": "ما يحسّنه كل اقتراح وما يسيء إليه",
  "flagPage.survey": "أرقامه في المسح",
  "flagPage.swap": "بدّل في المكان",
  "flagPage.showAll": "اعرض الكل",
  "flagPage.allShown": "كل الأعلام معروضة",
  "flagPage.bothShown": "العلمان معروضان",
  "flagPage.shownAlone": "{name} معروض وحده",
  "flagPage.head": "الاقتراح",
  "flagPage.verdict": "الحكم",
  "flagPage.focus": "لما ينبغي أن يُرى",
  "flagPage.share": "الحصة المتغيرة",
};
