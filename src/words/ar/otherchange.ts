// Floor 7. Arabic: other single changes of a flag, which colour to change first, and what was not tried.
import type { In } from "../en/all.ts";
import type { otherChange as english } from "../en/otherchange.ts";

export const otherChange: In<typeof english> = {
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
    "{place, selectordinal, =1 {الأوضح بين التغييرات المفردة الـ{total}} other {المرتبة # في الوضوح بين التغييرات المفردة الـ{total}}}{level, plural, zero {.} one {، بالتساوي مع تغيير آخر.} two {، بالتساوي مع تغييرين آخرين.} few {، بالتساوي مع # تغييرات أخرى.} many {، بالتساوي مع # تغييرًا آخر.} other {، بالتساوي مع # تغيير آخر.}}",
  "otherChange.noneTried": "لم يمكن تجربة أي لون.",
  "otherChange.allMerge": "كل تغيير جُرّب يدمج ثلث محيط شارة أو أكثر.",
  "otherChange.clear": "العلم واضح كما هو، بوضوح قدره {clarity}.",
  "otherChange.clearAndNone": "العلم واضح كما هو، بوضوح قدره {clarity}: لا تغيير مفرد يأتي بخمس نقاط أخرى.",
  "otherChange.none": "وضوح العلم {clarity}، ولا تغيير مفرد يأتي بخمس نقاط أخرى.",
  "otherChange.detail": "العلم في جملته واضح، بوضوح قدره {clarity}؛ ولا يكسب إلا تفصيل منه.",
  "otherChange.first":
    "يُغيَّر أولًا {colour} ({share} من العلم): إذا حل محله {best} ارتفع الوضوح من {from} إلى {to}.",
  "otherChange.firstAlike":
    "{count, plural, zero {يُغيَّر أولًا {colours} أو {last}: إذا حل {best} محل أي منها ارتفع الوضوح من {from} إلى {to}.} one {يُغيَّر أولًا {colours} أو {last}: إذا حل {best} محل أي منها ارتفع الوضوح من {from} إلى {to}.} two {يُغيَّر أولًا {colours} أو {last}: إذا حل {best} محل أي منهما ارتفع الوضوح من {from} إلى {to}.} few {يُغيَّر أولًا {colours} أو {last}: إذا حل {best} محل أي منها ارتفع الوضوح من {from} إلى {to}.} many {يُغيَّر أولًا {colours} أو {last}: إذا حل {best} محل أي منها ارتفع الوضوح من {from} إلى {to}.} other {يُغيَّر أولًا {colours} أو {last}: إذا حل {best} محل أي منها ارتفع الوضوح من {from} إلى {to}.}}",
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
};
