// Floor 7. Arabic: what stands around the rules for studies and drawings, which are English in every language.
import type { In } from "../en/all.ts";
import type { rules as english } from "../en/rules.ts";

export const rules: In<typeof english> = {
  "rules.title": "قواعد الدراسات والرسوم",
  "rules.description": "معنى كل رسالة عن دراسة أو رسم، مع مثال خاطئ ومثال صحيح.",
  "rules.lede":
    "تنتهي كل رسالة عن دراسة باسم قاعدتها. القواعد كلها هنا، {count, plural, zero {لا قواعد} one {قاعدة واحدة} two {قاعدتان} few {# قواعد} many {# قاعدة} other {# قاعدة}}: معنى كل منها، وسبب وجودها، ومثال خاطئ إلى جانب مثال صحيح.",
  "rules.note":
    "كل قاعدة خطأ يُبعد الدراسة عن المعرض حتى يُصلح، ما لم توسم بأنها تحذير، فتبقى. والأمثلة في الإطار هي ما يُكتب، وقد جُرّبت: الخاطئ يستدعي قاعدته وحدها، والصحيح لا يستدعي شيئًا.",
  "rules.find": "ابحث عن قواعد فيها هذه الكلمات",
  "rules.count":
    "{count, plural, zero {لا قواعد} one {قاعدة واحدة} two {قاعدتان} few {# قواعد} many {# قاعدة} other {# قاعدة}}",
  "rules.found":
    "{found} من {count, plural, zero {لا قواعد} one {قاعدة واحدة} two {قاعدتين} few {# قواعد} many {# قاعدة} other {# قاعدة}}",
  "rules.warning": "تحذير",
  "rules.link": "رابط إلى هذه القاعدة",
  "rules.wrong": "خطأ",
  "rules.wrongIn": "خطأ، في {file}",
  "rules.wrongInFolder": "خطأ، في مجلد المحتوى",
  "rules.right": "صواب",
  "rules.rightIn": "صواب، في {file}",
  "rules.rightInFolder": "صواب، في مجلد المحتوى",
  "rules.leaveOut": "احذفه.",
};
