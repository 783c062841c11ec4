// Floor 7. Arabic: the edge map.
import type { In } from "../en/all.ts";
import type { map as english } from "../en/map.ts";

export const map: In<typeof english> = {
  "map.caption":
    "حيث يلتقي لونان، كما رُسمت من مسافة النظر. الخطوط المتصلة واضحة أو قوية، والمتقطعة ليست كذلك.",
  "map.bandNote": "الشريط يحيط بما ينبغي أن يُرى.",
  "map.title": "خريطة الحواف",
  "map.focusFound": "ما ينبغي أن يُرى، كما وُجد: {share} من العلم",
  "map.focusNamed": "ما ينبغي أن يُرى، كما سمّاه المؤلف: {share} من العلم",
  "map.none": "لا حواف.",
  "map.firstGrade": "{grade}، {share} من طول الحواف كلها: {names}.",
  "map.grade": "{grade}، {share}: {names}.",
};
