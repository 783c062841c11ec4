// Floor 7. Arabic: the front page.
import type { In } from "../en/all.ts";
import type { front as english } from "../en/front.ts";

export const front: In<typeof english> = {
  "front.nominate": "علم يستحق دراسة؟ <name>سمِّه، وقل لماذا</name>",
  "front.empty":
    "لم يُنشر هنا شيء بعد. ستكون أول دراسة في هذه الصفحة؛ وحتى ذلك الحين يروي <method>المنهج</method> كيف ستُقاس.",
  "front.earlier": "دراسات أسبق",
  "front.edgeless": "بلا حافة تُقاس: <list></list>.",
  "front.more":
    "{count, plural, zero {لا مزيد} one {واحدة أخرى} two {اثنتان أخريان} few {# أخرى} many {# أخرى} other {# أخرى}}",
};
