// Floor 7. Arabic: whether a redesign could be mistaken for another flag.
import type { In } from "../en/all.ts";
import type { near as english } from "../en/near.ts";

export const near: In<typeof english> = {
  "near.beside": "إلى جانب أقرب الأعلام إليه",
  "near.hidden": "{name}، غير معروض هنا",
  "near.scale": "متوسط ΔE00 على العلم كله قماشًا: 0 هو الصورة نفسها. <how>كيف يُقاس الشبه</how>",
  "near.redesign": "التصميم الجديد في «{study}»",
};
