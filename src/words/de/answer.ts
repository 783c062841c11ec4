// Floor 7. German: the letter or the form by which a reader answers.
import type { In } from "../en/all.ts";
import type { answer as english } from "../en/answer.ts";

export const answer: In<typeof english> = {
  "answer.byMail":
    "per E-Mail an {address}; die Adresse dieser Seite und ihre Zahlen stehen schon in der Nachricht.",
  "answer.at": "bei {host}.",
  "answer.atWithAddress": "bei {host}, mit der Adresse dieser Seite.",
  "answer.atWithNumbers": "bei {host}, mit den Zahlen dieser Seite.",
  "answer.atWithBoth": "bei {host}, mit der Adresse dieser Seite und ihren Zahlen.",
  "answer.flagFor": "Eine Flagge für {gallery}",
  "answer.flag": "Die Flagge:",
  "answer.why": "Warum:",
  "answer.reader": "Eine Leserin oder ein Leser",
  "answer.question": "Warum?",
};
