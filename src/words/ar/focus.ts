// Floor 7. Arabic: what has to be seen, the emblem or charge of a flag, from where the flag is seen, and how far that lasts.
import type { In } from "../en/all.ts";
import type { focus as english } from "../en/focus.ts";

export const focus: In<typeof english> = {
  "focus.none": "لم يُعثر على شارة: لا شيء ينبغي أن يُرى قبل غيره، ولا حافة تُحسب مرتين. هذه حقيقة لا عيب.",
  "focus.notGuessed":
    "شارة تمتد في مساحة من لونها. لم نخمّنها، فلا شيء يُحسب مرتين. ولتسميتها اكتب في الدراسة:",
  "focus.fullDrawing": "مقيس على الرسم كله، لا من مسافة.",
  "focus.fromAway":
    "مقيس كما يُرى من {away} ضعف ارتفاع العلم: علم ارتفاعه متر واحد، من مسافة {away} م. والأجزاء الأدق من {finest} من ارتفاعه تُضم إلى ما يجاورها. وهذا نموذج لحدة البصر.",
  "focus.afar": "ما يبقى من بعيد",
  "focus.afarDescription": "{lasting} وضوح ما ينبغي أن يُرى: {steps}.",
  "focus.step": "من {distance}، {is}",
  "focus.stepMove": "من {distance}، من {was} إلى {is}",
  "focus.afarCaption":
    "يدوم حتى {lasts}، بحجمه وحده: ينبغي أن يبقى منه {left}، وأن تبلغ أكبر قطعة منه {arcminutes, plural, zero {# دقيقة قوسية} one {دقيقة قوسية واحدة} two {دقيقتين قوسيتين} few {# دقائق قوسية} many {# دقيقة قوسية} other {# دقيقة قوسية}}، وهو حجم حرف تقرؤه حدة بصر 20/20.",
  "focus.noEmblem": "لم يُعثر على شارة",
  "focus.lastsUnder":
    "{distance, plural, zero {دون ارتفاع العلم} one {دون ارتفاع العلم} two {دون ضعفي ارتفاع العلم} few {دون # أضعاف ارتفاع العلم} many {دون # ضعف ارتفاع العلم} other {دون # ضعف ارتفاع العلم}}",
  "focus.lasts":
    "{distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}",
  "focus.lastsOrMore":
    "{distance, plural, zero {# ضعف ارتفاع العلم فأكثر} one {ارتفاع العلم فأكثر} two {ضعفي ارتفاع العلم فأكثر} few {# أضعاف ارتفاع العلم فأكثر} many {# ضعف ارتفاع العلم فأكثر} other {# ضعف ارتفاع العلم فأكثر}}",
  "focus.nothingLeft": "لم يبق شيء",
  "focus.tooSmall":
    "ما ينبغي أن يُرى أصغر من أن يُتبيَّن من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}، أقرب مسافة جُرّبت، أيًّا كانت ألوانه.",
  "focus.largeEnough":
    "ما ينبغي أن يُرى كبير بما يكفي ليُتبيَّن حتى {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}، أيًّا كانت ألوانه.",
  "focus.largeEnoughAlways":
    "ما ينبغي أن يُرى كبير بما يكفي ليُتبيَّن من {distance, plural, zero {# ضعف ارتفاع العلم} one {ارتفاع العلم} two {ضعفي ارتفاع العلم} few {# أضعاف ارتفاع العلم} many {# ضعف ارتفاع العلم} other {# ضعف ارتفاع العلم}}، أبعد مسافة جُرّبت.",
};
