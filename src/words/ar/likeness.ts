// Floor 7. Arabic: which flags a redesign could be taken for.
import type { In } from "../en/all.ts";
import type { likeness as english } from "../en/likeness.ts";

export const likeness: In<typeof english> = {
  "likeness.figure": "متوسط فرق اللون ΔE00 {difference}",
  "likeness.figureMirrored": "متوسط فرق اللون ΔE00 {difference}، من الخلف",
  "likeness.figureTurned": "متوسط فرق اللون ΔE00 {difference}، مقلوبًا",
  "likeness.flags":
    "{count, plural, zero {لا أعلام أخرى} one {علم أو تصميم جديد آخر} two {علمين وتصميمين آخرين} few {# أعلام وتصاميم جديدة أخرى} many {# علمًا وتصميمًا جديدًا آخر} other {# علم وتصميم جديد آخر}}",
  "likeness.hardly":
    "لا يكاد. من بين {flags} الأقرب إليه {nearest}: {figure}؛ ودون {limit} يسهل أن يلتبس علم بآخر.",
  "likeness.could":
    "قد يلتبس. من بين {flags} {count, plural, zero {لا يقرب منه شيء} one {يقرب منه واحد} two {يقرب منه اثنان} few {يقرب منه #} many {يقرب منه #} other {يقرب منه #}}: {names}؛ ودون {limit} يسهل أن يلتبس علم بآخر، وللأقرب {figure}.",
  "likeness.rivals": "لا تُحسب الاقتراحات الأخرى لهذا العلم.",
  "likeness.own": "هذا التصميم الجديد",
};
