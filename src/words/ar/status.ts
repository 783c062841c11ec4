// Floor 7. Arabic: what became of a study, in a word and what that word means.
import type { In } from "../en/all.ts";
import type { status as english } from "../en/status.ts";

export const status: In<typeof english> = {
  "status.draft": "مسوّدة",
  "status.draftMeans": "لم تكتمل",
  "status.open": "مفتوحة",
  "status.openMeans": "مقترحة، لم يُبتّ فيها بعد",
  "status.adopted": "معتمدة",
  "status.adoptedMeans": "قبلها أصحاب القرار هنا",
  "status.declined": "مرفوضة",
  "status.declinedMeans": "لم يقبلها أصحاب القرار هنا",
  "status.withdrawn": "مسحوبة",
  "status.withdrawnMeans": "سحبها مؤلفوها",
};
