// Floor 7. Arabic: the marks of a flag.
import type { In } from "../en/all.ts";
import type { mark as english } from "../en/mark.ts";

export const mark: In<typeof english> = {
  "mark.clarity": "الوضوح",
  "mark.contrast": "التباين",
  "mark.length": "الطول",
  "mark.near": "عند العتبة",
  "mark.nearNow": "الآن عند العتبة",
  "mark.nearBefore": "كانت عند العتبة",
  "mark.hue": "بكنه اللون وحده",
  "mark.hueNow": "الآن بكنه اللون وحده",
  "mark.hueBefore": "كانت بكنه اللون وحده",
  "mark.clarityMeans": "100% حيث كل حافة واضحة",
  "mark.focusClarity": "وضوح ما ينبغي أن يُرى",
  "mark.weakest": "أضعف حافة",
  "mark.weakestMeans": "تباين اللونين",
};
