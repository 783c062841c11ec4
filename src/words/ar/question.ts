// Floor 7. Arabic: questions to a class of what a change does, with answers for the teacher.
import type { In } from "../en/all.ts";
import type { question as english } from "../en/question.ts";

export const question: In<typeof english> = {
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
};
