// Floor 7. Arabic: facts beside the numbers of a study.
import type { In } from "../en/all.ts";
import type { facts as english } from "../en/facts.ts";

export const facts: In<typeof english> = {
  "facts.heading": "حقائق إلى جانب الأرقام، ليس فيها ما يُحتسب",
  "facts.caption": "حقائق إلى جانب الأرقام",
  "facts.fact": "الحقيقة",
  "facts.clearShareNote":
    "حصة الحواف الواضحة تقفز حيث تتغير الدرجة، فهي معطى ولا تحسم شيئًا. <near>عند العتبة</near>",
  "facts.hueNote":
    "كنه اللون وحده: تباين دون 30% مع ΔE00 يبلغ 20 فأكثر، ودون 10 في الرمادي. مثل هذه الحافة تضيع عند الغسق وفي الطباعة الرمادية وعند كثير من المصابين بعمى الألوان. والعتبات حكمنا نحن.",
  "facts.tinctureNote":
    "قاعدة الصبغات: لا معدن على معدن، ولا لون على لون؛ A. C. Fox-Davies، <book>A Complete Guide to Heraldry</book>، 1909، الفصل السابع. والحقول المقسومة والخطوط الفاصلة والفراء مستثناة؛ والفراء لا يُتعرَّف عليه هنا.",
  "facts.countNote":
    "الألوان التي تزيد على نصف في المئة من المساحة. كتيّب <book>Good Flag, Bad Flag</book>، 2006، ينصح بلونين أو ثلاثة؛ و<book>Guiding Principles of Flag Design</book>، 2014، تفضّل الأقل على الأكثر.",
  "facts.more": "المزيد عن هذه الحقائق",
  "facts.clearShare": "حصة الحواف الواضحة: واضحة أو قوية، من طول الحواف كلها",
  "facts.near": "درجة عند العتبة، غيرها على قماش آخر",
  "facts.hue": "ما يُميَّز بكنه اللون وحده",
  "facts.tincture": "مخالف لقاعدة الصبغات",
  "facts.count": "عدد الألوان؛ والأدلة تنصح بلونين أو ثلاثة",
  "facts.none": "لا شيء",
  "facts.metalOnMetal": "{names}، كلاهما معدن",
  "facts.colourOnColour": "{names}، كلاهما لون",
  "facts.ruleKept": "لا شيء يخالفها، لا قبلُ ولا بعدُ.",
  "facts.ruleBroken": "يخالفها قبلُ وبعدُ: {names}.",
  "facts.ruleMoved": "يخالفها في الأصل: {was}. وفي التصميم الجديد: {is}.",
  "facts.exemptFimbriation": "مستثنى، خط فاصل: {names}.",
  "facts.exemptField": "مستثنى، من أجزاء الحقل: {names}.",
  "facts.uneven":
    "لون غير متجانس: {name} يمتد من {lightest} إلى {darkest}؛ ولا تكون حافته واضحة إلا إذا وضح طرفاه.",
};
