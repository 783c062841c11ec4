// Floor 7. Arabic: the steps of the method that decide a grade. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodGrade as english } from "../en/methodgrade.ts";

export const methodGrade: In<typeof english> = {
  "method.reflectanceText": "رقم الشاشة يقول كم من الضوء يعطي اللون. نأخذ نصوعه، من 0 إلى 1، في الضوء الخطي:",
  "method.reflectanceCloth":
    "لا يكون القماش أسود تمامًا ولا أبيض تمامًا، وبأرقام الشاشة يبدو لونان داكنان أسهل تمييزًا مما هما. لذلك يوضع النصوع بين أشد الأقمشة سوادًا وأشدها بياضًا، بالمئة:",
  "method.reflectanceRanges":
    "تمتد مواد البناء من نحو {black} إلى {white}، وطلاءات أحد الصانعين من {paintBlack} إلى {paintWhite}. والدرجة التي يغيّرها المدى الأوسع تُوسم بأنها <em>عند العتبة</em>. وحيث يحدد قانونٌ القماش يضبط المعرض 0 و100، وعندئذ {laws}.",
  "method.law": "{first} على {second}: التباين {contrast}، {grade}",
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
    "Bowman وSapolinski: المعيار AS 1428.1:2009، الملحق B؛ AS/NZS 1428.4.1، الملحق E؛ نقلًا عن غير الأصل. ولا تُقارن النسبة المئوية بمقياس آخر: Boon وآخرون، <i>Work</i> 70(4)، <boon>2021</boon>. حكمنا نحن: أن الشارة جسم صغير مفرد؛ وتدرجات ألوان الأزواج. أي الأزواج تُقرأ بوضوح: عرف شائع، بلا مصدر.",
  "method.besideText":
    "تقف إلى جانب التباين ثلاثة مقاييس أخرى، لا يحسم أيٌّ منها. <em>نسبة التباين</em> في الويب مصنوعة للشاشات: {first} على {second} يجتاز نسبتها 3 إلى 1، ومع ذلك لا أحد ممن ينظر إلى الأعلام يعدّه سهل الرؤية. و<em>ΔE00</em> يقول كم يختلف لونان في العين، والكنه داخل فيه. والثالث <a>قاعدة الصبغات</a>.",
  "method.besidePair":
    "{first} / {second}: نسبة التباين <number>{ratio}</number>، ΔE00 <number>{deltaE00}</number>، التباين <number>{contrast}</number>، {grade}",
  "method.besideSource":
    "WCAG 2.2، <ratio>النسبة</ratio> و<objects>1.4.11</objects>. Sharma وWu وDalal، <sharma>CIEDE2000</sharma>، 2005؛ وأزواجه الـ34 تختبر هذا البرنامج. أن الأحمر على الأسود عسير الرؤية: عرف شائع، بلا مصدر.",
};
