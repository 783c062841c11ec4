// Floor 7. Arabic: the definitions of the method. `em` is an emphasised term, `i` the title of a book; `move` stands for an
import type { In } from "../en/all.ts";
import type { methodTerm as english } from "../en/methodterm.ts";

export const methodTerm: In<typeof english> = {
  "method.numbersText":
    "تُحتسب الحافة بقدر ما يقترب تباينها من {clear}، وكاملة من هناك فصاعدًا: 30 / 45 = 67%. والوضوح متوسط الحواف كلها، كل حافة موزونة بطولها، ومرة أخرى بالجزء منها الذي يحدّ ما ينبغي أن يُرى:",
  "method.numbersClose":
    "فالعلم الذي حوافه كلها واضحة له 100%، والحافة الضعيفة الطويلة تكلّف أكثر من القصيرة. والعلم ذو اللون الواحد لا حافة له ولا وضوح.",
  "method.numbersSource": "حكمنا نحن: المجموع، وأن ما ينبغي أن يُرى يُحسب مرتين.",
  "method.strength": "القوة",
  "method.strengthMeans": "المجموع نفسه نحو {strong}؛ وهي ترتّب ما يسوّي بينه الوضوح",
  "method.weakest": "أضعف حافة",
  "method.weakestMeans": "الحافة الأقل تباينًا، سوى أقصرها",
  "method.clearShare": "حصة الحواف الواضحة",
  "method.clearShareMeans": "حصة ما هو واضح أو قوي من الطول؛ تقفز عند عتبة واحدة، فلا تحسم شيئًا",
  "method.outcomesText": "يفعل التغيير بالحافة الواحدة ما يلي:",
  "method.gained": "كُسبت، فُقدت",
  "method.gainedMeans": "تصير واضحة أو لا تبقى واضحة، وتتحرك {contrastStep} نقاط فأكثر: <move></move>",
  "method.better": "تحسّنت، ساءت",
  "method.betterMeans":
    "تتحرك بالقدر نفسه دون أن تصير واضحة أو تكفّ عن ذلك: <move></move>؛ ولا يُحسب شيء فوق {strong}",
  "method.same": "كما هي",
  "method.sameMeans": "تتحرك أقل من ذلك: <move></move>",
  "method.merged": "اندمجت",
  "method.mergedMeans": "يتقارب لوناها حتى يُعدّا لونًا واحدًا",
  "method.parted": "انفصلت",
  "method.partedMeans": "حافة جديدة، لأن جزءًا من لون تغيّر وحده",
  "method.outcomesPrice":
    "<em>ثمن</em> التغيير هو الحواف التي فُقدت أو ساءت أو اندمجت، أو انفصلت ولم تتضح. ويصدر الحكم بالوضوح بالمئة الصحيحة، فإن تساوى فبالقوة:",
  "method.clearer": "أوضح",
  "method.clearerMeans":
    "يرتفع {leastMove, plural, zero {# نقطة} one {نقطة واحدة} two {نقطتين} few {# نقاط} many {# نقطة} other {# نقطة}} فأكثر، بلا ثمن: <move></move>",
  "method.atAPrice": "أوضح، بثمن",
  "method.atAPriceMeans": "يرتفع {largeMove} نقاط فأكثر، ويُذكر الثمن معه: <move></move>",
  "method.lessClear": "أقل وضوحًا",
  "method.lessClearMeans":
    "يهبط {largeMove} نقاط فأكثر: <move></move>؛ أو {leastMove} دون أن تُكسب حافة أو تتحسن أو تنفصل واضحة",
  "method.mixed": "متفاوت",
  "method.mixedMeans": "كسب وثمن، والوضوح بين بين: <move></move>",
  "method.noGain": "بلا كسب",
  "method.noGainMeans": "كل حافة تبقى كما هي، أو لا ينطبق شيء مما سبق",
  "method.outcomesSource":
    "حكمنا نحن: العتبات {contrastStep} و{leastMove} و{largeMove} من النقاط. والحافة المندمجة تحفظ طولها، لأن الأشكال باقية، وتُحسب تباينًا قدره 0%. والأرقام المعروضة مقرّبة، والتي تحسم ليست كذلك.",
  "method.wordsText":
    "تُركَّب الجمل بقاعدة، من الأرقام والأسماء التي في الصفحة وحدها. وتتكلم أولًا عما ينبغي أن يُرى، وعن الحواف الضعيفة قبل القوية. و<em>الخط الفاصل</em> خط ضيق من لون ثالث يفصل بين لونين؛ وما دام يُرى فحوافه نفسها تُحسب، والكلمات تقول ما يفعله للزوج.",
  "method.wordsSource":
    "ما الخط الفاصل: عرف شائع، بلا مصدر. حكمنا نحن، وبه نعرفه: متوسط عرض دون 8% من ارتفاع العلم، وجانبان لا يتفاوتان في الطول بأكثر من الثلث، بين لونين لا يلتقيان إلا على خُمسه على الأكثر.",
  "method.hue": "كنه اللون وحده",
  "method.hueMeans":
    "ضعيفة مع ΔE00 يبلغ 20 فأكثر، ودون 10 في الرمادي: تضيع عند الغسق وفي الطباعة الرمادية وعند كثير من المصابين بعمى الألوان",
  "method.tincture": "الصبغة",
  "method.tinctureMeans":
    "لا معدن (أبيض، أصفر) على معدن، ولا لون (أحمر، أزرق، أخضر، أسود، أرجواني) على لون. ويُستثنى: أجزاء الحقل التي يبلغ كلاهما الحد، والخطوط الفاصلة؛ والفراء أيضًا، ولا يُتعرَّف عليه هنا",
  "method.colours": "الألوان",
  "method.coloursMeans":
    "ما زاد منها على 0.5% من المساحة، والتدرجات المتقاربة لون واحد؛ والأدلة تنصح بلونين أو ثلاثة",
  "method.factsSource":
    "A. C. Fox-Davies، <i>A Complete Guide to Heraldry</i>، 1909، الفصل السابع؛ الاستثناءات: عرف شائع، بلا مصدر. <good>Good Flag, Bad Flag</good>، جمعية أمريكا الشمالية لعلم الأعلام، 2006، المبدأ الثالث؛ <i>Guiding Principles of Flag Design</i>، اللجنة المشتركة لمبادئ تصميم الأعلام، 2014، 3.1. حكمنا نحن: كنه اللون وحده، والـ0.5%.",
};
