// Floor 7. Arabic: link pictures, which sites and chats show when someone posts a link; and records for search.
import type { In } from "../en/all.ts";
import type { picture as english } from "../en/picture.ts";

export const picture: In<typeof english> = {
  "picture.redesign": "التصميم الجديد · دراسة غير رسمية",
  "picture.above": "أعلى: {half}",
  "picture.below": "أسفل: {half}",
  "picture.clarity": "{verdict}: الوضوح",
  "picture.oneColour": "لون واحد",
  "picture.contrast": "{outcome}: تباين هذه الحافة",
  "picture.move": "من {before} إلى {after}",
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
};
