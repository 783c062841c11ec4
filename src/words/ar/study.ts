// Floor 7. Arabic: the page of a study.
import type { In } from "../en/all.ts";
import type { study as english } from "../en/study.ts";

export const study: In<typeof english> = {
  "study.afar": "من بعيد",
  "study.theStrip": "شريط المسافات",
  "study.theSizes": "صف الأحجام",
  "study.contents": "في هذه الصفحة",
  "study.seen": "عند المصابين بعمى الألوان، وبالرمادي",
  "study.likeness": "هل يلتبس بغيره؟",
  "study.argue": "ناقش هذا",
  "study.shown": "{name} في <argument>الحجة</argument>.",
  "study.numbers": "المقارنة بالأرقام",
  "study.theSeen": "ما يرونه",
  "study.unofficial": "دراسة غير رسمية",
  "study.allChanges": "كل التغييرات المفردة",
  "study.verdictHow": "كيف يُتوصل إلى الحكم",
  "study.show": "خطوة بخطوة، لجهاز العرض",
  "study.sheets": "أوراق لصف دراسي",
  "study.argueByMail": "ناقش هذا بالبريد",
  "study.argument": "الحجة",
  "study.decision": "القرار",
  "study.meaning": "المعنى",
  "study.unofficialLead": "دراسة غير رسمية لإعادة التصميم.",
};
