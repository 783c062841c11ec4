// Floor 7. Arabic: the letter or the form by which a reader answers.
import type { In } from "../en/all.ts";
import type { answer as english } from "../en/answer.ts";

export const answer: In<typeof english> = {
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
};
