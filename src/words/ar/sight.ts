// Floor 7. Arabic: kinds of sight.
import type { In } from "../en/all.ts";
import type { sight as english } from "../en/sight.ts";

export const sight: In<typeof english> = {
  "sight.protan": "عمى الأحمر",
  "sight.deutan": "عمى الأخضر",
  "sight.tritan": "عمى الأزرق",
  "sight.grey": "الرمادي",
  "sight.protanMeans": "بلا مخاريط الموجات الطويلة",
  "sight.deutanMeans": "بلا مخاريط الموجات المتوسطة",
  "sight.tritanMeans": "بلا مخاريط الموجات القصيرة",
  "sight.greyMeans": "كما تطبعه آلة نسخ بالأبيض والأسود",
};
