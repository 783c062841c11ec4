// Floor 7. Arabic: the record at the end of a study.
import type { In } from "../en/all.ts";
import type { record as english } from "../en/record.ts";

export const record: In<typeof english> = {
  "record.onlyIn": "في {part} وحده (<selector></selector>)",
  "record.source": "المصدر",
  "record.sourceIs": "المصدر: {source}",
  "record.licence": "الرخصة: {licence}.",
  "record.uncertain": "حيث الأرقام أقل يقينًا",
  "record.colours": "الألوان",
  "record.drawings": "الرسوم والبيانات",
  "record.tags": "مصنّفة تحت",
  "record.history": "التاريخ",
  "record.heading": "للتوثيق",
  "record.tincture": "بقاعدة الصبغات",
  "record.facts": "الحقائق",
  "record.reflectanceAndTincture": "انعكاسية كل لون وصبغته",
  "record.reflectance": "انعكاسية كل لون",
  "record.noSource": "لا تذكر الدراسة مصدرًا للرسم الأصلي.",
  "record.maker": "معتمدة: <sheet>ورقة للصانعين</sheet> فيها النسب والبناء والألوان.",
  "record.lesson": "صور كل خطوة، للشرائح والتسجيلات",
  "record.originalSvg": "الأصل، SVG",
  "record.redesignSvg": "التصميم الجديد، SVG",
  "record.originalPng": "الأصل، PNG",
  "record.redesignPng": "التصميم الجديد، PNG",
  "record.edgesCsv": "كل الحواف، CSV",
  "record.json": "كل ما قيس، JSON",
  "record.selectedPart": "الجزء المختار",
  "record.drawing": "الرسم",
  "record.by": "{title}، رسم {author}",
  "record.unofficial": "التصميم الجديد دراسة غير رسمية: اقتراح للنقاش، لا علم مستعمل.",
  "record.unofficialBy": "التصميم الجديد دراسة غير رسمية، ناشرها {society}: اقتراح للنقاش، لا علم مستعمل.",
};
