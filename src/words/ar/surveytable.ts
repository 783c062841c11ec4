// Floor 7. Arabic: the table of the survey, what can be done with flags chosen in it, and its picture of the whole field.
import type { In } from "../en/all.ts";
import type { surveyTable as english } from "../en/surveytable.ts";

export const surveyTable: In<typeof english> = {
  "surveyTable.caption": "كل علم كما هو.",
  "surveyTable.captionOrdered": "كل علم كما هو، الأقل وضوحًا أولًا.",
  "surveyTable.captionHeads":
    "كبير بما يكفي: يبقى من تلك المسافة نصف ما ينبغي أن يُرى، وتمتد أكبر قطعة منه على 5 دقائق قوسية. لم يُعثر على شارة: العلم حقول فحسب.",
  "surveyTable.choose": "اختيار",
  "surveyTable.flag": "العلم",
  "surveyTable.focus": "وضوح ما ينبغي أن يُرى",
  "surveyTable.lasts": "كبير بما يكفي حتى",
  "surveyTable.weakest": "أضعف حافة",
  "surveyTable.first": "اللون الذي يُغيَّر أولًا",
  "surveyTable.best": "أفضل تغيير للون واحد",
  "surveyTable.chooseOne": "اختر {name}",
  "surveyTable.study": "الدراسة: <a>{title}</a>",
  "surveyTable.named": "سمّاه القراء.",
  "surveyTable.noEmblem": "لم يُعثر على شارة",
  "surveyTable.ofContrast": "التباين",
  "surveyTable.ofClarity": "الوضوح",
  "surveyTable.or": "أو",
  "surveyTable.noFirst": "لا شيء",
  "surveyTable.noBest": "لا شيء",
  "surveyTable.chosen":
    "{count, plural, zero {الأعلام المختارة: {number}} one {الأعلام المختارة: {number}} two {الأعلام المختارة: {number}} few {الأعلام المختارة: {number}} many {الأعلام المختارة: {number}} other {الأعلام المختارة: {number}}}",
  "surveyTable.onlyChosen": "اعرض هذه وحدها",
  "surveyTable.list": "قائمة لبدء دراسات",
  "surveyTable.series": "ملف لبدء سلسلة",
  "surveyTable.chooseNone": "ألغِ الاختيار",
  "surveyTable.showAll": "اعرض كل الأعلام",
  "surveyTable.listHead":
    "أعلام مختارة من مسح {gallery}. اكتب الأسطر التي تبدأ بـ counterchange في المجلد الذي فيه flags/.",
  "surveyTable.seriesTitle": "أعلام مختارة من المسح",
  "surveyTable.seriesNote": "لسلسلة موجودة: انسخ الأسطر من أول - إلى آخرها تحت «studies:» فيها.",
  "surveyTable.seriesClosing": "أي لون من ألوانها تغيّر، وإلى ماذا؟",
  "field.title": "الأعلام كلها",
  "field.about": "كل علم عند وضوحه اليوم؛ وتحته خط حيث له دراسة.",
  "field.past": "تجاوز الصورة",
  "field.without":
    "{count, plural, zero {لا علم بلون واحد.} one {علم بلون واحد لا حافة له ولا مكان هنا.} two {علمان بلون واحد لا حافة لهما ولا مكان هنا.} few {# أعلام بلون واحد لا حافة لها ولا مكان هنا.} many {# علمًا بلون واحد لا حافة لها ولا مكان هنا.} other {# علم بلون واحد لا حافة لها ولا مكان هنا.}}",
  "field.flag": "{name}، الوضوح {clarity}",
  "field.least": "الأقل وضوحًا: {name}، الوضوح {clarity}",
  "field.weakest": "الأضعف: {one} / {other}، التباين {contrast}",
};
