// Floor 7. Arabic: what stands around the content of every page, and the page of a missing address.
import type { In } from "../en/all.ts";
import type { frame as english } from "../en/frame.ts";

export const frame: In<typeof english> = {
  "frame.skip": "إلى المحتوى",
  "frame.gallery": "المعرض",
  "frame.studies": "الدراسات",
  "frame.survey": "المسح",
  "frame.method": "المنهج",
  "frame.allStudies": "كل الدراسات",
  "frame.cautions":
    "كل تصميم جديد معروض هنا دراسة غير رسمية مطروحة للنقاش. تختلف القوانين في استعمال الأعلام: فاتبع قوانين بلدك، واحترم رخصة كل رسم. انظر <cautions>التنبيهات</cautions>، وللمؤلفين <rules>قواعد الدراسات والرسوم</rules>.",
  "frame.publishedBy": "الناشر: {society}.",
  "frame.textsUnder": "النصوص برخصة <licence>{name}</licence>.",
  "frame.madeWith":
    "صُنع بـ Counterchange. الخطان Source Serif 4 وSource Sans 3، برخصة <licence>الخطوط المفتوحة</licence>.",
  "frame.missing": "لا صفحة هنا",
  "frame.missingText": "لا صفحة بهذا العنوان. ربما سُحبت دراسة من المعرض، أو كُتب العنوان خطأً.",
  "frame.missingDescription": "لا صفحة بهذا العنوان.",
  "frame.moved": "انتقلت هذه الصفحة: {title}.",
};
