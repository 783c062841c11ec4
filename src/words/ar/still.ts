// Floor 7. Arabic: words in pictures that are taken away, what is offered of them, and the speaker’s script.
import type { In } from "../en/all.ts";
import type { still as english } from "../en/still.ts";

export const still: In<typeof english> = {
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
};
