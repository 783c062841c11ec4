// Floor 7. Arabic: both flags of a study, and what swaps them.
import type { In } from "../en/all.ts";
import type { pair as english } from "../en/pair.ts";

export const pair: In<typeof english> = {
  "pair.swap": "بدّل في المكان",
  "pair.both": "اعرض العلمين",
  "pair.pressFlag": "اضغط على علم",
  "pair.orKey": "أو على مفتاح سهم، أو",
  "pair.pressKey": "اضغط على مفتاح سهم، أو",
  "pair.bothShown": "العلمان معروضان",
  "pair.shownAlone": "{name} معروض وحده",
  "pair.split": "نصفه الأصل ونصفه التصميم الجديد",
};
