// Floor 7. Arabic: both flags as four kinds of sight have them.
import type { In } from "../en/all.ts";
import type { seen as english } from "../en/seen.ts";

export const seen: In<typeof english> = {
  "seen.title": "بعيون أخرى",
  "seen.caption":
    "الأصل أولًا، ثم التصميم الجديد: تقريبات لما يراه في العلمين المصابون بقصور رؤية الألوان، ولما تُبقيه الطباعة الرمادية. وليست اختبارًا لبصر أحد. وتختلف الرماديات بفرق اللون ΔE00: كلما زاد سهل التمييز.",
  "seen.greys": "فرق أقرب رماديين",
  "seen.clarity": "وضوح العلم كله",
  "seen.looks": "{name} كأنه {seen}",
  "seen.kept":
    "{names}: {count, plural, zero {بلا اسم باقٍ} one {باقٍ على اسمه} two {باقيان على اسميهما} few {باقية على أسمائها} many {باقية على أسمائها} other {باقية على أسمائها}}",
  "seen.inGrey": "{name} بالرمادي",
  "seen.byProtan": "{name} كما يراه المصاب بعمى الأحمر",
  "seen.byDeutan": "{name} كما يراه المصاب بعمى الأخضر",
  "seen.byTritan": "{name} كما يراه المصاب بعمى الأزرق",
};
