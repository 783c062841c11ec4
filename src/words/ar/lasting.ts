// Floor 7. Arabic: how far what has to be seen lasts, as a figure.
import type { In } from "../en/all.ts";
import type { lasting as english } from "../en/lasting.ts";

export const lasting: In<typeof english> = {
  "lasting.caption": "وضوح ما ينبغي أن يُرى من كذا ضعفًا لارتفاع العلم: حلقة للأصل، ونقطة للتصميم الجديد.",
  "lasting.model": "نموذج للبصر",
};
