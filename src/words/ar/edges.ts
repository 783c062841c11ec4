// Floor 7. Arabic: what became of each edge of a study.
import type { In } from "../en/all.ts";
import type { edges as english } from "../en/edges.ts";

export const edges: In<typeof english> = {
  "edges.none": "لون واحد: لا حواف تُقاس.",
  "edges.where": "مواضع الحواف",
  "edges.map": "خريطة الحواف",
  "edges.ruler": "مسطرة التباين",
  "edges.moreOnDistance": "المزيد عن <distance>المسافة</distance>",
  "edges.moreOnDistanceAndCloth": "المزيد عن <distance>المسافة</distance> و<cloth>القماش</cloth>",
  "edges.fimbriations": "خطوط تفصل بين لونين",
  "edges.fimbriationMoves":
    "من تباين الزوج نفسه إلى تباين أضعف الحافتين القائمتين مكانه. <more>المزيد عن الخط الفاصل</more>",
  "edges.every": "كل حافة، قبلُ وبعدُ",
  "edges.betterAndWorse": "ما تحسّن وما ساء",
  "edges.paged": "لأطول {paged} من هذه الحواف الـ{all} صفحات خاصة بها.",
};
