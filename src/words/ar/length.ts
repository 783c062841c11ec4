// Floor 7. Arabic: how long an edge is.
import type { In } from "../en/all.ts";
import type { length as english } from "../en/length.ts";

export const length: In<typeof english> = {
  "length.heights": "{length} ضعف ارتفاع العلم",
  "length.offFocus": "{length} ضعف ارتفاع العلم، لا شيء منه على محيط ما ينبغي أن يُرى",
  "length.onFocus": "{length} ضعف ارتفاع العلم، كله على محيط ما ينبغي أن يُرى",
  "length.partOnFocus": "{length} ضعف ارتفاع العلم، منه {part} على محيط ما ينبغي أن يُرى",
  "length.wholeOutline": "المحيط كله",
  "length.ofOutline": "{share} من المحيط",
  "length.partly": "{length}، منه {own} هي {part}",
  "length.wholly": "{length}، {part}",
};
