// Floor 7. Spanish: the letter or the form by which a reader answers.
import type { In } from "../en/all.ts";
import type { answer as english } from "../en/answer.ts";

export const answer: In<typeof english> = {
  "answer.byMail": "por correo a {address}, con la dirección de esta página y sus cifras en la carta.",
  "answer.at": "en {host}.",
  "answer.atWithAddress": "en {host}, con la dirección de esta página.",
  "answer.atWithNumbers": "en {host}, con las cifras de esta página.",
  "answer.atWithBoth": "en {host}, con la dirección de esta página y sus cifras.",
  "answer.flagFor": "Una bandera para {gallery}",
  "answer.flag": "La bandera:",
  "answer.why": "Por qué:",
  "answer.reader": "Una lectora o un lector",
  "answer.question": "¿Por qué?",
};
