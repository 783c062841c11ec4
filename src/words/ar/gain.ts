// Floor 7. Arabic: the chart of what each change does to clarity.
import type { In } from "../en/all.ts";
import type { gain as english } from "../en/gain.ts";

export const gain: In<typeof english> = {
  "gain.title": "ما يفعله كل تغيير بالوضوح",
  "gain.order": "الأكثر كسبًا أولًا.",
  "gain.key": "حلقة للأصل، ونقطة للتصميم الجديد؛ وخط متقطع حيث يهبط الوضوح.",
  "gain.othersListed":
    "{count, plural, zero {لا دراسات أخرى} one {الدراسة الأخرى في قائمة الكل} two {الدراستان الأخريان في قائمة الكل} few {الدراسات الـ# الأخرى في قائمة الكل} many {الدراسات الـ# الأخرى في قائمة الكل} other {الدراسات الـ# الأخرى في قائمة الكل}}",
  "gain.othersOnFront":
    "{count, plural, zero {لا دراسات أخرى} one {الدراسة الأخرى في الصفحة الأولى} two {الدراستان الأخريان في الصفحة الأولى} few {الدراسات الـ# الأخرى في الصفحة الأولى} many {الدراسات الـ# الأخرى في الصفحة الأولى} other {الدراسات الـ# الأخرى في الصفحة الأولى}}",
  "gain.told":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}: الوضوح {ways}.",
  "gain.rises": "يرتفع في {count}",
  "gain.falls": "يهبط في {count}",
  "gain.stays": "يثبت في {count}",
  "gain.most": "أكثر ارتفاعه في «{title}»، من {before} إلى {after}.",
  "gain.here": "في هذه الدراسة ينتقل من {before} إلى {after}.",
};
