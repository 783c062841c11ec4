// Floor 7. Arabic: how to cite a study, and the stamp of its state.
import type { In } from "../en/all.ts";
import type { refer as english } from "../en/refer.ts";

export const refer: In<typeof english> = {
  "refer.heading": "الاستشهاد بهذه الصفحة",
  "refer.copyText": "انسخ النص",
  "refer.copyBibtex": "انسخ BibTeX",
  "refer.copied": "نُسخ.",
  "refer.notCopied": "لم يسمح المتصفح بذلك.",
  "refer.bibtexAndStamp": "BibTeX، وما فائدة الختم",
  "refer.stamp":
    "الختم <stamp></stamp>: علامة قصيرة للرسم والتغيير والقياس. وعبر <link>عنوان فيه الختم</link> يُخبَر القارئ اللاحق بما تغيّر مما يُقاس. أما كلمات الدراسة فقد تتغير من دونه.",
  "refer.changed":
    "<strong>تغيّرت هذه الدراسة منذ ذلك الحين.</strong> الرابط الذي جئت منه وُضع لحالة أسبق، ختمها <came></came>. أما المعروض هنا الآن فختمه <now></now>.",
  "refer.study": "دراسة غير رسمية لإعادة تصميم علم",
  "refer.edge": "حافة من دراسة غير رسمية لإعادة تصميم علم",
  "refer.series": "سلسلة دراسات غير رسمية لإعادة تصميم الأعلام",
  "refer.title": "«{title}»",
};
