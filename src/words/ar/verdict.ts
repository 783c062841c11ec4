// Floor 7. Arabic: what a change does, and the verdict with its price.
import type { In } from "../en/all.ts";
import type { verdict as english } from "../en/verdict.ts";

export const verdict: In<typeof english> = {
  "verdict.change": "يتحول {before} إلى {after}.",
  "verdict.changeInPart": "يتحول {before} إلى {after}، في {part} وحده.",
  "verdict.selectedPart": "الجزء المختار ({selector})",
  "verdict.clearer": "أوضح",
  "verdict.clearerAtPrice": "أوضح، بثمن",
  "verdict.mixed": "متفاوت",
  "verdict.lessClear": "أقل وضوحًا",
  "verdict.noGain": "بلا كسب",
  "verdict.semicolon": "{clause}؛ {more}",
  "verdict.colon": "{clause}: {more}",
  "verdict.and": "{clause}، و{more}",
  "verdict.but": "{clause}، لكن {more}",
  "verdict.stays": "الوضوح ثابت عند {now}",
  "verdict.rises": "الوضوح يرتفع من {before} إلى {now}",
  "verdict.falls": "الوضوح يهبط من {before} إلى {now}",
  "verdict.stronger": "الحواف تزداد قوة فوق حد الوضوح",
  "verdict.weaker": "الحواف تضعف فوق حد الوضوح",
  "verdict.thePrice": "الثمن: {price}",
  "verdict.gains":
    "{count, plural, zero {لا حافة تكسب} one {حافة واحدة تكسب} two {حافتان تكسبان} few {# حواف تكسب} many {# حافة تكسب} other {# حافة تكسب}}",
  "verdict.onlyShort": "لا تصير أصعب رؤية إلا حواف دون {part} من طول الحواف كلها",
  "verdict.noneHarder": "لا حافة تصير أصعب رؤية",
  "verdict.tooLittle": "{moved}، وهو أقل من أن يحركه",
  "verdict.noStep":
    "لا حافة تزيد وضوحًا أو تنقص بمقدار {points, plural, zero {# نقطة} one {نقطة واحدة} two {نقطتين} few {# نقاط} many {# نقطة} other {# نقطة}}",
  "verdict.noneMoves": "لا حافة تصير أسهل أو أصعب رؤية",
  "verdict.noneToTheEye": "لا يتغير في العين شيء سوى حواف دون {part} من طول الحواف كلها",
};
