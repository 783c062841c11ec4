// Floor 7. Arabic: what makes the figures of a drawing less certain.
import type { In } from "../en/all.ts";
import type { doubt as english } from "../en/doubt.ts";

export const doubt: In<typeof english> = {
  "doubt.joined":
    "في الرسم ألوان أكثر مما يُقاس كلٌّ على حدة: {count, plural, zero {أقلها ظهورًا يُقاس} one {أقلها ظهورًا يُقاس} two {اللونان الأقل ظهورًا يُقاسان} few {الألوان الـ# الأقل ظهورًا تُقاس} many {الألوان الـ# الأقل ظهورًا تُقاس} other {الألوان الـ# الأقل ظهورًا تُقاس}} مع لون قريب أظهر، أو معًا باسم «{name}».",
  "doubt.faint":
    "{count, plural, zero {لا شكل يظهر بأقل من نصفه.} one {شكل واحد يظهر بأقل من نصفه فلم يُقس.} two {شكلان يظهران بأقل من النصف فلم يُقاسا.} few {# أشكال تظهر بأقل من النصف فلم تُقس.} many {# شكلًا تظهر بأقل من النصف فلم تُقس.} other {# شكل تظهر بأقل من النصف فلم تُقس.}}",
  "doubt.inexact": "لم يمكن التمييز بدقة إلا في {share} من الرسم؛ فأرقامه أقل يقينًا.",
  "doubt.nearLimit": "عند حد البصر: أجزاء بلون {names}.",
  "doubt.effect": "في رسم صاحبه ما لا يُعرض هنا ولا يُقاس: {looks}.",
};
