// Floor 7. French: the letter or the form by which a reader answers.
import type { In } from "../en/all.ts";
import type { answer as english } from "../en/answer.ts";

export const answer: In<typeof english> = {
  "answer.byMail": "par courriel à {address}, avec l’adresse de cette page et ses chiffres dans la lettre.",
  "answer.at": "sur {host}.",
  "answer.atWithAddress": "sur {host}, avec l’adresse de cette page.",
  "answer.atWithNumbers": "sur {host}, avec les chiffres de cette page.",
  "answer.atWithBoth": "sur {host}, avec l’adresse de cette page et ses chiffres.",
  "answer.flagFor": "Un drapeau pour {gallery}",
  "answer.flag": "Le drapeau :",
  "answer.why": "Pourquoi :",
  "answer.reader": "Une lectrice ou un lecteur",
  "answer.question": "Pourquoi ?",
};
