// Floor 7. Arabic: pages at addresses whose own page has gone; a heading, and what stands below it.
import type { In } from "../en/all.ts";
import type { moved as english } from "../en/moved.ts";

export const moved: In<typeof english> = {
  "moved.moved": "انتقلت هذه الصفحة",
  "moved.movedTo": "هي الآن في عنوان آخر.",
  "moved.near": "لم تعد هذه الصفحة هنا",
  "moved.nearTo": "أقرب شيء إليها:",
  "moved.edge": "لم تعد هذه الحافة في الدراسة",
  "moved.edgeTo": "تغيّرت ألوان الرسم منذ ذلك الحين. الحافة الأقرب لونًا:",
  "moved.withdrawn": "سُحبت هذه الدراسة",
  "moved.withdrawnHow": "ما كان في هذا العنوان لم يعد منشورًا.",
  "moved.absent": "هذه الدراسة غير معروضة الآن",
  "moved.absentHow": "هي في مجلد المعرض، وستعود إلى هذا العنوان.",
  "moved.claimed": "لهذه الدراسة عنوان آخر",
  "moved.claimedBy": "أكثر من دراسة تقول إنها كانت هنا:",
  "moved.lastGood": "لم يمكن بناء هذه الدراسة مما في مجلدها الآن. وهذه آخر صفحة كانت لها.",
};
