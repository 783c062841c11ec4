// Floor 7. Arabic: the matrix of all single changes.
import type { In } from "../en/all.ts";
import type { matrix as english } from "../en/matrix.ts";

export const matrix: In<typeof english> = {
  "matrix.notTried": "لم يُجرَّب",
  "matrix.own": "هذه الدراسة",
  "matrix.note": "ملاحظة {number}",
  "matrix.merges": "يندمج",
  "matrix.clearest": "الأوضح في الصف",
  "matrix.title": "كل التغييرات المفردة",
  "matrix.ownHue": "كنهه نفسه",
  "matrix.studys": "{name}، من الدراسة",
  "matrix.unranked": "بلا رتبة: يندمج {share} من محيط شارة",
  "matrix.moreColours":
    "{count, plural, zero {لا ألوان أخرى} one {لون آخر من ألوان العلم} two {لونان آخران من ألوان العلم} few {# ألوان أخرى من ألوان العلم} many {# لونًا آخر من ألوان العلم} other {# لون آخر من ألوان العلم}}",
  "matrix.moreReplacements":
    "{count, plural, zero {لا بدائل أخرى} one {بديل آخر} two {بديلان آخران} few {# بدائل أخرى} many {# بديلًا آخر} other {# بديل آخر}}",
  "matrix.reading": "الصف يغيّر لونًا من ألوان العلم، والعمود يقول إلى أي لون.",
  "matrix.clarity": "تحت كل علم وضوحه.",
  "matrix.clarityToday": "تحت كل علم وضوحه؛ وللأصل {today}.",
  "matrix.bold": "بالخط العريض: الأوضح في صفه، أو أكثر من واحد إن تساوت.",
  "matrix.mergesNote": "«يندمج»: يصير اللونان واحدًا.",
  "matrix.greyNote": "بالرمادي: بلا رتبة، لأن ثلث محيط شارة أو أكثر يندمج.",
  "matrix.dash": "الشرطة: لم يُجرَّب، أو لا تغيير يُرى.",
  "matrix.partAlone": "تغيير هذه الدراسة في جزء واحد، وليس بينها.",
  "matrix.left": "لم يُعرض: {what}.",
};
