// Floor 7. Arabic: the distance strip.
import type { In } from "../en/all.ts";
import type { strip as english } from "../en/strip.ts";

export const strip: In<typeof english> = {
  "strip.from": "من <number>{distance}</number> ضعف ارتفاع العلم",
  "strip.focus": "ما ينبغي أن يُرى:",
  "strip.clarity": "الوضوح",
  "strip.caption":
    "الأصل أولًا، ثم التصميم الجديد، كما تراهما عين حادة من هناك، مكبَّرين إلى حجم واحد: لا ريح ولا ضباب ولا وهج.",
  "strip.title": "شريط المسافات",
  "strip.label": "{label} من {distance} ضعف ارتفاع العلم",
  "strip.blur": "مغبَّش بقدر {blur} في المئة من ارتفاعه.",
  "strip.blurAndFocus": "مغبَّش بقدر {blur} في المئة من ارتفاعه؛ {focus}.",
  "strip.focusClarity": "وضوح ما ينبغي أن يُرى {clarity}",
  "strip.focusLost": "ما ينبغي أن يُرى أصغر من أن يُتبيَّن",
  "strip.lost": "مكبَّر: بحجمه الحقيقي أصغر من أن يُتبيَّن",
  "strip.describe": "العلمان كما يبدوان من {distances} ضعف ارتفاع العلم، أقل حدّة مرة بعد مرة.",
  "strip.onlyThere": "لا يُذكر الوضوح إلا حيث يمكن بعدُ تبيّن ما ينبغي أن يُرى.",
  "strip.level": "ما دام يمكن تبيّنه، فوضوح ما ينبغي أن يُرى {before} في الأصل و{after} في التصميم الجديد.",
  "strip.rises": "ويرتفع من أبعد حيث لا تعود الأجزاء الدقيقة ذات الحواف الضعيفة تُرى، فلا تُحسب.",
};
