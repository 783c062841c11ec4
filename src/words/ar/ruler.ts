// Floor 7. Arabic: the contrast ruler.
import type { In } from "../en/all.ts";
import type { ruler as english } from "../en/ruler.ts";

export const ruler: In<typeof english> = {
  "ruler.caption": "تباين لونين متلاقيين: حلقة للأصل، ونقطة للتصميم الجديد؛ وخط غليظ للحافة الطويلة.",
  "ruler.fallsNote": "متقطع حيث يهبط التباين.",
  "ruler.mergedNote": "علامة × حيث يصير لونان لونًا واحدًا.",
  "ruler.outlineNote": "المحيط محيط ما ينبغي أن يُرى، ويُحسب مرتين.",
  "ruler.nearNote": "عند العتبة: على قماش آخر تكون الدرجة غيرها.",
  "ruler.hueNote":
    "بكنه اللون وحده: يختلف اللونان في الكنه ولا يكادان يختلفان في الإضاءة، فيتلاشيان عند الغسق وبالرمادي.",
  "ruler.ladderNote": "وإلى جانبه ما يردّه قماش كل لون من الضوء: لونان على ارتفاع واحد يصعب تمييزهما.",
  "ruler.edge": "الحافة",
  "ruler.contrast": "التباين، من الأصل إلى التصميم الجديد",
  "ruler.outcome": "النتيجة",
  "ruler.guess": "تخمينك",
  "ruler.title": "مسطرة التباين",
  "ruler.same":
    "{count, plural, zero {لا حافة تبقى كما كانت} one {حافة واحدة تبقى كما كانت} two {حافتان تبقيان كما كانتا} few {# حواف تبقى كما كانت} many {# حافة تبقى كما كانت} other {# حافة تبقى كما كانت}}",
  "ruler.moreMoved":
    "{count, plural, zero {لا حافة أخرى تتغير} one {حافة أخرى تتغير} two {حافتان أخريان تتغيران} few {# حواف أخرى تتغير} many {# حافة أخرى تتغير} other {# حافة أخرى تتغير}}",
  "ruler.moreMovedAndSame": "{moved}، و{same}",
  "ruler.row": "{edge}، {extent}: التباين {contrast}، {grades}",
};
