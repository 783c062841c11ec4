// Floor 7. Arabic: the form that finds studies.
import type { In } from "../en/all.ts";
import type { finder as english } from "../en/finder.ts";

export const finder: In<typeof english> = {
  "finder.words": "كلمات",
  "finder.order": "الترتيب",
  "finder.more": "مرشحات أخرى",
  "finder.any": "الكل",
  "finder.find": "بحث",
  "finder.all": "عرض الكل",
  "finder.none": "لا دراسة توافق هذا كله. احذف كلمة أو اختيارًا، أو اعرض الكل.",
  "finder.pages": "صفحات فيها هذه الكلمات: <list></list>",
  "finder.status": "الحالة",
  "finder.verdict": "الحكم",
  "finder.tag": "الوسم",
  "finder.author": "المؤلف",
  "finder.mostGained": "الأكثر كسبًا",
  "finder.newest": "الأحدث",
  "finder.mostLost": "الأكثر خسارة",
  "finder.leastClear": "أقل التصاميم الجديدة وضوحًا",
  "finder.title": "العنوان",
  "finder.found":
    "{found} من {count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستين} few {# دراسات} many {# دراسة} other {# دراسة}}",
  "finder.foundListed": "{found} من {listed} مدرجة هنا",
};
