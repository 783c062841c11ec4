// Floor 7. Arabic: the survey of all flags as they are.
import type { In } from "../en/all.ts";
import type { survey as english } from "../en/survey.ts";

export const survey: In<typeof english> = {
  "survey.title": "المسح",
  "survey.lede":
    "كل علم في المعرض كما هو اليوم: مدى وضوح حوافه، وأضعفها، واللون الذي يُغيَّر أولًا. ولا تقول الأرقام شيئًا عن الجمال أو المعنى.",
  "survey.flags":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}",
  "survey.only":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}.",
  "survey.ordered":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}، الأقل وضوحًا أولًا.",
  "survey.description":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}، الأقل وضوحًا أولًا: أضعف حافة في كل منها، واللون الذي يُغيَّر أولًا، وأفضل تغيير مفرد.",
  "survey.told":
    "أعلام تباين أضعف حوافها دون {limit}: {weak, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}؛ وأعلام يزيدها تغيير لون واحد {points, plural, zero {# نقطة} one {نقطة واحدة} two {نقطتين} few {# نقاط} many {# نقطة} other {# نقطة}} من الوضوح فأكثر: {helped, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}.",
  "survey.how": "كيف يُصنع المسح",
  "survey.empty": "لا شيء للمسح بعد.",
  "survey.more":
    "{count, plural, zero {لا أعلام أخرى} one {علم آخر} two {علمان آخران} few {# أعلام أخرى} many {# علمًا آخر} other {# علم آخر}}",
  "survey.rest": "المدرج هو الـ{listed} الأقل وضوحًا؛ والـ{rest} الأخرى في الملفات.",
  "survey.failed": "لم تُقس",
  "survey.files": "الملفات",
  "survey.failedRest": "و{count} غيرها، كلها في ملف JSON.",
  "survey.csv": "المسح، CSV",
  "survey.json": "المسح، JSON",
  "survey.pictured":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}، الأقل وضوحًا أولًا",
  "survey.range": "من {least} إلى {most}",
  "survey.caution": "لا تقول الأرقام شيئًا عن الجمال أو المعنى.",
  "survey.alt": "ورقة أعلام. المسح: {flags}. الوضوح: {number}. {caution}",
  "survey.study": "الدراسة",
  "survey.withStudy": "له دراسة",
  "survey.withoutStudy": "بلا دراسة",
  "survey.none": "لا علم يوافق هذا كله. احذف كلمة أو اختيارًا، أو اعرض الكل.",
  "survey.found":
    "{found} من {count, plural, zero {لا أعلام} one {علم واحد} two {علمين} few {# أعلام} many {# علمًا} other {# علم}}",
};
