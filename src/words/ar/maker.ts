// Floor 7. Arabic: the sheet from which an adopted redesign is made as a flag.
import type { In } from "../en/all.ts";
import type { maker as english } from "../en/maker.ts";

export const maker: In<typeof english> = {
  "maker.title": "{title}، ورقة للصانعين",
  "maker.description": "نسب التصميم الجديد المعتمد وبناؤه وألوانه، للطباعة.",
  "maker.kind": "ورقة للصانعين",
  "maker.for": "للصانعين",
  "maker.print": "للطباعة: أمر الطباعة في متصفحك، A4 أو Letter، طوليًا. صفحة واحدة.",
  "maker.toStudy": "الدراسة",
  "maker.redesign": "التصميم الجديد",
  "maker.outline": "{name}: التصميم الجديد بالخطوط",
  "maker.proportions": "الارتفاع إلى العرض <number>{proportions}</number>. جهة السارية إلى اليسار.",
  "maker.built": "البناء",
  "maker.shape": "الشكل",
  "maker.fromHoist": "من السارية",
  "maker.fromTop": "من الأعلى",
  "maker.width": "العرض",
  "maker.height": "الارتفاع",
  "maker.rectangle": "مستطيل",
  "maker.line": "خط",
  "maker.circle": "دائرة، بمركزها",
  "maker.ring": "حلقة، بمركزها",
  "maker.across": "القطر {width}",
  "maker.hole": "الثقب {height}",
  "maker.laid": "بترتيب وضعها: اللاحق يغطي السابق.",
  "maker.none": "لم يمكن قراءة أشكال بسيطة من الرسم. وملف الرسم هو الفيصل.",
  "maker.parts": "الأعداد الصحيحة أجزاء، والارتفاع {parts} منها.",
  "maker.percent": "المواضع والمقاسات بالنسبة المئوية من الارتفاع، مقرّبة.",
  "maker.untold":
    "{count, plural, zero {لم يُترك شكل.} one {تُرك شكل آخر واحد لأنه غير بسيط أو لضيق الصفحة: ملف الرسم هو الفيصل.} two {تُرك شكلان آخران لأنهما غير بسيطين أو لضيق الصفحة: ملف الرسم هو الفيصل.} few {تُركت # أشكال أخرى لأنها غير بسيطة أو لضيق الصفحة: ملف الرسم هو الفيصل.} many {تُرك # شكلًا آخر لأنها غير بسيطة أو لضيق الصفحة: ملف الرسم هو الفيصل.} other {تُرك # شكل آخر لأنها غير بسيطة أو لضيق الصفحة: ملف الرسم هو الفيصل.}}",
  "maker.colours": "الألوان",
  "maker.colour": "اللون",
  "maker.hex": "Hex",
  "maker.reflectance": "الانعكاسية",
  "maker.others":
    "{count, plural, zero {لا ألوان أخرى.} one {لون آخر في صفحة الدراسة.} two {لونان آخران في صفحة الدراسة.} few {# ألوان أخرى في صفحة الدراسة.} many {# لونًا آخر في صفحة الدراسة.} other {# لون آخر في صفحة الدراسة.}}",
  "maker.coloursHow":
    "sRGB بالبايت؛ وCIELAB تحت D65؛ وانعكاسية قماش صبغته تطابق الشاشة، بين قماش المعرض الأسود وقماشه الأبيض.",
  "maker.source": "المصادر: IEC 61966-2-1 (sRGB)، CIE 15:2004 (CIELAB).",
  "maker.cautions": "قبل أن تصنعه",
  "maker.law": "القانون المحلي أولًا: في هيئة العلم، ومن يصنعه، ومن يرفعه.",
  "maker.cloth":
    "جداول الأقمشة والأصباغ هي الفيصل. لون الشاشة ليس صبغًا: اختر من جدول في ضوء النهار، واحفظ بين الألوان ما بينها هنا من فرق في الإضاءة.",
  "maker.file": "حيث تختلف هذه الورقة وملف الرسم، فملف الرسم هو الفيصل.",
};
