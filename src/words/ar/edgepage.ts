// Floor 7. Arabic: the page of one edge.
import type { In } from "../en/all.ts";
import type { edgepage as english } from "../en/edgepage.ts";

export const edgepage: In<typeof english> = {
  "edgepage.place": "على العلم؛ وما في الإطار معروض مكبَّرًا",
  "edgepage.numbers": "الحافة بالأرقام",
  "edgepage.elsewhere": "اللونان نفسهما في دراسات أخرى",
  "edgepage.study": "الدراسة",
  "edgepage.elsewhereNote": "ألوان ذات اسم واحد ليست بالضرورة لونًا واحدًا: قارن القماش لا الكلمة.",
  "edgepage.siblings": "حواف هذه الدراسة",
  "edgepage.nearLine": "{near}: على قماش آخر تكون غيرها. <why>لماذا</why>",
  "edgepage.how": "كيف يُحسب <contrast>التباين</contrast>، و<beside>ما يقف إلى جانبه</beside>.",
  "edgepage.locator": "موضع الحافة",
  "edgepage.locatorSays": "العلم الأصلي باهتًا، مع الخطوط المرسومة حيث يلتقي {one} و{other}.",
  "edgepage.contrast": "التباين",
  "edgepage.difference": "فرق اللون",
  "edgepage.sides": "الأصل أولًا، ثم التصميم الجديد.",
  "edgepage.seenNote":
    "الرمادي يحفظ التباين. وفرق اللون هو ΔE00: كلما زاد سهل التمييز. وهي تقريبات لأشد صور كل قصور، وليست اختبارًا لبصر أحد. <how>كيف تُصنع</how>",
  "edgepage.noEdge": "لا حافة",
  "edgepage.all": "كلها على مسطرة واحدة",
  "edgepage.of": "حافة من <study>{title}</study>",
  "edgepage.becomes": "{was} تتحول إلى {is}",
  "edgepage.description": "حافة من دراسة غير رسمية لإعادة التصميم، {outcome}.",
  "edgepage.title": "{edge}، في {study}",
  "edgepage.placeAlt": "{label}، الموضع الذي يلتقي فيه {one} و{other}",
  "edgepage.unofficial": "التصميم الجديد، دراسة غير رسمية",
  "edgepage.bothNear": "كلتا الدرجتين عند العتبة",
  "edgepage.originalNear": "درجة الأصل عند العتبة",
  "edgepage.redesignNear": "درجة التصميم الجديد عند العتبة",
};
