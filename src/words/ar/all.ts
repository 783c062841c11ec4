// Floor 7. Arabic: all messages.
import type { Catalogue } from "../en/all.ts";

/**
 * Terms, one for one: flag علم; hoist جهة السارية; field حقل; charge and emblem شارة; shape شكل; edge حافة; outline محيط; clarity وضوح; contrast
 * تباين; grade درجة (ضعيفة، لينة، واضحة، قوية); near the line عند العتبة; outcome نتيجة; verdict حكم; price ثمن; what has to be seen ما ينبغي أن
 * يُرى; flag heights ضعف ارتفاع العلم; luminance نصوع; lightness إضاءة; reflectance انعكاسية; shade تدرّج; fimbriation خط فاصل; rule of tincture
 * قاعدة الصبغات; redesign تصميم جديد; study دراسة; likeness شبه; survey مسح; series سلسلة; ballot ورقة اقتراع; step by step خطوة بخطوة; sheets
 * for a class أوراق لصف دراسي; maker صانع; protan, deutan and tritan عمى الأحمر والأخضر والأزرق. Common practice, no source.
 * Hue كنه اللون: from a school book on art, التربية الفنية, which sets it beside قيمة اللون.
 */
export const arabic: Catalogue = {
  // answer: the letter or the form by which a reader answers.
  "answer.byMail": "بالبريد إلى {address}، وفي الرسالة عنوان هذه الصفحة وأرقامها.",
  "answer.at": "عند {host}.",
  "answer.atWithAddress": "عند {host}، مع عنوان هذه الصفحة.",
  "answer.atWithNumbers": "عند {host}، مع أرقام هذه الصفحة.",
  "answer.atWithBoth": "عند {host}، مع عنوان هذه الصفحة وأرقامها.",
  "answer.flagFor": "علم من أجل {gallery}",
  "answer.flag": "العلم:",
  "answer.why": "السبب:",
  "answer.reader": "قارئ",
  "answer.question": "لماذا؟",

  // colour: names of colours, and a flag told by them.
  "colour.black": "أسود",
  "colour.white": "أبيض",
  "colour.grey": "رمادي",
  "colour.red": "أحمر",
  "colour.orange": "برتقالي",
  "colour.yellow": "أصفر",
  "colour.green": "أخضر",
  "colour.blue": "أزرق",
  "colour.purple": "أرجواني",
  "colour.pink": "وردي",
  "colour.brown": "بني",
  "colour.dark":
    "{word, select, other {{degree, select, very {{colour} داكن جدًا} less {{colour} أقل دكنة} slightlyLess {{colour} أقل دكنة قليلًا} muchLess {{colour} أقل دكنة بكثير} other {{colour} داكن}}}}",
  "colour.light":
    "{word, select, other {{degree, select, very {{colour} فاتح جدًا} less {{colour} أقل إضاءة} slightlyLess {{colour} أقل إضاءة قليلًا} muchLess {{colour} أقل إضاءة بكثير} other {{colour} فاتح}}}}",
  "colour.darkest": "أدكن {colour}",
  "colour.lightest": "أفتح {colour}",
  "colour.darker":
    "{degree, select, slightly {{colour} أدكن قليلًا} much {{colour} أدكن بكثير} other {{colour} أدكن}}",
  "colour.lighter":
    "{degree, select, slightly {{colour} أفتح قليلًا} much {{colour} أفتح بكثير} other {{colour} أفتح}}",
  "colour.deeper":
    "{degree, select, slightly {{colour} أعمق قليلًا} much {{colour} أعمق بكثير} other {{colour} أعمق}}",
  "colour.greyer":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الرمادي} much {{colour} أميل كثيرًا إلى الرمادي} other {{colour} أميل إلى الرمادي}}",
  "colour.warmer":
    "{degree, select, slightly {{colour} أدفأ قليلًا} much {{colour} أدفأ بكثير} other {{colour} أدفأ}}",
  "colour.bluer":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأزرق} much {{colour} أميل كثيرًا إلى الأزرق} other {{colour} أميل إلى الأزرق}}",
  "colour.yellower":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأصفر} much {{colour} أميل كثيرًا إلى الأصفر} other {{colour} أميل إلى الأصفر}}",
  "colour.redder":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأحمر} much {{colour} أميل كثيرًا إلى الأحمر} other {{colour} أميل إلى الأحمر}}",
  "colour.greener":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأخضر} much {{colour} أميل كثيرًا إلى الأخضر} other {{colour} أميل إلى الأخضر}}",
  "colour.purpler":
    "{degree, select, slightly {{colour} أميل قليلًا إلى الأرجواني} much {{colour} أميل كثيرًا إلى الأرجواني} other {{colour} أميل إلى الأرجواني}}",
  "colour.reddish":
    "{degree, select, slightly {{colour} فيه حمرة خفيفة} much {{colour} فيه حمرة ظاهرة} very {{colour} فيه حمرة شديدة} other {{colour} مائل إلى الحمرة}}",
  "colour.brownish":
    "{degree, select, slightly {{colour} فيه سمرة خفيفة} much {{colour} فيه سمرة ظاهرة} very {{colour} فيه سمرة شديدة} other {{colour} مائل إلى البني}}",
  "colour.yellowish":
    "{degree, select, slightly {{colour} فيه صفرة خفيفة} much {{colour} فيه صفرة ظاهرة} very {{colour} فيه صفرة شديدة} other {{colour} مائل إلى الصفرة}}",
  "colour.greenish":
    "{degree, select, slightly {{colour} فيه خضرة خفيفة} much {{colour} فيه خضرة ظاهرة} very {{colour} فيه خضرة شديدة} other {{colour} مائل إلى الخضرة}}",
  "colour.bluish":
    "{degree, select, slightly {{colour} فيه زرقة خفيفة} much {{colour} فيه زرقة ظاهرة} very {{colour} فيه زرقة شديدة} other {{colour} مائل إلى الزرقة}}",
  "colour.purplish":
    "{degree, select, slightly {{colour} فيه أرجوانية خفيفة} much {{colour} فيه أرجوانية ظاهرة} very {{colour} فيه أرجوانية شديدة} other {{colour} مائل إلى الأرجواني}}",
  "colour.greyish":
    "{degree, select, slightly {{colour} فيه رمادية خفيفة} much {{colour} فيه رمادية ظاهرة} very {{colour} فيه رمادية شديدة} other {{colour} مائل إلى الرمادي}}",
  "colour.warm":
    "{degree, select, slightly {{colour} دافئ قليلًا} much {{colour} دافئ بوضوح} very {{colour} دافئ جدًا} other {{colour} دافئ}}",
  "colour.neutral":
    "{degree, select, slightly {{colour} يكاد يكون محايدًا} much {{colour} محايد تمامًا} very {{colour} محايد تمامًا} other {{colour} محايد}}",
  "colour.deep": "{word, select, other {{colour} عميق}}",
  "colour.mid": "{colour} متوسط",
  "colour.off": "{word, select, white {أبيض مكسور} black {أسود مكسور} other {{colour} مكسور}}",
  "colour.charcoal": "{colour} فحمي",
  "colour.dull": "{colour} كامد",
  "colour.jet": "{colour} حالك",
  "colour.bright": "{colour} ناصع",
  "colour.pure": "{colour} خالص",
  "colour.nth":
    "{place, select, second {{colour} ثانٍ} third {{colour} ثالث} fourth {{colour} رابع} fifth {{colour} خامس} sixth {{colour} سادس} seventh {{colour} سابع} eighth {{colour} ثامن} ninth {{colour} تاسع} other {{colour} عاشر}}",
  "colour.numbered": "{colour} {number}",
  "colour.others": "ألوان أخرى",
  "colour.selectedPart": "{colour}، الجزء المختار",
  "colour.selected": "الجزء المختار بلون {colour}",
  "colour.empty": "رسم فارغ",
  "colour.allOver": "كله {colour}",
  "colour.mostly": "أكثره {colour}، مع {others}",

  // colours: the colours of a study.
  "colours.caption": "ألوان الأصل، الأوسع أولًا. الحصة من الرسم كله؛ والانعكاسية للقماش.",
  "colours.colour": "اللون",
  "colours.share": "الحصة",
  "colours.reflectance": "الانعكاسية",
  "colours.tincture": "الصبغة",
  "colours.becomes": "يتحول إلى",
  "colours.vanishes":
    "لا يُميَّز من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}",
  "colours.uneven": "غير متجانس، من <first></first> إلى <last></last>",
  "colours.metal": "معدن",
  "colours.ofTincture": "لون",

  // doubt: what makes the figures of a drawing less certain.
  "doubt.joined":
    "في الرسم ألوان أكثر مما يُقاس كلٌّ على حدة: {count, plural, zero {أقلها ظهورًا يُقاس} one {أقلها ظهورًا يُقاس} two {اللونان الأقل ظهورًا يُقاسان} few {الألوان الـ# الأقل ظهورًا تُقاس} many {الألوان الـ# الأقل ظهورًا تُقاس} other {الألوان الـ# الأقل ظهورًا تُقاس}} مع لون قريب أظهر، أو معًا باسم «{name}».",
  "doubt.faint":
    "{count, plural, zero {لا شكل يظهر بأقل من نصفه.} one {شكل واحد يظهر بأقل من نصفه فلم يُقس.} two {شكلان يظهران بأقل من النصف فلم يُقاسا.} few {# أشكال تظهر بأقل من النصف فلم تُقس.} many {# شكلًا تظهر بأقل من النصف فلم تُقس.} other {# شكل تظهر بأقل من النصف فلم تُقس.}}",
  "doubt.inexact": "لم يمكن التمييز بدقة إلا في {share} من الرسم؛ فأرقامه أقل يقينًا.",
  "doubt.nearLimit": "عند حد البصر: أجزاء بلون {names}.",
  "doubt.effect": "في رسم صاحبه ما لا يُعرض هنا ولا يُقاس: {looks}.",
  "doubt.look":
    "{kind, select, shadow {ظل} blur {تغبيش} colours {تغيير للألوان} blend {ألوان ممزوجة بما تحتها ({mode})} other {تأثير}}",

  // edge: what an edge is called.
  "edge.names": "{one} / {other}",
  "edge.on": "{part} على {field}",

  // edgefigure: one edge, before and after, as a figure.
  "edgefigure.edge": "الحافة",
  "edgefigure.becomes": "، وتتحول إلى {is}",
  "edgefigure.outcome": ": {outcome}، على {extent}.",
  "edgefigure.sideBySide": "جنبًا إلى جنب؛ التباين {contrast}.",
  "edgefigure.says": "{edge}: التباين {before} قبلُ، و{after} بعدُ؛ {outcome}.",
  "edgefigure.saysAfter": "{edge}: التباين {after} بعدُ؛ {outcome}.",

  // edgepage: the page of one edge.
  "edgepage.place": "على العلم؛ وما في الإطار معروض مكبَّرًا",
  "edgepage.numbers": "الحافة بالأرقام",
  "edgepage.elsewhere": "اللونان نفسهما في دراسات أخرى",
  "edgepage.study": "الدراسة",
  "edgepage.elsewhereNote": "ألوان ذات اسم واحد ليست بالضرورة لونًا واحدًا: قارن القماش لا الكلمة.",
  "edgepage.siblings": "حواف هذه الدراسة",
  "edgepage.nearLine": "{near}: على قماش آخر تكون غيرها. <why>لماذا</why>",
  "edgepage.how": "كيف يُحسب <contrast>التباين</contrast>، و<beside>ما يقف إلى جانبه</beside>.",
  "edgepage.locator": "موضع الحافة",
  "edgepage.locatorSays": "العلم الأصلي باهتًا، مع الخطوط المرسومة حيث يلتقي {one} و{other}.",
  "edgepage.contrast": "التباين",
  "edgepage.difference": "فرق اللون",
  "edgepage.sides": "الأصل أولًا، ثم التصميم الجديد.",
  "edgepage.seenNote":
    "الرمادي يحفظ التباين. وفرق اللون هو ΔE00: كلما زاد سهل التمييز. وهي تقريبات لأشد صور كل قصور، وليست اختبارًا لبصر أحد. <how>كيف تُصنع</how>",
  "edgepage.noEdge": "لا حافة",
  "edgepage.all": "كلها على مسطرة واحدة",
  "edgepage.of": "حافة يلتقي عندها لونان، من <study>{title}</study>",
  "edgepage.becomes": "{was} تتحول إلى {is}",
  "edgepage.description": "حافة من دراسة غير رسمية لإعادة التصميم، {outcome}.",
  "edgepage.placeAlt": "{label}، الموضع الذي يلتقي فيه {one} و{other}",
  "edgepage.unofficial": "التصميم الجديد، دراسة غير رسمية",
  "edgepage.bothNear": "كلتا الدرجتين عند العتبة",
  "edgepage.originalNear": "درجة الأصل عند العتبة",
  "edgepage.redesignNear": "درجة التصميم الجديد عند العتبة",

  // edges: what became of each edge of a study.
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

  // edgesaid: what became of one edge.
  "edgeSaid.unchanged": "بلا تغيير",
  "edgeSaid.leftAlone": "التغيير يترك هذه الحافة كما هي: التباين {contrast}، {grade}.",
  "edgeSaid.hardlyChange": "{pair}: لا يكاد شيء يتغير على {where}: {move}.",
  "edgeSaid.stayClear": "{pair}: يبقى التمييز واضحًا على {where}: {move}.",
  "edgeSaid.stayHard": "{pair}: يبقى التمييز صعبًا على {where}: {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} يبرز الآن عن {neighbour} على {where}: التباين {contrast}، {grade}؛ وكان مع {was} يبلغ {wasContrast}، {wasGrade}.} same {{is} يتمايزان الآن على {where}: التباين {contrast}، {grade}، وكان {wasContrast}، {wasGrade}.} other {{is} يتمايزان الآن على {where}: التباين {contrast}، {grade}؛ وكان مع {was} يبلغ {wasContrast}، {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} يبرز عن {neighbour} أكثر مما كان {was}، على {where}: {move}.} same {{is} يتمايزان أكثر من قبل، على {where}: {move}.} other {{is} يتمايزان أكثر مما كان {was}، على {where}: {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} أسهل تمييزًا عن {neighbour} مما كان {was}، على {where}، لكن بلا وضوح: {move}.} same {{is} أسهل تمييزًا من قبل، على {where}، لكن بلا وضوح: {move}.} other {{is} أسهل تمييزًا مما كان {was}، على {where}، لكن بلا وضوح: {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} لم يعد يبرز عن {neighbour} على {where}: التباين {contrast}، {grade}؛ وكان مع {was} يبلغ {wasContrast}، {wasGrade}.} same {{is} لم يعودا يتمايزان على {where}: التباين {contrast}، {grade}، وكان {wasContrast}، {wasGrade}.} other {{is} لم يعودا يتمايزان على {where}: التباين {contrast}، {grade}؛ وكان مع {was} يبلغ {wasContrast}، {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} يبرز عن {neighbour} أقل مما كان {was}، على {where}: {move}.} same {{is} يتمايزان أقل من قبل، على {where}: {move}.} other {{is} يتمايزان أقل مما كان {was}، على {where}: {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} أصعب تمييزًا عن {neighbour} مما كان {was}، على {where}: {move}.} same {{is} أصعب تمييزًا من قبل، على {where}: {move}.} other {{is} أصعب تمييزًا مما كان {was}، على {where}: {move}.}}",
  "edgeSaid.merged":
    "{pair} يصيران لونًا واحدًا في العين على {where}: الخط بينهما، وكان تباينه {wasContrast}، {wasGrade}، قد زال.",
  "edgeSaid.parted":
    "{pair} كانا لونًا واحدًا، وتفصل بينهما الآن حافة {gradeId, select, weak {ضعيفة} soft {لينة} clear {واضحة} other {قوية}}، على {where}: التباين {contrast}.",
  "edgeSaid.pair": "{one} و{other}",
  "edgeSaid.moveNone": "التباين {contrast}، {grade}",
  "edgeSaid.moveStill": "التباين من {wasContrast} إلى {contrast}، ما زالت {grade}",
  "edgeSaid.moveGrade": "التباين من {wasContrast} إلى {contrast}، من {wasGrade} إلى {grade}",
  "edgeSaid.whereAll": "كل خطوط العلم",
  "edgeSaid.wherePart": "{part} من طول الحواف كلها",
  "edgeSaid.whereOutline": "كامل محيط ما ينبغي أن يُرى",
  "edgeSaid.whereOutlinePart": "{part} من محيط ما ينبغي أن يُرى",
  "edgeSaid.whereAllAndOutline": "كل خطوط العلم، ومنها {outline}",
  "edgeSaid.whereOutlineAndMore": "{outline} وما زاد عليه، {part} من طول الحواف كلها",

  // entry: the entry of a study in a list.
  "entry.makers": "ورقة للصانعين",
  "entry.putForward": "مقدَّمة من {authors}",

  // facts: facts beside the numbers of a study.
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

  // feed: what readers of feeds see, and the caption of a flag on somebody else’s page.
  "feed.decisions": "{title}: القرارات",
  "feed.decision": "{status}: {title}",
  "feed.status": "{status}، {meaning}.",
  "feed.statusDecided": "{status}، {meaning}. {decision}",
  "feed.redesigns": "التصاميم الجديدة دراسات غير رسمية.",
  "feed.proposed": "{change} {verdict}: الوضوح من {before} إلى {after}.",
  "feed.flagToday": "{flag} اليوم",
  "feed.flagRedesign": "{flag}، التصميم الجديد",
  "feed.clearer": "<a>{name}</a>: أوضح. دراسة غير رسمية.",
  "feed.atAPrice": "<a>{name}</a>: أوضح، بثمن. دراسة غير رسمية.",
  "feed.mixed": "<a>{name}</a>: متفاوت. دراسة غير رسمية.",
  "feed.lessClear": "<a>{name}</a>: أقل وضوحًا. دراسة غير رسمية.",
  "feed.noGain": "<a>{name}</a>: بلا كسب. دراسة غير رسمية.",

  // fimbriation: what a line of a third colour does for the two colours that it keeps apart.
  "fimbriation.parts": "الخط بلون {line} يفصل بين {one} و{other}",
  "fimbriation.doesNotPart": "الخط بلون {line} لا يفصل بين {one} و{other}",
  "fimbriation.line": "{lead}: <move></move>.",
  "fimbriation.didAlready": "في الأصل كان {line} يفعل ذلك من قبل: {across} بدل {direct}.",
  "fimbriation.didNotEither": "في الأصل لم يكن {line} يفعل ذلك أيضًا: {across} بدل {direct}.",
  "fimbriation.did": "في الأصل كان {line} يفعل ذلك: {across} بدل {direct}.",
  "fimbriation.didNot": "في الأصل لم يكن {line} يفعل ذلك: {across} بدل {direct}.",
  "fimbriation.it": "هو",
  "fimbriation.theLine": "الخط بلون {colour}",
  "fimbriation.partLine": "خط {part}",

  // finder: the form that finds studies.
  "finder.words": "كلمات",
  "finder.order": "الترتيب",
  "finder.more": "مرشحات أخرى",
  "finder.any": "الكل",
  "finder.find": "بحث",
  "finder.all": "عرض الكل",
  "finder.none": "لا دراسة توافق هذا كله. احذف كلمة أو اختيارًا، أو اعرض الكل.",
  "finder.pages": "صفحات فيها هذه الكلمات: <list></list>",
  "finder.status": "الحالة",
  "finder.verdict": "الحكم",
  "finder.tag": "الوسم",
  "finder.author": "المؤلف",
  "finder.mostGained": "الأكثر كسبًا",
  "finder.newest": "الأحدث",
  "finder.mostLost": "الأكثر خسارة",
  "finder.leastClear": "أقل التصاميم الجديدة وضوحًا",
  "finder.title": "العنوان",
  "finder.found":
    "{found} من {count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستين} few {# دراسات} many {# دراسة} other {# دراسة}}",
  "finder.foundListed": "{found} من {listed} مدرجة هنا",

  // flagpage: the page of a flag with several redesigns, or that readers named.
  "flagPage.two": "{flag}: {one} أو {other}",
  "flagPage.pair": "{one} و{other}",
  "flagPage.namedShort": "سمّاه القراء.",
  "flagPage.named": "سمّاه القراء",
  "flagPage.proposal": "الاقتراح {number}",
  "flagPage.weakest": "أضعف حافة {contrast}",
  "flagPage.clearest":
    "{count, plural, zero {الاقتراح {numbers} هو الأوضح} one {الاقتراح {numbers} هو الأوضح} two {الاقتراحان {numbers} هما الأوضح} few {الاقتراحات {numbers} هي الأوضح} many {الاقتراحات {numbers} هي الأوضح} other {الاقتراحات {numbers} هي الأوضح}}{priced, select, yes {، بثمن} other {}}: يرتفع الوضوح من {before} إلى {after}.",
  "flagPage.clearerOfTwo":
    "كلاهما أوضح بثمن، والاقتراح {numbers} هو الأوضح: من {before} إلى {after}، مقابل {next}.",
  "flagPage.clearestOfPriced":
    "كل الاقتراحات المعروضة هنا أوضح بثمن، والاقتراح {numbers} هو الأوضح: من {before} إلى {after}، والذي يليه {next}.",
  "flagPage.noneClearer": "ليس بين الاقتراحات ما هو أوضح من الأصل: وضوحه {before}.",
  "flagPage.all": "كل الاقتراحات",
  "flagPage.pairs": "اثنان جنبًا إلى جنب: <list></list>",
  "flagPage.edges": "ما يحسّنه كل اقتراح وما يسيء إليه",
  "flagPage.survey": "أرقامه في المسح",
  "flagPage.showAll": "اعرض الكل",
  "flagPage.allShown": "كل الأعلام معروضة",
  "flagPage.head": "الاقتراح",
  "flagPage.verdict": "الحكم",
  "flagPage.share": "الحصة المتغيرة",

  // focus: what has to be seen, the emblem or charge of a flag, from where the flag is seen, and how far that lasts.
  "focus.none": "لم يُعثر على شارة: لا شيء ينبغي أن يُرى قبل غيره، ولا حافة تُحسب مرتين. هذه حقيقة لا عيب.",
  "focus.notGuessed":
    "شارة تمتد في مساحة من لونها. لم نخمّنها، فلا شيء يُحسب مرتين. ولتسميتها اكتب في الدراسة:",
  "focus.fullDrawing": "مقيس على الرسم كله، لا من مسافة.",
  "focus.fromAway":
    "مقيس كما يُرى من {away, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}: علم ارتفاعه متر واحد، من مسافة {away, plural, zero {# متر} one {متر واحد} two {مترين} few {# أمتار} many {# مترًا} other {# متر}}. والأجزاء الأدق من {finest} من ارتفاعه تُضم إلى ما يجاورها. وهذا نموذج لحدة البصر.",
  "focus.afar": "ما يبقى من بعيد",
  "focus.afarDescription": "{lasting} وضوح ما ينبغي أن يُرى: {steps}.",
  "focus.step": "من {distance}، {is}",
  "focus.stepMove": "من {distance}، من {was} إلى {is}",
  "focus.afarCaption":
    "يدوم حتى {lasts}، بحجمه وحده: ينبغي أن يبقى منه {left}، وأن تبلغ أكبر قطعة منه {arcminutes, plural, zero {# دقيقة قوسية} one {دقيقة قوسية واحدة} two {دقيقتين قوسيتين} few {# دقائق قوسية} many {# دقيقة قوسية} other {# دقيقة قوسية}}، وهو حجم حرف تقرؤه حدة بصر 20/20.",
  "focus.noEmblem": "لم يُعثر على شارة",
  "focus.lastsUnder":
    "{distance, plural, zero {دون ارتفاع العلم} one {دون ارتفاع العلم} two {دون ضعفي ارتفاع العلم} few {دون # أضعاف ارتفاع العلم} many {دون # ضعف ارتفاع العلم} other {دون # ضعف ارتفاع العلم}}",
  "focus.lastsOrMore":
    "{distance, plural, zero {# ضعف ارتفاع العلم فأكثر} one {ارتفاع العلم فأكثر} two {ضعفي ارتفاع العلم فأكثر} few {# أضعاف ارتفاع العلم فأكثر} many {# ضعف ارتفاع العلم فأكثر} other {# ضعف ارتفاع العلم فأكثر}}",
  "focus.nothingLeft": "لم يبق شيء",
  "focus.tooSmall":
    "ما ينبغي أن يُرى أصغر من أن يُتبيَّن من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}، أقرب مسافة جُرّبت، أيًّا كانت ألوانه.",
  "focus.largeEnough":
    "ما ينبغي أن يُرى كبير بما يكفي ليُتبيَّن حتى {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}، أيًّا كانت ألوانه.",
  "focus.largeEnoughAlways":
    "ما ينبغي أن يُرى كبير بما يكفي ليُتبيَّن من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}، أبعد مسافة جُرّبت.",

  // frame: what stands around the content of every page, and the page of a missing address.
  "frame.skip": "إلى المحتوى",
  "frame.gallery": "المعرض",
  "frame.studies": "الدراسات",
  "frame.survey": "المسح",
  "frame.method": "المنهج",
  "frame.allStudies": "كل الدراسات",
  "frame.cautions":
    "كل تصميم جديد معروض هنا دراسة غير رسمية مطروحة للنقاش. تختلف القوانين في استعمال الأعلام: فاتبع قوانين بلدك، واحترم رخصة كل رسم. انظر <cautions>التنبيهات</cautions>، وللمؤلفين <rules>قواعد الدراسات والرسوم</rules>.",
  "frame.publishedBy": "الناشر: {society}.",
  "frame.textsUnder": "النصوص برخصة <licence>{name}</licence>.",
  "frame.madeWith":
    "صُنع بـ Counterchange. الخطان Source Serif 4 وSource Sans 3، برخصة <licence>الخطوط المفتوحة</licence>.",
  "frame.missing": "لا صفحة هنا",
  "frame.missingText": "لا صفحة بهذا العنوان. ربما سُحبت دراسة من المعرض، أو كُتب العنوان خطأً.",
  "frame.missingDescription": "لا صفحة بهذا العنوان.",
  "frame.moved": "انتقلت هذه الصفحة: {title}.",

  // front: the front page.
  "front.nominate": "علم يستحق دراسة؟ <name>سمِّه، وقل لماذا</name>",
  "front.empty":
    "لم يُنشر هنا شيء بعد. ستكون أول دراسة في هذه الصفحة؛ وحتى ذلك الحين يروي <method>المنهج</method> كيف ستُقاس.",
  "front.earlier": "دراسات أسبق",
  "front.edgeless": "بلا حافة تُقاس: <list></list>.",
  "front.more":
    "{count, plural, zero {لا مزيد} one {واحدة أخرى} two {اثنتان أخريان} few {# أخرى} many {# أخرى} other {# أخرى}}",

  // gain: the chart of what each change does to clarity.
  "gain.title": "ما يفعله كل تغيير بالوضوح",
  "gain.order": "الأكثر كسبًا أولًا.",
  "gain.key": "حلقة للأصل، ونقطة للتصميم الجديد؛ وخط مفرَّغ حيث يهبط الوضوح.",
  "gain.othersListed":
    "{count, plural, zero {لا دراسات أخرى} one {الدراسة الأخرى في قائمة الكل} two {الدراستان الأخريان في قائمة الكل} few {الدراسات الـ# الأخرى في قائمة الكل} many {الدراسات الـ# الأخرى في قائمة الكل} other {الدراسات الـ# الأخرى في قائمة الكل}}",
  "gain.othersOnFront":
    "{count, plural, zero {لا دراسات أخرى} one {الدراسة الأخرى في الصفحة الأولى} two {الدراستان الأخريان في الصفحة الأولى} few {الدراسات الـ# الأخرى في الصفحة الأولى} many {الدراسات الـ# الأخرى في الصفحة الأولى} other {الدراسات الـ# الأخرى في الصفحة الأولى}}",
  "gain.told":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}: الوضوح {ways}.",
  "gain.rises": "يرتفع في {count}",
  "gain.falls": "يهبط في {count}",
  "gain.stays": "يثبت في {count}",
  "gain.most": "أكبر ارتفاع له في «{title}»، من {before} إلى {after}.",
  "gain.here": "في هذه الدراسة ينتقل من {before} إلى {after}.",

  // grade: the grades of a contrast, within a sentence and in tables.
  "grade.weak": "ضعيفة",
  "grade.soft": "لينة",
  "grade.clear": "واضحة",
  "grade.strong": "قوية",
  "grade.now": "الآن {is}",
  "grade.from": "كانت {was}",
  "grade.move": "من {was} إلى {is}",

  // history: what came before a study and after it.
  "history.follows": "تحل محل",
  "history.followed": "تليها",
  "history.revised": "<date></date>: {what}",

  // ladder: the ladder of reflectance.
  "ladder.rung": "{name} {reflectance}",
  "ladder.title": "درجة إضاءة كل لون",
  "ladder.says": "من الأفتح إلى الأدكن: {colours}. {change}",

  // lasting: how far what has to be seen lasts, as a figure.
  "lasting.caption": "وضوح ما ينبغي أن يُرى من كذا ضعفًا لارتفاع العلم: حلقة للأصل، ونقطة للتصميم الجديد.",
  "lasting.model": "نموذج للبصر",

  // length: how long an edge is.
  "length.heights":
    "{length, plural, zero {{length, number, ::.00} ضعف ارتفاع العلم} one {{length, number, ::.00} ضعف ارتفاع العلم} two {{length, number, ::.00} ضعفي ارتفاع العلم} few {{length, number, ::.00} أضعاف ارتفاع العلم} many {{length, number, ::.00} ضعف ارتفاع العلم} other {{length, number, ::.00} ضعف ارتفاع العلم}}",
  "length.offFocus": "لا شيء منه على محيط ما ينبغي أن يُرى",
  "length.onFocus": "كله على محيط ما ينبغي أن يُرى",
  "length.partOnFocus": "منه {part, number, ::.00} على محيط ما ينبغي أن يُرى",
  "length.distance":
    "{distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}",
  "length.wholeOutline": "المحيط كله",
  "length.ofOutline": "{share} من المحيط",
  "length.partly": "{length}، منه {own, number, ::.00} هي {part}",
  "length.wholly": "{length}، {part}",

  // likeness: which flags a redesign could be taken for.
  "likeness.figure": "متوسط فرق اللون ΔE00 {difference}",
  "likeness.figureMirrored": "متوسط فرق اللون ΔE00 {difference}، من الخلف",
  "likeness.figureTurned": "متوسط فرق اللون ΔE00 {difference}، مقلوبًا",
  "likeness.flags":
    "{count, plural, zero {لا أعلام أخرى} one {علم أو تصميم جديد آخر} two {علمين وتصميمين آخرين} few {# أعلام وتصاميم جديدة أخرى} many {# علمًا وتصميمًا جديدًا آخر} other {# علم وتصميم جديد آخر}}",
  "likeness.hardly":
    "لا يكاد. من بين {flags}، الأقرب إليه {nearest}: {figure}؛ ودون {limit} يسهل أن يلتبس علم بآخر.",
  "likeness.could":
    "قد يلتبس. من بين {flags} {count, plural, zero {لا يقرب منه شيء} one {يقرب منه واحد} two {يقرب منه اثنان} few {يقرب منه #} many {يقرب منه #} other {يقرب منه #}}: {names}؛ ودون {limit} يسهل أن يلتبس علم بآخر، وللأقرب {figure}.",
  "likeness.rivals": "لا تُحسب الاقتراحات الأخرى لهذا العلم.",
  "likeness.own": "هذا التصميم الجديد",

  // list: what stands between the items of a list that has no “and”.
  "list.comma": "، ",
  "list.semicolon": "؛ ",
  "list.colon": "{name}: {said}",

  // maker: the sheet from which an adopted redesign is made as a flag.
  "maker.title": "{title}، ورقة للصانعين",
  "maker.description": "نسب التصميم الجديد المعتمد وبناؤه وألوانه، للطباعة.",
  "maker.kind": "ورقة للصانعين",
  "maker.for": "للصانعين",
  "maker.print": "للطباعة: أمر الطباعة في متصفحك، A4 أو Letter، طوليًا. صفحة واحدة.",
  "maker.toStudy": "الدراسة",
  "maker.outline": "{name}: التصميم الجديد بالخطوط",
  "maker.proportions": "الارتفاع إلى العرض <number>{proportions}</number>. جهة السارية إلى اليسار.",
  "maker.unofficial": "هذا المعرض يسجله معتمدًا، والتصميم الجديد ما زال دراسة غير رسمية.",
  "maker.unofficialBy": "سُجّل معتمدًا لدى {society}، والتصميم الجديد ما زال دراسة غير رسمية.",
  "maker.built": "البناء",
  "maker.shape": "الشكل",
  "maker.fromHoist": "من السارية",
  "maker.fromTop": "من الأعلى",
  "maker.width": "العرض",
  "maker.height": "الارتفاع",
  "maker.rectangle": "مستطيل",
  "maker.line": "خط",
  "maker.circle": "دائرة، بمركزها",
  "maker.ring": "حلقة، بمركزها",
  "maker.across": "القطر {width}",
  "maker.hole": "الثقب {height}",
  "maker.laid": "بترتيب وضعها: اللاحق يغطي السابق.",
  "maker.none": "لم يمكن قراءة أشكال بسيطة من الرسم. وملف الرسم هو الفيصل.",
  "maker.parts": "الأعداد الصحيحة أجزاء، والارتفاع {parts} منها.",
  "maker.percent": "المواضع والمقاسات بالنسبة المئوية من الارتفاع، مقرّبة.",
  "maker.untold":
    "{count, plural, zero {لم يُترك شكل.} one {تُرك شكل آخر واحد لأنه غير بسيط أو لضيق الصفحة: ملف الرسم هو الفيصل.} two {تُرك شكلان آخران لأنهما غير بسيطين أو لضيق الصفحة: ملف الرسم هو الفيصل.} few {تُركت # أشكال أخرى لأنها غير بسيطة أو لضيق الصفحة: ملف الرسم هو الفيصل.} many {تُرك # شكلًا آخر لأنها غير بسيطة أو لضيق الصفحة: ملف الرسم هو الفيصل.} other {تُرك # شكل آخر لأنها غير بسيطة أو لضيق الصفحة: ملف الرسم هو الفيصل.}}",
  "maker.colours": "الألوان",
  "maker.colour": "اللون",
  "maker.hex": "Hex",
  "maker.reflectance": "الانعكاسية",
  "maker.others":
    "{count, plural, zero {لا ألوان أخرى.} one {لون آخر في صفحة الدراسة.} two {لونان آخران في صفحة الدراسة.} few {# ألوان أخرى في صفحة الدراسة.} many {# لونًا آخر في صفحة الدراسة.} other {# لون آخر في صفحة الدراسة.}}",
  "maker.coloursHow":
    "\u200fsRGB بالبايت؛ وCIELAB تحت D65؛ وانعكاسية قماش صبغته تطابق الشاشة، بين قماش المعرض الأسود وقماشه الأبيض.",
  "maker.source": "المصادر: IEC 61966-2-1 (sRGB)، CIE 15:2004 (CIELAB).",
  "maker.cautions": "قبل أن تصنعه",
  "maker.law": "القانون المحلي أولًا: في هيئة العلم، ومن يصنعه، ومن يرفعه.",
  "maker.cloth":
    "جداول الأقمشة والأصباغ هي الفيصل. لون الشاشة ليس صبغًا: اختر من جدول في ضوء النهار، واحفظ بين الألوان ما بينها هنا من فرق في الإضاءة.",
  "maker.file": "حيث تختلف هذه الورقة وملف الرسم، فملف الرسم هو الفيصل.",

  // map: the edge map.
  "map.caption":
    "حيث يلتقي لونان، كما رُسمت من مسافة النظر. الخطوط المتصلة واضحة أو قوية، والمتقطعة ليست كذلك.",
  "map.bandNote": "الشريط يحيط بما ينبغي أن يُرى.",
  "map.title": "خريطة الحواف",
  "map.focusFound": "ما ينبغي أن يُرى، كما وُجد: {share} من العلم",
  "map.focusNamed": "ما ينبغي أن يُرى، كما سمّاه المؤلف: {share} من العلم",
  "map.none": "لا حواف.",
  "map.firstGrade": "{grade}، {share} من طول الحواف كلها: {names}.",
  "map.grade": "{grade}، {share}: {names}.",

  // mark: the marks of a flag.
  "mark.clarity": "الوضوح",
  "mark.contrast": "التباين",
  "mark.length": "الطول",
  "mark.near": "عند العتبة",
  "mark.nearNow": "الآن عند العتبة",
  "mark.nearBefore": "كانت عند العتبة",
  "mark.hue": "بكنه اللون وحده",
  "mark.hueNow": "الآن بكنه اللون وحده",
  "mark.hueBefore": "كانت بكنه اللون وحده",
  "mark.clarityMeans": "100% حيث كل حافة واضحة",
  "mark.focusClarity": "وضوح ما ينبغي أن يُرى",
  "mark.focusMeans": "حواف الشارة وحدها",
  "mark.weakest": "أضعف حافة",
  "mark.weakestMeans": "تباين اللونين",
  "mark.price": "الثمن",
  "mark.sameEdge": "الحافة نفسها",

  // matrix: the matrix of all single changes.
  "matrix.notTried": "لم يُجرَّب",
  "matrix.own": "هذه الدراسة",
  "matrix.note": "ملاحظة {number}",
  "matrix.merges": "يندمج",
  "matrix.notRanked": "بلا رتبة",
  "matrix.clearest": "الأوضح في الصف",
  "matrix.title": "كل تغييرات لون واحد",
  "matrix.ownHue": "كنهه نفسه",
  "matrix.studys": "{name}، من الدراسة",
  "matrix.unranked": "بلا رتبة: يندمج {share} من محيط شارة",
  "matrix.moreColours":
    "{count, plural, zero {لا ألوان أخرى} one {لون آخر من ألوان العلم} two {لونان آخران من ألوان العلم} few {# ألوان أخرى من ألوان العلم} many {# لونًا آخر من ألوان العلم} other {# لون آخر من ألوان العلم}}",
  "matrix.moreReplacements":
    "{count, plural, zero {لا بدائل أخرى} one {بديل آخر} two {بديلان آخران} few {# بدائل أخرى} many {# بديلًا آخر} other {# بديل آخر}}",
  "matrix.reading": "الصف يغيّر لونًا من ألوان العلم، والعمود يقول إلى أي لون.",
  "matrix.readingBlocks": "كل مجموعة تغيّر لونًا من ألوان العلم؛ وفوق كل رقم اللون الذي يحل محله.",
  "matrix.clarity": "تحت كل علم وضوحه.",
  "matrix.clarityToday": "تحت كل علم وضوحه؛ وللأصل {today}.",
  "matrix.bold": "بالخط العريض: الأوضح في صفه، أو أكثر من واحد إن تساوى وضوحها.",
  "matrix.mergesNote": "«يندمج»: يصير اللونان واحدًا.",
  "matrix.greyNote": "«بلا رتبة»: ثلث محيط شارة أو أكثر يندمج.",
  "matrix.dash": "الشرطة: لم يُجرَّب، أو لا تغيير يُرى.",
  "matrix.partAlone": "تغيير هذه الدراسة في جزء واحد، وليس بينها.",
  "matrix.left": "لم يُعرض: {what}.",

  // method: the method page's opening, headings and figures.
  "method.title": "المنهج",
  "method.description": "كيف يُصنع كل رقم في هذه الصفحات: الصيغ والمصادر والدرجات والنتائج والتنبيهات.",
  "method.lede": "كيف يُصنع كل رقم هنا.",
  "method.ledeShown": "كيف يُصنع كل رقم هنا، مبيَّنًا على علم واحد: <a>{name}</a>.",
  "method.count": "النص الصغير إلى جانب كل خطوة يذكر من أين جاءت أرقامها.",
  "method.contents": "في هذه الصفحة",
  "method.edges": "الحواف",
  "method.distance": "المسافة",
  "method.lasting": "من بعيد",
  "method.reflectance": "الانعكاسية",
  "method.contrast": "التباين والدرجة",
  "method.numbers": "الوضوح",
  "method.outcomes": "النتيجة والحكم",
  "method.words": "الكلمات",
  "method.options": "تغييرات أخرى للون واحد",
  "method.survey": "المسح",
  "method.likeness": "هل يلتبس بغيره؟",
  "method.beside": "مقاييس أخرى",
  "method.facts": "الحقائق",
  "method.vision": "عند المصابين بعمى الألوان، وبالرمادي",
  "method.cautions": "التنبيهات",
  "method.inCloth": "القماش",
  "method.inHigh": "الأعلى",
  "method.inLow": "الأدنى",
  "method.ofContrast": "التباين",
  "method.ofCount": "الاحتساب",
  "method.ofClarity": "الوضوح",
  "method.ofWeight": "الوزن",
  "method.figure": "{name}: <number>{value}</number>",
  "method.figureOfChange": "<change></change>: <number>{value}</number>",
  "method.labels": "الأرقام الدالة على الألوان",
  "method.labelsShown": "{name}، لكل لون رمادي خاص به.",
  "method.traced": "كل لون برقمه، معروضًا رماديًا؛ والخطوط حيث يلتقي لونان، متقطعة حيث لا تكون الحافة واضحة.",
  "method.marked": "الشريط حول {focus}.",
  "method.afarFigure":
    "من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}: <number>{clarity}</number>",
  "method.afarShown":
    "{name} من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}.",
  "method.afarNote": "مكبَّرًا، مع وضوح ما ينبغي أن يُرى.",
  "method.cloth": "{name}: النصوع، والانعكاسية بالمئة",
  "method.sumTitle": "وضوح {name} مجموعًا: {clarity}",
  "method.sumBar": "{names}: {share} من الوزن كله، تُحتسب {counts}",
  "method.sumAll": "{bars}.",
  "method.sumNote": "لكل حافة مساحة عرضها بقدر وزنها، مملوءة بقدر احتسابها: {clarity} في المجموع.",
  "method.changeTo": "<a>التغيير في {name}</a>: الحلقة قبلُ، والنقطة بعدُ",
  "method.visionNote": "وضوح العلم كله.",
  "method.visionShown": "{heading}: {looks}.",
  "method.saidNote": "ما تقوله صفحة <a>{name}</a>.",
  "method.optionNote": "أفضل تغيير لكل لون، مع الوضوح الذي يأتي به.",
  "method.placedNote": "{name} في المسح، مع جاريه هناك ووضوح كل منهما.",

  // methodbeyond: the steps of the method beyond one comparison. `em` is an emphasised term, `i` the title of a paper.
  "method.optionsText":
    "كل لون يزيد على 0.4% من العلم يُستبدل، واحدًا بعد واحد: بكل لون من لوحة ألوان المعرض، وبكل لون آخر من ألوان العلم، وبـ<em>كُنهه المحفوظ</em>، أي كنه اللون نفسه أفتح أو أدكن بقدر ما يبلغ به تباينه {keptHue} مع جيرانه الذين لا يتضح عنهم. ولا يجوز أن تهبط درجة ثمنًا لذلك، ويبقى اللون من عائلته: فالوردي ليس أحمر. وما كان في حدود ΔE*ab {departure} فليس تغييرًا، لأن الأعلام الرسمية للأمة الواحدة تختلف بهذا القدر.",
  "method.optionsOrder":
    "يتقدم الأوضح، ثم الأقوى، ثم ما كان من العائلة نفسها، ثم الأقل فرقًا. وما يدمج ثلث محيط شارة فلا مكان له. و<em>الألوان التي تُغيَّر أولًا</em> هي {mostFirst} على الأكثر، مما يقع أفضل تغيير له في حدود {firstWithin} نقاط من أفضل الكل، إن كسب {leastGain}؛ فإن لم يكن كسب كهذا فعلم وضوحه {wholeClear} واضح كما هو. أما أيها أجمل فللمؤلف أن يقول.",
  "method.optionsSource":
    "\u200fΔE*ab {departure}: Melgosa وGómez-Robledo، <i>Óptica Pura y Aplicada</i> 55(2)، 2022، وهما يقترحانه؛ قُرئ الملخص. إضاءة الكنه المحفوظ: <ottosson>Ottosson، 2020</ottosson>. حكمنا نحن: سائر الأرقام، والترتيب.",
  "method.surveyText":
    "يقيس <a>المسح</a> كل علم كما هو اليوم، مرة واحدة مهما كثرت دراساته. يتقدم الأقل وضوحًا، ويتأخر العلم ذو اللون الواحد. والمرتبة المتدنية لا تقول إن العلم ينبغي أن يتغير، ولا العالية إنه جيد.",
  "method.surveySource": "حكمنا نحن: الترتيب.",
  "method.likenessText":
    "قد يكون العلم الأوضح علم جار. لذلك يوضع كل تصميم جديد على كل علم وتصميم جديد آخر معروف هنا، سوى أصله ومنافسيه. ويُقسم كلاهما إلى {columns} في {rows} من الخلايا، لكل خلية متوسط لونها قماشًا، والرقم هو متوسط ΔE00 للخلايا: 0 هو الصورة نفسها، والخلية التي يفتقدها أحدهما تُحسب 100. ويُجرَّب الآخر معكوسًا ومقلوبًا أيضًا. ودون {threshold} تقول الدراسة ذلك.",
  "method.likenessCare":
    "للحقول الواسعة وزن كبير وللشارات الصغيرة وزن قليل، فالرقم الصغير داعٍ إلى النظر لا دليل على سبب الشبه. والرسوم المحفوظة لهذا الغرض وحده تُسمّى ولا تُعرض: فليس لنا أن نفترض رخصتها.",
  "method.likenessSource":
    "حكمنا نحن: الشبكة والمتوسط و{threshold}. من بين 36,585 زوجًا في مجموعة مفتوحة 144 أقرب من ذلك، 50 منها علم واحد باسمين؛ ونصف الأزواج يتباعد بأكثر من 36.",
  "method.visionText":
    "لكثير من الناس عيون ينقصها أحد أنواع المخاريط الثلاثة. نعيد تلوين الرسمين كما تراهما هذه العيون، وبالرمادي، ثم نقيسهما من جديد. والرمادي يحفظ كل تباين كما كان، فنذكر معه مدى تباعد أقرب رماديين.",
  "method.visionSource":
    "عمى الأحمر وعمى الأخضر: Machado وOliveira وFernandes، <machado>2009</machado>، الشدة 1، في الضوء الخطي، والورقة لا تصرّح به. عمى الأزرق، ولا يبلغه ذلك النموذج: Brettel وViénot وMollon، 1997. قُرئت المصفوفات في تطبيقات منشورة.",
  "method.cautionProposal": "كل تصميم جديد اقتراح وليس علمًا مستعملًا، ما لم يقل قراره ذلك.",
  "method.cautionLaw":
    "تختلف القوانين في الأعلام. اتبع قوانين بلدك قبل أن تصنع شيئًا مما يُعرض هنا أو تبدله أو ترفعه، واحترم رخصة كل رسم.",
  "method.cautionEyes": "الصور لعيون أخرى تقريبات، وليست اختبارًا لبصر أحد.",
  "method.cautionWorth": "لا يقول التباين إن كان العلم جيدًا، ولا ما يعنيه، ولا لمن هو.",
  "method.cautionDistance": "المسافة نموذج: الضباب والوهج والريح تقصّر كل مسافة.",
  "method.cautionCloth": "الأرقام للرسم في ضوء النهار. والأصباغ تختلف، والقماش يبهت ويبتل وينثني.",

  // methodgrade: the steps of the method that decide a grade. `em` is an emphasised term, `i` the title of a paper.
  "method.reflectanceText": "رقم الشاشة يقول كم من الضوء يعطي اللون. نأخذ نصوعه، من 0 إلى 1، في الضوء الخطي:",
  "method.reflectanceCloth":
    "لا يكون القماش أسود تمامًا ولا أبيض تمامًا، وبأرقام الشاشة يبدو لونان داكنان أسهل تمييزًا مما هما. لذلك يوضع النصوع بين أشد الأقمشة سوادًا وأشدها بياضًا، بالمئة:",
  "method.reflectanceRanges":
    "تمتد مواد البناء من نحو {black} إلى {white}، وطلاءات أحد الصانعين من {paintBlack} إلى {paintWhite}. والدرجة التي يغيّرها المدى الأوسع تُوسم بأنها <em>عند العتبة</em>. وحيث يحدد قانونٌ القماش يضبط المعرض 0 و100، وعندئذ {laws}.",
  "method.law": "{first} على {second}: التباين {contrast}، والحافة {grade}",
  "method.lawColour": "{colour} {reflectance}",
  "method.near": "عند العتبة: قماش من {black} إلى {white} (حلقة) ومن {paintBlack} إلى {paintWhite} (نقطة)",
  "method.reflectanceSource":
    "النصوع: <wcag>WCAG 2.2</wcag>. sRGB: المعيار IEC 61966-2-1. المديات: صفحات عن مواد البناء، وجدول صانع طلاء؛ القوانين: كما يرويها غيرنا؛ وكلها نقلًا عن غير الأصل. الخط المستقيم من الأسود إلى الأبيض: بلا مصدر. حكمنا نحن: عند العتبة.",
  "method.contrastText":
    "يقارن التباين ما يردّه لونان من الضوء. هو 0% حيث يردّان القدر نفسه، ويزيد كلما تباعدا:",
  "method.contrastTable": "أقل ما يحتاج إليه ضعاف البصر",
  "method.contrastWeak": "دون 30%",
  "method.contrastSoft": "من 30% إلى ما دون 45%",
  "method.contrastClear": "من 45% إلى ما دون 60%",
  "method.contrastStrong": "60% فأكثر",
  "method.needsWeak": "دون كل عتبة",
  "method.needsSoft": "عناصر البناء الكبيرة",
  "method.needsClear": "الأجسام الصغيرة المفردة: الشارات",
  "method.needsStrong": "الأجسام الصغيرة بلونين",
  "method.contrastClose":
    "الشارة جسم صغير مفرد، فالحافة واضحة من 45%. وللمثال المنشور مع الصيغة، {reflectances}، تباين {published}؛ وهو هنا {computed}.",
  "method.pairs": "نتائج أزواج مألوفة؛ والعلامات عند 30 و45 و60%",
  "method.pair": "الزوج",
  "method.pairContrast": "التباين",
  "method.pairScale": "على مقياس من 0 إلى 100 في المئة",
  "method.pairRatio": "النسبة",
  "method.contrastSource":
    "\u200fBowman وSapolinski: المعيار AS 1428.1:2009، الملحق B؛ AS/NZS 1428.4.1، الملحق E؛ نقلًا عن غير الأصل. ولا تُقارن النسبة المئوية بمقياس آخر: Boon وآخرون، <i>Work</i> 70(4)، <boon>2021</boon>. حكمنا نحن: أن الشارة جسم صغير مفرد؛ وتدرجات ألوان الأزواج. أي الأزواج تُقرأ بوضوح: عرف شائع، بلا مصدر.",
  "method.besideText":
    "تقف إلى جانب التباين ثلاثة مقاييس أخرى، لا يحسم أيٌّ منها. <em>نسبة التباين</em> في الويب مصنوعة للشاشات: {first} على {second} يجتاز نسبتها 3 إلى 1، ومع ذلك لا أحد ممن ينظر إلى الأعلام يعدّه سهل الرؤية. و<em>ΔE00</em> يقول كم يختلف لونان في العين، والكنه داخل فيه. والثالث <a>قاعدة الصبغات</a>.",
  "method.besidePair":
    "{first} / {second}: نسبة التباين <number>{ratio}</number>، ΔE00 <number>{deltaE00}</number>، التباين <number>{contrast}</number>، والحافة {grade}",
  "method.besideSource":
    "\u200fWCAG 2.2، <ratio>النسبة</ratio> و<objects>1.4.11</objects>. Sharma وWu وDalal، <sharma>CIEDE2000</sharma>، 2005؛ وأزواجه الـ34 تختبر هذا البرنامج. أن الأحمر على الأسود عسير الرؤية: عرف شائع، بلا مصدر.",

  // methodsight: the steps of the method from a drawing to its lines. `em` is an emphasised term, `i` the title of a paper.
  "method.edgesText":
    "نرسم العلم بارتفاع {pixels} بكسلًا، وأقل من ذلك إن كان عريضًا جدًا، ونرقّم ألوانه. ونتتبع الخط حيثما التقى اثنان منها. وكل الخطوط بين اللونين نفسيهما <em>حافة</em> واحدة؛ ويُذكر طولها بارتفاع العلم: فهو عبر علم نسبته 2:3 يساوي 1.5.",
  "method.edgesLimits":
    "حدّ العلم ليس حافة. والشكل الذي يظهر بأقل من نصف قوته (عتامة 0.4) يُترك؛ وما عداه يُعدّ معتمًا. والحافة التي تقل عن {edge} من طول الحواف كلها تُدرج، لكنها لا تكون الأضعف أبدًا ولا تحرّك حكمًا.",
  "method.edgesSource":
    "قورن بأعلام يحدد القانون هندستها: تتفق الحصص في حدود 0.2 نقطة، والأطوال في حدود 1%، وفي حدود 3% مع الأطراف الدقيقة. حكمنا نحن: حجم الصورة، ونصف القوة، و{edge} من الطول كله.",
  "method.distanceText":
    "العلم مصنوع ليُرى من بعيد. يقيس هذا المعرض من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}؛ وأدق جزء تتبيّنه العين من هناك، وهو دقيقة قوسية، يساوي {finest} من ارتفاع العلم. والأجزاء الأدق تُضم إلى جيرانها قبل تتبع الحواف، فيزول المحيط الرفيع ويبقى العريض. والجزء القريب من الحد بمقدار 10% يستدعي تحذيرًا.",
  "method.distanceNone":
    "يقيس هذا المعرض الرسم كله. ومن مسافة، وله أن يختارها، تُضم الأجزاء التي يمنع رفعها تبيّنَها إلى جيرانها.",
  "method.distanceFocus":
    "<em>ما ينبغي أن يُرى</em> هو الشارات: أجزاء لا تمس حدًّا، مع كل ما تحيط به، وتملأ 0.2% من العلم فأكثر. فإن زادت على 35% فهي حقل مؤطر، وننظر في داخله؛ وثقب الحلقة ليس حقلًا كهذا. والقطعة التي تبلغ عُشر تلك المساحة <em>شارة</em> قائمة بذاتها. وللمؤلفين أن يسمّوه بدل ذلك، وعليهم أن يسمّوه حيث تمتد شارة في حقل من لونها، لأننا لا نخمّن. والعلم بلا شارة ليس أسوأ لذلك.",
  "method.distanceSame":
    "اللون القريب من لون أوسع منه في حدود {same} (<a>ΔE00</a>) يُحسب معه. وحصص الألوان من الرسم كله.",
  "method.distanceSource":
    "الدقيقة القوسية: حدة بصر 20/20، المعيار ISO 8596، نقلًا عن غير الأصل. وهذا نموذج: فقد يُلحظ خط قوي واحد مع ذلك. حكمنا نحن: المسافة وكل النسب المئوية، وΔE00 {same}، والعُشر.",
  "method.lastingText":
    "من كل مسافة نسأل سؤالين. هل ما ينبغي أن يُرى واضح؟ لحوافه نفسها هناك <a>وضوح</a>. وهل هو كبير بما يكفي؟ ينبغي أن يبقى {left} من مساحته على الأقل، وأن تمتد أكبر قطعة منه على {span} دقائق قوسية، كحرف تقرؤه حدة بصر 20/20.",
  "method.lastingLast":
    "وهو <em>يدوم حتى</em> أبعد مسافة يكون منها كبيرًا بما يكفي. وهذا أمر حجم لا يحركه تغيير لون. والصور مغبَّشة كما تراها العين؛ ولا يؤخذ منها رقم.",
  "method.lastingTable": "ما تفعله المسافة بالعلم، بالمئة من ارتفاعه",
  "method.lastingFrom": "ضعف ارتفاع العلم",
  "method.lastingFinest": "أدق جزء",
  "method.lastingBlur": "التغبيش",
  "method.lastingSource":
    "{span} دقائق قوسية: المعيار ISO 8596، نقلًا عن غير الأصل. حكمنا نحن: الـ{left}، وأن يُطلب من أكبر قطعة. التغبيش، بانحراف معياري 0.5 دقيقة قوسية: Levi وآخرون، <i>Vision Research</i> 30، 1990، <levi>الملخص</levi>؛ والتوزيع الغاوسي ليس عدسة: Strasburger وآخرون، <strasburger>2018</strasburger>.",

  // methodterm: the definitions of the method. `em` is an emphasised term, `i` the title of a book; `move` stands for an
  "method.numbersText":
    "تُحتسب الحافة بقدر ما يقترب تباينها من {clear}، وكاملة من هناك فصاعدًا: 30 / 45 = 67%. والوضوح متوسط الحواف كلها، كل حافة موزونة بطولها، ومرة أخرى بالجزء منها الذي يحدّ ما ينبغي أن يُرى:",
  "method.numbersClose":
    "فالعلم الذي حوافه كلها واضحة له 100%، والحافة الضعيفة الطويلة تكلّف أكثر من القصيرة. والعلم ذو اللون الواحد لا حافة له ولا وضوح.",
  "method.numbersSource": "حكمنا نحن: المجموع، وأن ما ينبغي أن يُرى يُحسب مرتين.",
  "method.strength": "القوة",
  "method.strengthMeans": "المجموع نفسه محسوبًا حتى {strong}؛ وهي ترتّب ما يسوّي بينه الوضوح",
  "method.weakest": "أضعف حافة",
  "method.weakestMeans": "الحافة الأقل تباينًا، باستثناء أقصر الحواف",
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
    "<em>ثمن</em> التغيير هو الحواف التي فُقدت أو ساءت أو اندمجت، أو انفصلت ولم تتضح. ويصدر الحكم بالوضوح نسبةً مئوية صحيحة بلا كسور، فإن تساوى فبالقوة:",
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
    "لا معدن (أبيض، أصفر) على معدن، ولا لون (أحمر، أزرق، أخضر، أسود، أرجواني) على لون. ويُستثنى: جزءا الحقل اللذان يبلغ كلاهما الحد، والخطوط الفاصلة؛ والفراء أيضًا، ولا يُتعرَّف عليه هنا",
  "method.colours": "الألوان",
  "method.coloursMeans":
    "ما زاد منها على 0.5% من المساحة، والتدرجات المتقاربة لون واحد؛ والأدلة تنصح بلونين أو ثلاثة",
  "method.factsSource":
    "\u200fA. C. Fox-Davies، <i>A Complete Guide to Heraldry</i>، 1909، الفصل السابع؛ الاستثناءات: عرف شائع، بلا مصدر. <good>Good Flag, Bad Flag</good>، جمعية أمريكا الشمالية لعلم الأعلام، 2006، المبدأ الثالث؛ <i>Guiding Principles of Flag Design</i>، اللجنة المشتركة لمبادئ تصميم الأعلام، 2014، 3.1. حكمنا نحن: كنه اللون وحده، والـ0.5%.",

  // metric: the measures of an edge.
  "metric.contrastRatio": "نسبة التباين",
  "metric.deltaE00": "فرق اللون، ΔE00",
  "metric.hueOnly": "لا يختلف إلا كنه اللون",
  "metric.tincture": "قاعدة الصبغات",
  "metric.tinctureMeans": "لا معدن على معدن ولا لون على لون",
  "metric.yes": "نعم",
  "metric.no": "لا",
  "metric.bothMetals": "معدن على معدن",
  "metric.bothColours": "لون على لون",
  "metric.noObjection": "لا يخالفها",

  // move: from one value to another.
  "move.to": "إلى",
  "move.row": "{name}: من {before} إلى {after}",

  // moved: pages at addresses whose own page has gone; a heading, and what stands below it.
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
  "moved.claimedByHidden":
    "أكثر من دراسة تقول إنها كانت هنا، وواحدة منها على الأقل غير معروضة الآن. والمعروض منها:",
  "moved.lastGood": "لم يمكن بناء هذه الدراسة مما في مجلدها الآن. وهذه آخر صفحة كانت لها.",

  // near: whether a redesign could be mistaken for another flag.
  "near.beside": "إلى جانب أقرب الأعلام إليه",
  "near.hidden": "{name}، غير معروض هنا",
  "near.scale": "متوسط ΔE00 على العلم كله قماشًا: 0 هو الصورة نفسها. <how>كيف يُقاس الشبه</how>",
  "near.redesign": "التصميم الجديد في «{study}»",

  // number: what stands where there is no number.
  "number.noEdges": "لا حواف",
  "number.move": "من {was} إلى {is}",
  "number.noEmblem": "لم يُعثر على شارة",

  // options: other single changes of a flag.
  "options.caption": "أفضل بديل لكل لون",
  "options.byColour": "الأفضل لكل لون",
  "options.all": "كلها معًا",
  "options.how":
    "يُجرَّب كل لون من ألوان العلم مع لوحة الألوان، ومع سائر ألوان العلم، ومع أقرب تدرّج واضح من كنهه نفسه. ترتيبها بأرقامها؛ وأيها أجمل فللمؤلف أن يقول. <how>كيف تُرتَّب الخيارات</how>",
  "options.tried": "مما جرّبه المؤلف أيضًا",
  "options.changed": "اللون المتغير",
  "options.best": "أفضل بديل",
  "options.ofFocus": "لما ينبغي أن يُرى",
  "options.worse": "ما يسوء",
  "options.share": "{share} من العلم",
  "options.none": "لا بديل يُبقي لكل شارة محيطها.",
  "options.bestLabel": "الأفضل:",
  "options.worseLabel": "يسوء:",
  "options.nothing": "لا شيء.",
  "options.beside": "إلى جانب <study>{title}</study>",
  "options.title": "تغييرات أخرى للون واحد",
  "options.titleOf": "تغييرات أخرى للون واحد، {study}",
  "options.description": "كل تغيير آخر للون واحد إلى جانب {title}، مقيسًا.",
  "options.standing": "هذه الدراسة: {standing}",
  "options.whole": "وضوح الأصل {clarity}: لا تغيير يمكن أن يرفعه.",
  "options.clearest": "أوضحها، {was} إلى {is}، يبلغ {clarity}.",
  "options.clearestTried": "أوضحها، {was} إلى {is}، وقد جرّبه المؤلف، يبلغ {clarity}.",
  "options.clearestTriedInPart": "أوضحها، {was} إلى {is} في {part}، وقد جرّبه المؤلف، يبلغ {clarity}.",
  "options.clearerTried": "{is} محل {was}، وقد جرّبه المؤلف، يبلغ {clarity}.",
  "options.clearerTriedInPart": "{is} محل {was} في {part}، وقد جرّبه المؤلف، يبلغ {clarity}.",
  "options.onePart": "جزء واحد",
  "options.noneLevel": "لا تغيير ينفع؛ بوضوح اليوم نفسه:",
  "options.noneNearest": "لا تغيير ينفع؛ الأقرب:",
  "options.triedHas": "{name}، وقد جرّبه المؤلف: {clarity}",
  "options.option": "خيار",
  "options.triedAlt": "العلم وقد تحول فيه {was} إلى {is}",
  "options.triedAltInPart": "العلم وقد تحول فيه {was} إلى {is} في {part}",
  "options.changeInPart": "يتحول {before} إلى {after} في {part}.",
  "options.figure": "الوضوح {clarity}",
  "options.figureAndFocus": "الوضوح {clarity}، ولما ينبغي أن يُرى {focus}",
  "options.strengthRises": "يثبت الوضوح، وترتفع القوة، أي ما تجاوزت به الحواف حد الوضوح، من {was} إلى {is}",
  "options.strengthFalls": "يثبت الوضوح، وتهبط القوة، أي ما تجاوزت به الحواف حد الوضوح، من {was} إلى {is}",
  "options.verdict": "{verdict}.",
  "options.verdictWhy": "{verdict}: {why}.",

  // otherchange: other single changes of a flag, which colour to change first, and what was not tried.
  "otherChange.another": "{name} آخر",
  "otherChange.equal":
    "{count, plural, zero {يعادله {names}} one {يعادله {names}} two {يعادله {names}} few {يعادله {names}} many {يعادله {names}} other {يعادله {names}}}",
  "otherChange.equalShort": "وكذلك {names}",
  "otherChange.others":
    "{count, plural, zero {لا غيرها} one {لون آخر} two {لونان آخران} few {# ألوان أخرى} many {# لونًا آخر} other {# لون آخر}}",
  "otherChange.lost": "أصعب رؤية إلى جانب {names}.",
  "otherChange.worse": "أقل وضوحًا إلى جانب {names}.",
  "otherChange.merged": "لون واحد مع {names}.",
  "otherChange.outlineMerges": "يندمج {share} من المحيط.",
  "otherChange.confusable": "قد يلتبس مع لون العلم: {names}.",
  "otherChange.confused": "عند المصابين ب{sights} يلتبس مع {name}.",
  "otherChange.protan": "عمى الأحمر",
  "otherChange.deutan": "عمى الأخضر",
  "otherChange.tritan": "عمى الأزرق",
  "otherChange.fromTo": "{before} إلى {after}",
  "otherChange.unranked":
    "{count, plural, zero {بلا رتبة: {changes}.} one {بلا رتبة: {changes}؛ فهو يدمج ثلث محيط شارة أو أكثر.} two {بلا رتبة: {changes}؛ فكلاهما يدمج ثلث محيط شارة أو أكثر.} few {بلا رتبة: {changes}؛ فكل منها يدمج ثلث محيط شارة أو أكثر.} many {بلا رتبة: {changes}؛ فكل منها يدمج ثلث محيط شارة أو أكثر.} other {بلا رتبة: {changes}؛ فكل منها يدمج ثلث محيط شارة أو أكثر.}}",
  "otherChange.place":
    "{clearer, plural, zero {لا تغيير أوضح بين تغييرات اللون الواحد الـ{total}.} one {تغيير واحد أوضح بين تغييرات اللون الواحد الـ{total}.} two {تغييران أوضح بين تغييرات اللون الواحد الـ{total}.} few {# تغييرات أوضح بين تغييرات اللون الواحد الـ{total}.} many {# تغييرًا أوضح بين تغييرات اللون الواحد الـ{total}.} other {# تغيير أوضح بين تغييرات اللون الواحد الـ{total}.}}",
  "otherChange.noneTried": "لم يمكن تجربة أي لون.",
  "otherChange.allMerge": "كل تغيير جُرّب يدمج ثلث محيط شارة أو أكثر.",
  "otherChange.clear": "العلم واضح كما هو، بوضوح قدره {clarity}.",
  "otherChange.clearAndNone": "العلم واضح كما هو، بوضوح قدره {clarity}: لا تغيير مفرد يأتي بخمس نقاط أخرى.",
  "otherChange.none": "وضوح العلم {clarity}، ولا تغيير مفرد يأتي بخمس نقاط أخرى.",
  "otherChange.detail": "العلم في جملته واضح، بوضوح قدره {clarity}؛ ولا يكسب إلا تفصيل منه.",
  "otherChange.first":
    "يُغيَّر أولًا {colour} ({share} من العلم): إذا حل محله {best} ارتفع الوضوح من {from} إلى {to}.",
  "otherChange.firstAlike": "{best} محل {colours}، أو محل {last}، يرفع الوضوح من {from} إلى {to}.",
  "otherChange.firstOfSeveral": "يُغيَّر أولًا {colours} أو {last}: {moves}.",
  "otherChange.shareFirst": "{colour} ({share} من العلم)",
  "otherChange.share": "{colour} ({share})",
  "otherChange.moveFirst": "إذا حل {best} محل {colour} ارتفع الوضوح من {from} إلى {to}",
  "otherChange.move": "وإذا حل {best} محل {colour} فإلى {to}",
  "otherChange.mostGained": "أكثر الكسب حيث يلتقي {colour} و{other} (تباينهما اليوم {contrast}).",
  "otherChange.uneven": "ألوان غير متجانسة، فلم تُجرَّب: {names}.",
  "otherChange.unseen":
    "{distance, plural, zero {لا تُرى من بعيد، فلم تُجرَّب: {names}.} one {لا تُرى من مسافة ارتفاع العلم، فلم تُجرَّب: {names}.} two {لا تُرى من ضعفي ارتفاع العلم، فلم تُجرَّب: {names}.} few {لا تُرى من # أضعاف ارتفاع العلم، فلم تُجرَّب: {names}.} many {لا تُرى من # ضعف ارتفاع العلم، فلم تُجرَّب: {names}.} other {لا تُرى من # ضعف ارتفاع العلم، فلم تُجرَّب: {names}.}}",
  "otherChange.shared": "معروض أيضًا شفافًا أو في تدرّج أو نقش، والأرقام تتركه كما هو: {names}.",
  "otherChange.largest":
    "{all, plural, zero {لا ألوان} one {لون واحد} two {لونان} few {# ألوان} many {# لونًا} other {# لون}}: لم يُجرَّب {tried, plural, zero {منها شيء} one {منها إلا الأوسع} two {منها إلا الأوسعان} few {منها إلا الـ# الأوسع} many {منها إلا الـ# الأوسع} other {منها إلا الـ# الأوسع}}، كل لون بألوان غيره.",
  "otherChange.palette":
    "في لوحة الألوان {all, plural, zero {لا شيء} one {لون واحد} two {لونان} few {# ألوان} many {# لونًا} other {# لون}}: {tried, plural, zero {لم يُجرَّب شيء.} one {جُرّب الأول.} two {جُرّب الأولان.} few {جُرّبت الـ# الأولى.} many {جُرّبت الـ# الأولى.} other {جُرّبت الـ# الأولى.}}",

  // outcome: what becomes of an edge, as a word in tables.
  "outcome.gained": "كُسبت",
  "outcome.lost": "فُقدت",
  "outcome.better": "تحسّنت",
  "outcome.worse": "ساءت",
  "outcome.same": "كما هي",
  "outcome.merged": "اندمجت",
  "outcome.parted": "انفصلت",

  // ownpage: what stands around the pages that a gallery writes itself.
  "ownPage.pages": "صفحات",
  "ownPage.pagesOf": "صفحات {gallery}.",
  "ownPage.beside": "صفحات إلى جانب هذه",
  "ownPage.next": "التالي: <a>{title}</a>",

  // paging: the ways between the pages of a long list.
  "paging.ways": "صفحات هذه القائمة",
  "paging.place": "الصفحة {number} من {count}",
  "paging.title": "{title}، الصفحة {number} من {count}",
  "paging.onward": "{place}. <next>التالية</next>، <last>الأخيرة</last>",
  "paging.both":
    "{place}. <first>الأولى</first>، <previous>السابقة</previous>، <next>التالية</next>، <last>الأخيرة</last>",
  "paging.back": "{place}. <first>الأولى</first>، <previous>السابقة</previous>",

  // pair: both flags of a study, and what swaps them.
  "pair.swap": "بدّل في المكان",
  "pair.both": "اعرض العلمين",
  "pair.pressFlag": "اضغط على علم",
  "pair.orKey": "أو على مفتاح سهم، أو",
  "pair.pressKey": "اضغط على مفتاح سهم، أو",
  "pair.bothShown": "العلمان معروضان",
  "pair.shownAlone": "{name} معروض وحده",
  "pair.split": "نصفه الأصل ونصفه التصميم الجديد",

  // part: the page by which readers propose a study, with the words of its script and of the letter.
  "part.link": "اقترح دراسة من عندك",
  "part.title": "اقترح دراسة",
  "part.description": "كيف تُقترح دراسة لإعادة التصميم على هذا المعرض: ملفان، ورسالة تُرسل بها.",
  "part.lede":
    "الدراسة مجلد فيه ملفان: رسم علم، ونص يسمّي تغيير لون واحد ويحتج له. ولا تحتاج كتابتها إلى حساب ولا إلى برنامج.",
  "part.files": "الملفان",
  "part.drawing":
    "العلم كما هو، مرسومًا بصيغة SVG، بحجم 512 كيلوبايت على الأكثر. لا يمكن إعادة تلوين الصور النقطية ولا الصور الفوتوغرافية.",
  "part.textFile": "نص عادي: ما الذي يتغير، ولماذا.",
  "part.study": "بين سطري الشرطات العنوان، واللون الذي يُستبدل، واللون الذي يحل محله؛ وتحتهما أسبابك.",
  "part.credit": "إن لم يكن الرسم لك فاذكر صاحبه ورخصته، في سطر كهذا فوق سطر الشرطات الثاني:",
  "part.template": "النص",
  "part.sampleTitle": "عجلة أفتح",
  "part.sampleFlag": "علم العبّارة",
  "part.sampleWhy": "لماذا هذا التغيير، وما الذي لم يكن يُرى قبله، وما ثمنه.",
  "part.send": "أرسلها",
  "part.sendByMail": "أرفق الرسم بالرسالة: لا تستطيع صفحة أن تفعل ذلك عنك.",
  "part.sendAtForm": "أرفق الرسم هناك إن كان الموقع يقبل الملفات، أو اذكر أين يوجد.",
  "part.letter": "اكتب الرسالة",
  "part.byMail": "بالبريد إلى {address}، والنص فيها.",
  "part.atForm": "عند {host}، والنص فيها.",
  "part.atFormEmpty": "عند {host}؛ انسخ النص أولًا.",
  "part.subject": "دراسة من أجل {gallery}",
  "part.try": "جرّب تغييرًا",
  "part.private": "يبقى الرسم في حاسوبك: هذه الصفحة لا ترفع شيئًا ولا تحفظ شيئًا.",
  "part.choose": "اختر رسمًا (SVG)",
  "part.tooBig": "هذا الملف أكبر من 512 كيلوبايت، وهو أكبر ما يجوز للرسم.",
  "part.broken": "لا يمكن قراءة هذا الملف رسمًا بصيغة SVG. احفظه مرة أخرى ملف SVG عاديًا، واختر ذلك الملف.",
  "part.endless": "هذا الرسم أكبر من أن يُعرض هنا، أو يحيل إلى نفسه بلا نهاية.",
  "part.colourless": "لم يُعثر في هذا الرسم على لون يمكن استبداله.",
  "part.chosen": "الرسم معروض أدناه مع ألوانه.",
  "part.replace": "استبدل",
  "part.palette": "بلون من ألوان المعرض",
  "part.typed": "أو بلون تكتبه",
  "part.unknown": "ليس هذا لونًا يحجب ما وراءه. اكتب مثلًا #f4c430.",
  "part.same": "هذا هو اللون الموجود.",
  "part.before": "قبل",
  "part.after": "بعد",
  "part.beforeShown": "الرسم كما هو",
  "part.afterShown": "الرسم بعد التغيير",
  "part.pairs": "تباين ألوانه",
  "part.pair": "الزوج",
  "part.rough":
    "هذه علامات تقريبية لكل زوج من الألوان، تلامسا أم لا. أما المعرض فيقيس الحواف نفسها بأطوالها، وينظر من مسافة؛ وأرقامه هي المعتمدة.",
  "part.more": "لا تُقارن هنا إلا الألوان الاثنا عشر الأولى.",
  "part.text": "نصك",
  "part.textTitle": "عنوان الدراسة",
  "part.textFlag": "ما يسمّى به العلم",
  "part.textAuthor": "اسمك كما يُنشر",
  "part.textWhy": "لماذا هذا التغيير",
  "part.untitled": "ضع للدراسة عنوانًا وقل السبب: عندئذ يمكن إرسال النص أدناه.",
  "part.ready": "احفظ هذا باسم study.md إلى جانب الرسم، أو أرسله كما هو.",
  "part.copy": "انسخ النص",
  "part.copied": "نُسخ.",
  "part.refused": "لم يسمح المتصفح بذلك؛ ظلّل النص وانسخه.",
  "part.unscripted":
    "مع النصوص البرمجية تعرض هذه الصفحة رسمًا من حاسوبك بعد التغيير، وتكتب النص لك. ومن دونها انسخ النص أعلاه واملأه.",

  // picture: link pictures, which sites and chats show when someone posts a link; and records for search.
  "picture.redesign": "التصميم الجديد · دراسة غير رسمية",
  "picture.above": "أعلى: {half}",
  "picture.below": "أسفل: {half}",
  "picture.clarity": "{verdict}: الوضوح",
  "picture.oneColour": "لون واحد",
  "picture.contrast": "{outcome}: تباين هذه الحافة",
  "picture.alt":
    "علم مقسوم {split}، نصفه الأصل ونصفه التصميم الجديد. {title}. {measure} {move}. دراسة غير رسمية.",
  "picture.altOf":
    "علم مقسوم {split}، نصفه الأصل ونصفه التصميم الجديد. {title} ({of}). {measure} {move}. دراسة غير رسمية.",
  "picture.perPale": "رأسيًا",
  "picture.perBend": "بخط مائل من أعلى اليسار",
  "picture.perBendSinister": "بخط مائل من أعلى اليمين",
  "picture.perFess": "أفقيًا",
  "picture.genre": "دراسة غير رسمية لإعادة تصميم علم",
  "picture.within": "{title}، في {study}",

  // plate: what a flag that is shown is called.
  "plate.original": "الأصل",
  "plate.redesign": "التصميم الجديد",
  "plate.clarity": "الوضوح <number>{clarity}</number>",
  "plate.contrast": "التباين <number>{contrast}</number>",
  "plate.asItIs": "العلم كما هو",
  "plate.alt": "{label}: {paints}",

  // price: the edges that a change makes worse, as clauses in a list.
  "price.falls": "تباين {one} على {other} صار {contrast} ({grade})، وكان {wasContrast} ({wasGrade})",
  "price.fallsRenamed":
    "تباين {newOne} على {newOther} هو {contrast} ({grade})، وكان تباين {one} على {other} {wasContrast} ({wasGrade})",
  "price.graded": "{contrast} ({grade})",
  "price.more":
    "{count, plural, zero {لا غيرها} one {حافة أخرى} two {حافتان أخريان} few {# حواف أخرى} many {# حافة أخرى} other {# حافة أخرى}}",

  // proposal: studies among others, and what others said of them.
  "proposal.none": "لا دراسة له بعد",
  "proposal.only": "اقتراح واحد لهذا العلم",
  "proposal.count":
    "{count, plural, =2 {اقتراحان لعلم واحد} =3 {ثلاثة اقتراحات لعلم واحد} =4 {أربعة اقتراحات لعلم واحد} =5 {خمسة اقتراحات لعلم واحد} =6 {ستة اقتراحات لعلم واحد} =7 {سبعة اقتراحات لعلم واحد} =8 {ثمانية اقتراحات لعلم واحد} =9 {تسعة اقتراحات لعلم واحد} =10 {عشرة اقتراحات لعلم واحد} zero {لا اقتراحات لهذا العلم} one {اقتراح واحد لعلم واحد} two {اقتراحان لعلم واحد} few {# اقتراحات لعلم واحد} many {# اقتراحًا لعلم واحد} other {# اقتراح لعلم واحد}}",
  "proposal.countShown": "{count}، المعروض منها أولها حتى {shown}",
  "proposal.oneOf":
    "{count, plural, =2 {واحد من اقتراحين له} =3 {واحد من ثلاثة اقتراحات له} =4 {واحد من أربعة اقتراحات له} =5 {واحد من خمسة اقتراحات له} =6 {واحد من ستة اقتراحات له} =7 {واحد من سبعة اقتراحات له} =8 {واحد من ثمانية اقتراحات له} =9 {واحد من تسعة اقتراحات له} =10 {واحد من عشرة اقتراحات له} zero {اقتراح له} one {الاقتراح الوحيد له} two {واحد من اقتراحين له} few {واحد من # اقتراحات له} many {واحد من # اقتراحًا له} other {واحد من # اقتراح له}}",
  "proposal.studies":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}",
  "proposal.flags":
    "{count, plural, zero {لا أعلام بلا دراسة} one {علم واحد بلا دراسة} two {علمان بلا دراسة} few {# أعلام بلا دراسة} many {# علمًا بلا دراسة} other {# علم بلا دراسة}}",
  "proposal.answer":
    "{says, select, agree {موافقة من {by}} disagree {مخالفة من {by}} doubt {شك من {by}} other {سؤال من {by}}}",
  "proposal.authorReplies": "رد المؤلف",
  "proposal.replies": "رد من {by}",
  "proposal.authorRepliesOn": "رد المؤلف، {date}",
  "proposal.repliesOn": "رد من {by}، {date}",
  "proposal.decided":
    "{status, select, adopted {اعتُمدت في {date}.} declined {رُفضت في {date}.} other {سُحبت في {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {اعتُمدت بقرار من {by} في {date}.} declined {رُفضت بقرار من {by} في {date}.} other {سُحبت بقرار من {by} في {date}.}}",
  "proposal.decidedVotes":
    "{status, select, adopted {اعتُمدت في {date}، {votes}.} declined {رُفضت في {date}، {votes}.} other {سُحبت في {date}، {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {اعتُمدت بقرار من {by} في {date}، {votes}.} declined {رُفضت بقرار من {by} في {date}، {votes}.} other {سُحبت بقرار من {by} في {date}، {votes}.}}",
  "proposal.for":
    "{count, plural, zero {لا صوت مع} one {صوت واحد مع} two {صوتان مع} few {# أصوات مع} many {# صوتًا مع} other {# صوت مع}}",
  "proposal.against":
    "{count, plural, zero {لا صوت ضد} one {صوت واحد ضد} two {صوتان ضد} few {# أصوات ضد} many {# صوتًا ضد} other {# صوت ضد}}",
  "proposal.abstained":
    "{count, plural, zero {لا ممتنع} one {ممتنع واحد} two {ممتنعان} few {# ممتنعين} many {# ممتنعًا} other {# ممتنع}}",

  // question: questions to a class of what a change does, with answers for the teacher.
  "question.hardest": "انظر إلى الأصل من آخر القاعة. أي لونين متلاقيين أصعب تمييزًا؟",
  "question.hardestAnswer": "{names}: التباين {contrast}، {grade}.",
  "question.hardestIsClear": "{names}: التباين {contrast}، {grade}. حتى هذه واضحة.",
  "question.lines": "كم خطًا بين لونين في التصميم الجديد؟",
  "question.linesAnswer": "لا خط يُحسب: اللونان اللذان كانا يلتقيان صارا لونًا واحدًا.",
  "question.grade":
    "في التصميم الجديد تباين {one} إلى جانب {other} يساوي {contrast}. أي درجة هذه: ضعيفة أم لينة أم واضحة أم قوية؟",
  "question.weak": "ضعيفة: دون {soft}.",
  "question.soft": "لينة: من {soft} إلى ما دون {clear}.",
  "question.clear": "واضحة: من {clear} إلى ما دون {strong}.",
  "question.strong": "قوية: {strong} فأكثر.",
  "question.price": "للتغيير ثمن ذُكر أعلاه. أتدفعه؟ أم أي لون من ألوان الأصل تغيّر، وإلى ماذا، ليصير أوضح؟",
  "question.priceAnswer": "لا رقم يقول إن كان الثمن فادحًا: اطلب الأسباب.",
  "question.noGain": "{verdict} أيمكن مع ذلك أن يكون للتغيير سبب؟",
  "question.noGainAnswer":
    "ليس في هذه الأرقام. لا بد أن يأتي السبب من غيرها: مما تعنيه الألوان، أو ممن يرفعها أيضًا، أو من الذوق.",
  "question.gain": "كان الوضوح {before} وصار {after} بعد التغيير. أين يزيد التباين أكثر؟",
  "question.gainOfOne": "كان الوضوح {before} وصار {after} بعد التغيير. أي لونين أحدثا الفرق، وبكم؟",
  "question.gainAnswer": "{was}، من تباين {before} ({wasGrade}) إلى {after} ({grade}).",
  "question.gainAnswerRenamed":
    "{was}، من تباين {before} ({wasGrade}) إلى {after} ({grade}) بعد أن تحولت إلى {is}.",
  "question.area": "خمّن: أي لون يغطي أكثر الأصل، وكم منه؟",
  "question.areaAnswer": "{name}: {share} من العلم.",
  "question.more": "ماذا تضيف ليتميز هذا العلم عن غيره عبر القاعة؟",
  "question.moreAnswer": "الأجوبة كثيرة. وكل ما يضاف ينبغي أن يكون أفتح بكثير أو أدكن بكثير من {name}.",
  "question.field": "الحقل",

  // record: the record at the end of a study.
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
  "record.rights": "{credit}، {licence}",
  "record.unofficial": "التصميم الجديد دراسة غير رسمية: اقتراح للنقاش، لا علم مستعمل.",
  "record.unofficialBy": "التصميم الجديد دراسة غير رسمية، ناشرها {society}: اقتراح للنقاش، لا علم مستعمل.",

  // refer: how to cite a study, and the stamp of its state.
  "refer.heading": "الاستشهاد بهذه الصفحة",
  "refer.copyText": "انسخ النص",
  "refer.copyBibtex": "انسخ BibTeX",
  "refer.copied": "نُسخ.",
  "refer.notCopied": "لم يسمح المتصفح بذلك.",
  "refer.bibtexAndStamp": "\u200fBibTeX، وما فائدة الختم",
  "refer.stamp":
    "الختم <stamp></stamp>: علامة قصيرة للرسم والتغيير والقياس. وعبر <link>عنوان فيه الختم</link> يُخبَر القارئ اللاحق بما تغيّر مما يُقاس. أما كلمات الدراسة فقد تتغير من دونه.",
  "refer.changed":
    "<strong>تغيّرت هذه الدراسة منذ ذلك الحين.</strong> الرابط الذي جئت منه وُضع لحالة أسبق، ختمها <came></came>. أما المعروض هنا الآن فختمه <now></now>.",
  "refer.study": "دراسة غير رسمية لإعادة تصميم علم",
  "refer.edge": "حافة من دراسة غير رسمية لإعادة تصميم علم",
  "refer.series": "سلسلة دراسات غير رسمية لإعادة تصميم الأعلام",
  "refer.cited": "«{title}»، {kind}. {gallery}. {address}",
  "refer.citedOn": "«{title}»، {kind}. {gallery}، {date}. {address}",
  "refer.note": "{kind}، {gallery}",
  "refer.noteStamped": "{kind}، {gallery}، الختم {stamp}",

  // ruler: the contrast ruler.
  "ruler.caption": "تباين لونين متلاقيين: حلقة للأصل، ونقطة للتصميم الجديد؛ وخط غليظ للحافة الطويلة.",
  "ruler.fallsNote": "مفرَّغ حيث يهبط التباين.",
  "ruler.crossesNote": "كُسبت: صارت واضحة ولم تكن؛ وفُقدت: العكس.",
  "ruler.mergedNote": "علامة × حيث يصير لونان لونًا واحدًا.",
  "ruler.outlineNote": "المحيط محيط ما ينبغي أن يُرى، ويُحسب مرتين.",
  "ruler.nearNote": "عند العتبة: على قماش آخر تكون الدرجة غيرها.",
  "ruler.hueNote":
    "بكنه اللون وحده: يختلف اللونان في الكنه ولا يكادان يختلفان في الإضاءة، فيتلاشيان عند الغسق وبالرمادي.",
  "ruler.ladderNote": "وإلى جانبها ما يردّه قماش كل لون من الضوء: لونان على ارتفاع واحد يصعب تمييزهما.",
  "ruler.edge": "الحافة",
  "ruler.contrast": "التباين، من الأصل إلى التصميم الجديد",
  "ruler.outcome": "النتيجة",
  "ruler.guess": "تخمينك",
  "ruler.title": "مسطرة التباين",
  "ruler.same":
    "{count, plural, zero {لا حافة تبقى كما كانت} one {حافة واحدة تبقى كما كانت} two {حافتان تبقيان كما كانتا} few {# حواف تبقى كما كانت} many {# حافة تبقى كما كانت} other {# حافة تبقى كما كانت}}",
  "ruler.moreMoved":
    "{count, plural, zero {لا حافة أخرى تتغير} one {حافة أخرى تتغير} two {حافتان أخريان تتغيران} few {# حواف أخرى تتغير} many {# حافة أخرى تتغير} other {# حافة أخرى تتغير}}",
  "ruler.moreMovedAndSame": "{moved}، و{same}",
  "ruler.row": "{edge}، {extent}: التباين {contrast}، {grades}",

  // rules: what stands around the rules for studies and drawings, which are English in every language.
  "rules.title": "قواعد الدراسات والرسوم",
  "rules.description": "معنى كل رسالة عن دراسة أو رسم، مع مثال خاطئ ومثال صحيح.",
  "rules.lede":
    "عند فحص دراسة يُبلَّغ عن كل خطأ باسم قاعدة. القواعد كلها هنا، {count, plural, zero {لا قواعد} one {قاعدة واحدة} two {قاعدتان} few {# قواعد} many {# قاعدة} other {# قاعدة}}: معنى كل منها، وسبب وجودها، ومثال خاطئ إلى جانب مثال صحيح.",
  "rules.note":
    "كل قاعدة خطأ يُبعد الدراسة عن المعرض حتى يُصلح، ما لم توسم بأنها تحذير، فتبقى. والأمثلة في الإطار هي ما يُكتب، وقد جُرّبت: الخاطئ يستدعي قاعدته وحدها، والصحيح لا يستدعي شيئًا.",
  "rules.find": "ابحث عن قواعد فيها هذه الكلمات",
  "rules.count":
    "{count, plural, zero {لا قواعد} one {قاعدة واحدة} two {قاعدتان} few {# قواعد} many {# قاعدة} other {# قاعدة}}",
  "rules.found":
    "{found} من {count, plural, zero {لا قواعد} one {قاعدة واحدة} two {قاعدتين} few {# قواعد} many {# قاعدة} other {# قاعدة}}",
  "rules.warning": "تحذير",
  "rules.link": "رابط إلى هذه القاعدة",
  "rules.wrong": "خطأ",
  "rules.wrongIn": "خطأ، في {file}",
  "rules.wrongInFolder": "خطأ، في مجلد المحتوى",
  "rules.right": "صواب",
  "rules.rightIn": "صواب، في {file}",
  "rules.rightInFolder": "صواب، في مجلد المحتوى",
  "rules.leaveOut": "احذفه.",

  // said: what others said of a study.
  "said.heading": "ما يقوله آخرون",
  "said.about": "عن <about>{name}</about>",
  "said.more": "المزيد عند {host}",

  // seen: both flags as four kinds of sight have them.
  "seen.title": "بعيون أخرى",
  "seen.caption":
    "الأصل أولًا، ثم التصميم الجديد: تقريبات لما يراه في العلمين المصابون بقصور رؤية الألوان، ولما تُبقيه الطباعة الرمادية. وليست اختبارًا لبصر أحد. وتختلف الرماديات بفرق اللون ΔE00: كلما زاد سهل التمييز.",
  "seen.greys": "فرق أقرب رماديين",
  "seen.clarity": "وضوح العلم كله",
  "seen.figure": "{heading}: {measure} من {before} إلى {after}.",
  "seen.looks": "{name} كأنه {seen}",
  "seen.kept":
    "{names}: {count, plural, zero {بلا اسم باقٍ} one {باقٍ على اسمه} two {باقيان على اسميهما} few {باقية على أسمائها} many {باقية على أسمائها} other {باقية على أسمائها}}",
  "seen.inGrey": "{name} بالرمادي",
  "seen.byProtan": "{name} كما يراه المصاب بعمى الأحمر",
  "seen.byDeutan": "{name} كما يراه المصاب بعمى الأخضر",
  "seen.byTritan": "{name} كما يراه المصاب بعمى الأزرق",

  // seriespage: the page of a series, and where a study stands in one.
  "seriesPage.count": "سلسلة من {entries}",
  "seriesPage.description": "سلسلة من {entries}.",
  "seriesPage.show": "اعرضها خطوة خطوة",
  "seriesPage.sheet": "اطبعها للصف",
  "seriesPage.vote": "التصويت",
  "seriesPage.step": "الرقم {number}: {title}",
  "seriesPage.today": "كما هي اليوم",
  "seriesPage.gain": "الوضوح، دراسة بعد دراسة",
  "seriesPage.cite": "الاستشهاد بهذه الصفحة",
  "seriesPage.unofficial": "التصاميم الجديدة دراسات غير رسمية.",
  "seriesPage.bare": "بلا دراسة",
  "seriesPage.ask": "ماذا تغيّر هنا؟",
  "seriesPage.series": "السلاسل",
  "seriesPage.firstShown": "{entries}، المعروض منها أولها حتى {number}",
  "seriesPage.places": "في السلاسل",
  "seriesPage.place": "{number} من {count} في <a>{title}</a>",
  "seriesPage.before": "قبلها: <a>{title}</a>",
  "seriesPage.next": "التالية: <a>{title}</a>",

  // sheet: sheets for a class, printed on paper: a handout, a worksheet and the answers for the teacher.
  "sheet.title": "{title}، أوراق لصف دراسي",
  "sheet.description": "ورقة عرض وورقة عمل وأجوبة، للطباعة. دراسة غير رسمية لإعادة التصميم.",
  "sheet.kind": "أوراق لصف دراسي",
  "sheet.print": "للطباعة: أمر الطباعة في متصفحك، A4 أو Letter، طوليًا. كل جزء يملأ صفحة خاصة به.",
  "sheet.toStudy": "الدراسة",
  "sheet.toSeries": "السلسلة",
  "sheet.contents": "المحتويات",
  "sheet.handout": "ورقة العرض",
  "sheet.worksheet": "ورقة العمل",
  "sheet.answers": "الأجوبة",
  "sheet.redesign": "التصميم الجديد، دراسة غير رسمية",
  "sheet.questions": "ثلاثة أسئلة",
  "sheet.scale":
    "التباين هو مدى تباعد لونين متلاقيين في الإضاءة. والحافة ضعيفة دون {soft}، ولينة من {soft}، وواضحة من {clear}، وقوية من {strong}.",
  "sheet.left":
    "{count, plural, zero {لا حواف أخرى في صفحة الدراسة.} one {حافة أخرى في صفحة الدراسة.} two {حافتان أخريان في صفحة الدراسة.} few {# حواف أخرى في صفحة الدراسة.} many {# حافة أخرى في صفحة الدراسة.} other {# حافة أخرى في صفحة الدراسة.}}",
  "sheet.noRuler": "لون واحد: لا حواف تُقاس.",
  "sheet.hatched": "بالخطوط، للطباعة الرمادية",
  "sheet.hatchedHow":
    "لكل لون خطوطه، على طريقة Silvester Petra Sancta، روما 1638. وتدرجات اللون الواحد تشترك في خطوطه.",
  "sheet.originalInLines": "الأصل بالخطوط",
  "sheet.redesignInLines": "التصميم الجديد بالخطوط",
  "sheet.inOutlines": "{flag}، محيطات فقط",
  "sheet.name": "الاسم",
  "sheet.change": "غيّر لونًا واحدًا. لوّن العلم واضعًا اللون الجديد مكانه.",
  "sheet.own": "ألوان العلم",
  "sheet.palette": "ألوان للاختيار",
  "sheet.guess": "خمّن التباين حيثما التقى لونان: حلقة للأصل، ونقطة لعلمك.",
  "sheet.reason": "أغيّر <line></line> إلى <line></line>، لأن",
  "sheet.price": "ما يسوء، ولماذا أقبله:",
  "sheet.yours": "لا دراسة لهذا العلم هنا: فهي لك.",
  "sheet.teacher": "للمعلم",
  "sheet.others": "تغييرات أخرى",
  "sheet.onWorksheet": "ورقة العمل",
  "sheet.opinion": "في ورقة العمل لا اختيار صواب ولا اختيار خطأ. والعبرة بسبب يسمّي حافة.",
  "sheet.signs": "الألوان خطوطًا",
  "sheet.signsSource":
    "خطوط تقوم مقام الألوان. المصدر: Silvester Petra Sancta، «Tesserae gentilitiae»، روما 1638؛ كما يرويه A. C. Fox-Davies، «A Complete Guide to Heraldry»، 1909، الفصل السابع. البرتقالي والبني: عرف لاحق تختلف فيه الكتب؛ بلا مصدر. والرمادي والوردي لا خطوط لهما ويبقيان رماديين: اختيارنا نحن.",
  "sheet.red": "أحمر (gules)",
  "sheet.blue": "أزرق (azure)",
  "sheet.green": "أخضر (vert)",
  "sheet.black": "أسود (sable)",
  "sheet.purple": "أرجواني (purpure)",
  "sheet.yellow": "أصفر (or)",
  "sheet.white": "أبيض (argent)",
  "sheet.orange": "برتقالي (tenné)، لاحق",
  "sheet.brown": "بني، لاحق",

  // shelf: lists of the studies of one author, with one tag, that are decided, or of all of them.
  "shelf.studies":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}",
  "shelf.authorCount":
    "{count, plural, zero {لا مؤلفين} one {مؤلف واحد} two {مؤلفان} few {# مؤلفين} many {# مؤلفًا} other {# مؤلف}}",
  "shelf.tagCount":
    "{count, plural, zero {لا وسوم} one {وسم واحد} two {وسمان} few {# وسوم} many {# وسمًا} other {# وسم}}",
  "shelf.decisionCount":
    "{count, plural, zero {لا قرارات} one {قرار واحد} two {قراران} few {# قرارات} many {# قرارًا} other {# قرار}}",
  "shelf.authors": "المؤلفون",
  "shelf.authorsLede": "كل من قدّم دراسة هنا، مع ما يقترحه.",
  "shelf.noAuthors": "لا دراسة تسمّي مؤلفًا بعد. هنا سيكون أول اسم.",
  "shelf.tags": "الوسوم",
  "shelf.tagsLede": "موضوعات الدراسات، بكلمات مؤلفيها، وأكثرها استعمالًا أولًا.",
  "shelf.noTags": "لا وسم لدراسة بعد. يضيفها المؤلفون في ملفات دراساتهم.",
  "shelf.author": "المؤلف",
  "shelf.tag": "الوسم",
  "shelf.list": "قائمة",
  "shelf.record": "سجل",
  "shelf.decisions": "القرارات",
  "shelf.ways": "{studies}. <index>{name}</index>، <all>كل الدراسات</all>",
  "shelf.waysOrdered": "{studies}، الأحدث أولًا. <index>{name}</index>، <all>كل الدراسات</all>",
  "shelf.allAuthors": "كل المؤلفين",
  "shelf.allTags": "كل الوسوم",
  "shelf.byAuthor": "بحسب المؤلف",
  "shelf.aboutAuthor":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}، المؤلف: {name}. لون واحد يتغير، وكل حافة تُقاس.",
  "shelf.aboutTag":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}، الوسم: {name}. لون واحد يتغير، وكل حافة تُقاس.",
  "shelf.aboutDecisions":
    "{count, plural, zero {لا دراسات صدر فيها قرار} one {دراسة واحدة صدر فيها قرار} two {دراستان صدر فيهما قرار} few {# دراسات صدر فيها قرار} many {# دراسة صدر فيها قرار} other {# دراسة صدر فيها قرار}}: لون واحد يتغير، وكل حافة تُقاس.",
  "shelf.aboutAll":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}} في الجملة: لون واحد يتغير، وكل حافة تُقاس.",
  "shelf.with": "مع {authors}",

  // show: the steps of a study or a series for a projector, and what a speaker may say to each.
  "show.title": "{title}، خطوة بخطوة",
  "show.description": "دراسة غير رسمية لإعادة التصميم.",
  "show.seriesDescription": "دراسات غير رسمية لإعادة التصميم، خطوة بخطوة.",
  "show.toStudy": "الدراسة",
  "show.toSeries": "السلسلة",
  "show.steps": "الخطوات",
  "show.notes": "ملاحظات",
  "show.back": "السابق",
  "show.next": "التالي",
  "show.noNote": "لا ملاحظة لهذه الخطوة.",
  "show.original": "الأصل",
  "show.redesign": "التصميم الجديد، دراسة غير رسمية",
  "show.both": "الأصل، والتصميم الجديد دراسةً غير رسمية",
  "show.ofOriginal": "الأصل",
  "show.ofRedesign": "التصميم الجديد، دراسة غير رسمية",
  "show.redesigns": "التصاميم الجديدة دراسات غير رسمية",
  "show.from":
    "من {from, plural, zero {<number>#</number> ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {<number>#</number> أضعاف ارتفاع العلم} many {<number>#</number> ضعف ارتفاع العلم} other {<number>#</number> ضعف ارتفاع العلم}}، مكبَّرًا",
  "show.fromStill":
    "من {from, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}، مكبَّرًا",
  "show.thisIs": "العلم كما هو: {name}.",
  "show.keep": "احفظه في ذهنك كما هو.",
  "show.focus": "ما ينبغي أن يُرى",
  "show.focusKey": "الخطوط المتصلة واضحة، والمنقوطة عسيرة الرؤية. والشريط يبيّن ما ينبغي أن يُرى قبل غيره.",
  "show.focusSaid": "حصة ما ينبغي أن يُرى أولًا من العلم: {share}.",
  "show.weakest": "أضعف حوافه",
  "show.weakestKey": "{names}: التباين {contrast}",
  "show.weakestSaid":
    "أضعف حافة حيث يلتقي {first} و{second}. وهي {grade} ({contrast})؛ والحافة واضحة من {clear} فصاعدًا.",
  "show.weakestShown": "الموضع الذي يلتقي فيه {names}",
  "show.afar": "من بعيد",
  "show.afarSaid": "هكذا يبدو العلم من بعيد جدًا.",
  "show.colours": "أي لون يمكن أن يتغير؟",
  "show.coloursKey": "كل صف يغيّر لونًا واحدًا. تحت كل علم وضوحه، وهو الآن {clarity}؛ وتحت أفضل الصف خط.",
  "show.coloursKeyOwn":
    "كل صف يغيّر لونًا واحدًا. تحت كل علم وضوحه، وهو الآن {clarity}؛ وتحت أفضل الصف خط، وما تقترحه هذه الدراسة في إطار.",
  "show.tried": "مجرَّب، دراسة غير رسمية. {figures}. {note}",
  "show.triedSaid": "جرّبت هذا أيضًا: {change} {verdict} {figures}.",
  "show.before": "قبل",
  "show.beforeSaid": "هذا هو العلم مرة أخرى كما هو.",
  "show.afterSaid": "والآن: {change} هذه دراسة غير رسمية.",
  "show.outcomes": "ما تحسّن وما ساء",
  "show.outcomesKey": "الحلقة: الأصل. النقطة: التصميم الجديد.",
  "show.priceSaid": "{verdict}. وضوح الأصل {before} من 100 نقطة، ووضوح التصميم الجديد {after}. {price}",
  "show.vision": "عند المصابين بعمى الألوان، وبالرمادي",
  "show.visionSaid": "هذا على وجه التقريب ما يراه المصابون بقصور رؤية الألوان. {visions}",
  "show.visionOf": "{heading}، {explanation}: {measure} من {before} إلى {after}.",
  "show.choose": "الأصل أم التصميم الجديد؟",
  "show.chooseSaid": "الأصل أم التصميم الجديد؟ وماذا تقول لمن اختار غير ما اخترت؟",
  "show.closing": "ماذا تغيّر أنت؟",
  "show.another": "{name}: اقتراح آخر",
  "show.opening": "{authors}: {opening}",
  "show.colourChanged": "اللون المتغير",
  "show.notTried": "لم يُجرَّب",
  "show.thisStudy": "هذه الدراسة:",
  "show.merges": "يندمج",

  // sight: kinds of sight.
  "sight.protan": "عمى الأحمر",
  "sight.deutan": "عمى الأخضر",
  "sight.tritan": "عمى الأزرق",
  "sight.grey": "الرمادي",
  "sight.protanMeans": "بلا مخاريط الموجات الطويلة",
  "sight.deutanMeans": "بلا مخاريط الموجات المتوسطة",
  "sight.tritanMeans": "بلا مخاريط الموجات القصيرة",
  "sight.greyMeans": "كما تطبعه آلة نسخ بالأبيض والأسود",

  // sizes: both flags at sizes that stand for distances.
  "sizes.title": "على بعد ذراع",
  "sizes.caption":
    "إذا نُظر إليها من 60 سم فكل منها بحجم العلم من المسافة المكتوبة تحتها، على شاشة أو ورق بكثافة 96 بكسلًا في البوصة.",
  "sizes.says": "العلمان صغيرين كما يبدوان من بعيد، على بعد ذراع: {distances}.",
  "sizes.alt":
    "{label}، بحجمه من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}",

  // spoken: what a speaker says of a change, with numbers in words. All counts are counts of edges.
  "spoken.percent": "{near} ({percent})",
  "spoken.about": "{part} تقريبًا",
  "spoken.none": "لا شيء",
  "spoken.almostNone": "لا شيء تقريبًا",
  "spoken.twentieth": "جزء من عشرين",
  "spoken.fifteenth": "جزء من خمسة عشر",
  "spoken.tenth": "العُشر",
  "spoken.eighth": "الثُّمن",
  "spoken.sixth": "السُّدس",
  "spoken.fifth": "الخُمس",
  "spoken.quarter": "الربع",
  "spoken.third": "الثلث",
  "spoken.twoFifths": "خُمسان",
  "spoken.half": "النصف",
  "spoken.threeFifths": "ثلاثة أخماس",
  "spoken.twoThirds": "ثلثان",
  "spoken.threeQuarters": "ثلاثة أرباع",
  "spoken.fourFifths": "أربعة أخماس",
  "spoken.nineTenths": "تسعة أعشار",
  "spoken.almostAll": "الكل تقريبًا",
  "spoken.all": "الكل",
  "spoken.count":
    "{count, plural, =0 {لا واحدة} =1 {واحدة} =2 {اثنتان} =3 {ثلاث} =4 {أربع} =5 {خمس} =6 {ست} =7 {سبع} =8 {ثمانٍ} =9 {تسع} =10 {عشر} zero {#} one {#} two {#} few {#} many {#} other {#}}",
  "spoken.edges":
    "{count, plural, zero {عدد الحواف: {all}. {moves}.} one {الحواف: {all}. {moves}.} two {الحواف: {all}. {moves}.} few {الحواف: {all}. {moves}.} many {الحواف: {all}. {moves}.} other {الحواف: {all}. {moves}.}}",
  "spoken.better":
    "{count, plural, zero {{edges} أسهل رؤية} one {{edges} صارت أسهل رؤية} two {{edges} صارتا أسهل رؤية} few {{edges} صارت أسهل رؤية} many {{edges} صارت أسهل رؤية} other {{edges} صارت أسهل رؤية}}",
  "spoken.worse":
    "{count, plural, zero {{edges} أصعب رؤية} one {{edges} صارت أصعب رؤية} two {{edges} صارتا أصعب رؤية} few {{edges} صارت أصعب رؤية} many {{edges} صارت أصعب رؤية} other {{edges} صارت أصعب رؤية}}",
  "spoken.betterAndWorse": "{better} و{worse}",
  "spoken.noneMoves": "لا واحدة صارت أسهل أو أصعب رؤية",
  "spoken.price": "الثمن: {losses}.",
  "spoken.moreLosses":
    "{count, plural, zero {{edges} أخرى أصعب رؤية} one {و{edges} أخرى صارت أصعب رؤية} two {و{edges} أخريان صارتا أصعب رؤية} few {و{edges} أخرى صارت أصعب رؤية} many {و{edges} أخرى صارت أصعب رؤية} other {و{edges} أخرى صارت أصعب رؤية}}",
  "spoken.merged": "{one} و{other} يندمجان لونًا واحدًا",
  "spoken.parted": "{newOne} و{newOther} ينفصلان، والحافة بينهما {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ وما زالت الآن {grade} ({contrast})} only {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ وليست الآن إلا {grade} ({contrast})} other {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ وهي الآن {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ والآن، وقد صار {newOne} إلى جانب {newOther}، ما زالت {grade} ({contrast})} only {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ والآن، وقد صار {newOne} إلى جانب {newOther}، ليست إلا {grade} ({contrast})} other {حيث يلتقي {one} و{other} كانت الحافة {wasGrade} ({wasContrast})؛ والآن، وقد صار {newOne} إلى جانب {newOther}، هي {grade} ({contrast})}}",

  // status: what became of a study, in a word and what that word means.
  "status.draft": "مسوّدة",
  "status.draftMeans": "لم تكتمل",
  "status.open": "مفتوحة",
  "status.openMeans": "مقترحة، لم يُبتّ فيها بعد",
  "status.adopted": "معتمدة",
  "status.adoptedMeans": "قبلها أصحاب القرار هنا",
  "status.declined": "مرفوضة",
  "status.declinedMeans": "لم يقبلها أصحاب القرار هنا",
  "status.withdrawn": "مسحوبة",
  "status.withdrawnMeans": "سحبها مؤلفوها",

  // still: words in pictures that are taken away, what is offered of them, and the speaker’s script.
  "still.mark": "دراسة غير رسمية، للنقاش",
  "still.unofficial": "دراسة غير رسمية: اقتراح للنقاش، لا علم مستعمل.",
  "still.split": "الأصل، وتصميمه الجديد دراسةً غير رسمية",
  "still.original": "الأصل",
  "still.redesign": "التصميم الجديد",
  "still.figure": "{what}: {title}",
  "still.move": "من {before} إلى {after}",
  "still.seen": "{heading}: {measure} من {before} إلى {after}",
  "still.merges": "يندمج",
  "still.swap": "التبديل، WebP",
  "still.thumbnail": "صورة مصغّرة",
  "still.map": "خريطة الحواف، SVG",
  "still.ruler": "المسطرة، SVG",
  "still.matrix": "المصفوفة، SVG",
  "still.script": "ما يُقال، Markdown",
  "still.scriptStep": "{number}. {heading}",
  "still.scriptPicture": "الصورة: {file}",
  "still.scriptOn": "عليها: {text}",
  "still.scriptSay": "قل: {text}",
  "still.scriptNote": "ملاحظة: {text}",

  // strip: the distance strip.
  "strip.from":
    "من {distance, plural, zero {<number>#</number> ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {<number>#</number> أضعاف ارتفاع العلم} many {<number>#</number> ضعف ارتفاع العلم} other {<number>#</number> ضعف ارتفاع العلم}}",
  "strip.focus": "ما ينبغي أن يُرى:",
  "strip.clarity": "الوضوح",
  "strip.caption":
    "الأصل أولًا، ثم التصميم الجديد، كما تراهما عين حادة من هناك، مكبَّرين إلى حجم واحد: لا ريح ولا ضباب ولا وهج.",
  "strip.title": "شريط المسافات",
  "strip.label":
    "{label} من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}",
  "strip.blur": "مغبَّش بقدر {blur} في المئة من ارتفاعه.",
  "strip.blurAndFocus": "مغبَّش بقدر {blur} في المئة من ارتفاعه؛ {focus}.",
  "strip.focusClarity": "وضوح ما ينبغي أن يُرى {clarity}",
  "strip.focusLost": "ما ينبغي أن يُرى أصغر من أن يُتبيَّن",
  "strip.lost": "مكبَّر: بحجمه الحقيقي أصغر من أن يُتبيَّن",
  "strip.describe": "العلمان كما يبدوان من بعيد، أقل حدّة مرة بعد مرة: {distances}.",
  "strip.onlyThere": "لا يُذكر الوضوح إلا حيث يمكن بعدُ تبيّن ما ينبغي أن يُرى.",
  "strip.level": "ما دام يمكن تبيّنه، فوضوح ما ينبغي أن يُرى {before} في الأصل و{after} في التصميم الجديد.",
  "strip.rises": "ويرتفع من أبعد حيث لا تعود الأجزاء الدقيقة ذات الحواف الضعيفة تُرى، فلا تُحسب.",

  // study: the page of a study.
  "study.afar": "من بعيد",
  "study.theStrip": "شريط المسافات",
  "study.theSizes": "صف الأحجام",
  "study.contents": "في هذه الصفحة",
  "study.seen": "عند المصابين بعمى الألوان، وبالرمادي",
  "study.likeness": "هل يلتبس بغيره؟",
  "study.argue": "ناقش هذا",
  "study.shown": "{name} في <argument>الحجة</argument>.",
  "study.numbers": "المقارنة بالأرقام",
  "study.theSeen": "ما يرونه",
  "study.unofficial": "دراسة غير رسمية",
  "study.allChanges": "كل تغييرات لون واحد",
  "study.verdictHow": "كيف يُتوصل إلى الحكم",
  "study.show": "خطوة بخطوة، لجهاز العرض",
  "study.sheets": "أوراق لصف دراسي",
  "study.argueByMail": "ناقش هذا بالبريد",
  "study.argument": "الحجة",
  "study.decision": "القرار",
  "study.meaning": "المعنى",
  "study.unofficialLead": "دراسة غير رسمية لإعادة التصميم.",

  // summary: the table of a few numbers.
  "summary.measure": "المقياس",
  "summary.both": "قبلُ وبعدُ",

  // survey: the survey of all flags as they are.
  "survey.title": "المسح",
  "survey.lede":
    "كل علم في المعرض كما هو اليوم: مدى وضوح حوافه، وأضعفها، واللون الذي يُغيَّر أولًا. ولا تقول الأرقام شيئًا عن الجمال أو المعنى.",
  "survey.flags":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}",
  "survey.only":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}.",
  "survey.ordered":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}، الأقل وضوحًا أولًا.",
  "survey.description":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}، الأقل وضوحًا أولًا: أضعف حافة في كل منها، واللون الذي يُغيَّر أولًا، وأفضل تغيير مفرد.",
  "survey.told":
    "أعلام تباين أضعف حوافها دون {limit}: {weak, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}؛ وأعلام يزيدها تغيير لون واحد {points, plural, zero {# نقطة} one {نقطة واحدة} two {نقطتين} few {# نقاط} many {# نقطة} other {# نقطة}} من الوضوح فأكثر: {helped, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}.",
  "survey.how": "كيف يُصنع المسح",
  "survey.empty": "لا شيء للمسح بعد.",
  "survey.more":
    "{count, plural, zero {لا أعلام أخرى} one {علم آخر} two {علمان آخران} few {# أعلام أخرى} many {# علمًا آخر} other {# علم آخر}}",
  "survey.rest": "المدرج هو الـ{listed} الأقل وضوحًا؛ والـ{rest} الأخرى في الملفات.",
  "survey.failed": "لم تُقس",
  "survey.files": "الملفات",
  "survey.failedRest": "و{count} غيرها، كلها في ملف JSON.",
  "survey.csv": "المسح، CSV",
  "survey.json": "المسح، JSON",
  "survey.pictured":
    "{count, plural, zero {لا أعلام} one {علم واحد} two {علمان} few {# أعلام} many {# علمًا} other {# علم}}، الأقل وضوحًا أولًا",
  "survey.range": "من {least} إلى {most}",
  "survey.caution": "لا تقول الأرقام شيئًا عن الجمال أو المعنى.",
  "survey.alt": "ورقة أعلام. المسح: {flags}. الوضوح: {number}. {caution}",
  "survey.study": "الدراسة",
  "survey.withStudy": "له دراسة",
  "survey.withoutStudy": "بلا دراسة",
  "survey.none": "لا علم يوافق هذا كله. احذف كلمة أو اختيارًا، أو اعرض الكل.",
  "survey.found":
    "{found} من {count, plural, zero {لا أعلام} one {علم واحد} two {علمين} few {# أعلام} many {# علمًا} other {# علم}}",

  // surveytable: the table of the survey, what can be done with flags chosen in it, and its picture of the whole field.
  "surveyTable.every": "كل علم كما هو",
  "surveyTable.everyOrdered": "كل علم كما هو، الأقل وضوحًا أولًا",
  "surveyTable.captionHeads":
    "كبير بما يكفي: يبقى من تلك المسافة نصف ما ينبغي أن يُرى، وتمتد أكبر قطعة منه على 5 دقائق قوسية. لم يُعثر على شارة: العلم حقول فحسب.",
  "surveyTable.choose": "اختر أعلامًا لتراها وحدها، أو لتأخذ قائمة منها تبدأ بها دراسات أو سلسلة.",
  "surveyTable.flag": "العلم",
  "surveyTable.focus": "وضوح ما ينبغي أن يُرى",
  "surveyTable.lasts": "كبير بما يكفي حتى، بارتفاعات العلم",
  "surveyTable.lastsUnder": "دون {distance, number}",
  "surveyTable.lastsOrMore": "{distance, number} فأكثر",
  "surveyTable.weakest": "أضعف حافة",
  "surveyTable.first": "اللون الذي يُغيَّر أولًا",
  "surveyTable.best": "أفضل تغيير للون واحد",
  "surveyTable.chooseOne": "اختر {name}",
  "surveyTable.study": "الدراسة: <a>{title}</a>",
  "surveyTable.named": "سمّاه القراء.",
  "surveyTable.noEmblem": "لم يُعثر على شارة",
  "surveyTable.noLasts": "–",
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
  "surveyTable.sortBy": "الترتيب حسب",
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

  // verdict: what a change does, and the verdict with its price.
  "verdict.change": "يتحول {before} إلى {after}.",
  "verdict.changeInPart": "يتحول {before} إلى {after}، في {part} وحده.",
  "verdict.selectedPart": "الجزء المختار ({selector})",
  "verdict.clearer": "أوضح",
  "verdict.clearerAtPrice": "أوضح، بثمن",
  "verdict.mixed": "متفاوت",
  "verdict.lessClear": "أقل وضوحًا",
  "verdict.noGain": "بلا كسب",
  "verdict.semicolon": "{clause}؛ {more}",
  "verdict.colon": "{clause}: {more}",
  "verdict.and": "{clause}، و{more}",
  "verdict.but": "{clause}، لكن {more}",
  "verdict.stays": "الوضوح ثابت عند {now}",
  "verdict.rises": "الوضوح يرتفع من {before} إلى {now}",
  "verdict.falls": "الوضوح يهبط من {before} إلى {now}",
  "verdict.stronger": "الحواف تزداد قوة فوق حد الوضوح",
  "verdict.weaker": "الحواف تضعف فوق حد الوضوح",
  "verdict.thePrice": "{clause}. الثمن: {more}",
  "verdict.gains":
    "{count, plural, zero {لا حافة تكسب} one {حافة واحدة تكسب} two {حافتان تكسبان} few {# حواف تكسب} many {# حافة تكسب} other {# حافة تكسب}}",
  "verdict.onlyShort": "لا تصير أصعب رؤية إلا حواف دون {part} من طول الحواف كلها",
  "verdict.noneHarder": "لا حافة تصير أصعب رؤية",
  "verdict.tooLittle": "{moved}، وهو أقل من أن يحركه",
  "verdict.noStep":
    "لا حافة تزيد وضوحًا أو تنقص بمقدار {points, plural, zero {# نقطة} one {نقطة واحدة} two {نقطتين} few {# نقاط} many {# نقطة} other {# نقطة}}",
  "verdict.noneMoves": "لا حافة تصير أسهل أو أصعب رؤية",
  "verdict.noneToTheEye": "لا يتغير في العين شيء سوى حواف دون {part} من طول الحواف كلها",

  // vote: the vote on a series, flag by flag.
  "vote.title": "تصويت: {series}",
  "vote.description": "الأصل أم التصميم الجديد؟ تصويت على {series}، علمًا بعد علم، قبل أن يُرى أي رقم.",
  "vote.on": "تصويت على <a>{series}</a>",
  "vote.heading": "أيهما ترفع؟",
  "vote.how": "العلم كما هو، وما يُقترح مكانه. لا يُقال أيهما الأصل، ولا يُعرض رقم، حتى تختار.",
  "vote.unscripted":
    "يحتاج التصويت في هذه الصفحة إلى نص برمجي لا يشغّله هذا المتصفح. أما في قاعة فيجري من دونه: اطبع الصفحة، وارفع الأعلام واحدًا بعد واحد، وضع علامة في مربع لكل يد. وفي آخر كل سؤال يُذكر أيها الأصل.",
  "vote.questions": "الأسئلة",
  "vote.back": "السابق",
  "vote.next": "التالي",
  "vote.place": "{number} من {count}",
  "vote.flag": "العلم {number}",
  "vote.alt": "علم: {paints}",
  "vote.neither": "لا هذا ولا ذاك",
  "vote.original": "الأصل",
  "vote.redesign": "التصميم الجديد",
  "vote.redesignOf": "التصميم الجديد «{title}»",
  "vote.unofficial": "{name}، دراسة غير رسمية",
  "vote.cautionOne": "أحدهما العلم كما هو؛ والمقترح دراسة غير رسمية.",
  "vote.cautionMany": "أحدها العلم كما هو؛ والمقترحات دراسات غير رسمية.",
  "vote.why": "لماذا؟ (اختياري)",
  "vote.choose": "أختار هذا",
  "vote.missing": "اختر علمًا أولًا، أو لا هذا ولا ذاك.",
  "vote.told": "أيها الأصل، والأرقام",
  "vote.which": "{flag}: أيها الأصل",
  "vote.headFlag": "العلم",
  "vote.headChosen":
    "الاختيار، من {count, plural, zero {لا مصوّتين} one {مصوّت واحد} two {مصوّتَين} few {# مصوّتين} many {# مصوّتًا} other {# مصوّت}}",
  "vote.own": "اختيارك",
  "vote.range": "من {low} إلى {high}",
  "vote.study": "الدراسة",
  "vote.verdictOf": "{name}: {sentence}",
  "vote.said": "<quiet>{side}:</quiet> <said></said>",
  "vote.ballot": "ورقة اقتراعك",
  "vote.answer": "{flag}: {choice}",
  "vote.answerWhy": "{flag}: {choice}، «{why}»",
  "vote.unanswered": "{flag}: بلا جواب",
  "vote.kept": "تُحفظ في هذا المتصفح وحده، تحت رقم مسحوب بالقرعة، ولا يُخبَر بها أحد حتى تسلّمها.",
  "vote.copy": "انسخ هذا السطر",
  "vote.copied": "نُسخ.",
  "vote.refused": "لم يسمح المتصفح بذلك؛ ظلّل السطر وانسخه.",
  "vote.save": "احفظها جدولًا (CSV)",
  "vote.mail": "أرسلها بالبريد",
  "vote.form": "أرسلها بنموذج",
  "vote.anew": "ابدأ ورقة اقتراع أخرى",
  "vote.letter": "ورقة اقتراع على {series}",
  "vote.room": "لصف دراسي أو اجتماع",
  "vote.same":
    "<same>الترتيب نفسه للجميع</same> · <own>ترتيب خاص بك</own>. بالأول يرى كل من يفتحها A وB كما تراهما الآن؛ وبالثاني يراهما كل مصوّت بترتيب مسحوب بالقرعة.",
  "vote.paper": "هذه الصفحة إذا طُبعت ورقة فرز: الأعلام، ومربعات للأيدي، وفي آخر صفحة أيها الأصل.",
  "vote.ballots":
    "{count, plural, zero {لم تعد أي ورقة اقتراع.} one {عادت ورقة اقتراع واحدة.} two {عادت ورقتا اقتراع.} few {عادت # أوراق اقتراع.} many {عادت # ورقة اقتراع.} other {عادت # ورقة اقتراع.}} وإلى جانب كل حصة المدى الذي تقع فيه، بثقة 95%، حصة الجميع لو أن المصوّتين اختيروا بالقرعة (مدى ويلسون)؛ أما من جاؤوا من تلقاء أنفسهم فلم يُختاروا كذلك.",
  "vote.noBallots": "لم تعد أي ورقة اقتراع بعد.",
  "vote.key": "لمن يعدّ الأصوات: أيها الأصل",
  "vote.sides": "{flag}: <sides></sides>",
};
