// Floor 7. Spanish: questions to a class of what a change does, with answers for the teacher.
import type { In } from "../en/all.ts";
import type { question as english } from "../en/question.ts";

export const question: In<typeof english> = {
  "question.hardest":
    "Mire el original desde el otro extremo de la sala. ¿Qué dos colores que se tocan son los más difíciles de distinguir?",
  "question.hardestAnswer": "{names}: contraste {contrast}, {grade}.",
  "question.hardestIsClear": "{names}: contraste {contrast}, {grade}. Incluso ese es nítido.",
  "question.lines": "¿Cuántas líneas entre dos colores tiene el rediseño?",
  "question.linesAnswer": "Ninguna que cuente: los colores que se tocaban se han vuelto uno.",
  "question.grade":
    "En el rediseño, {one} junto a {other} tiene un contraste de {contrast}. ¿Qué grado es: débil, suave, nítido o fuerte?",
  "question.weak": "Débil: menos de {soft}.",
  "question.soft": "Suave: de {soft} a menos de {clear}.",
  "question.clear": "Nítido: de {clear} a menos de {strong}.",
  "question.strong": "Fuerte: {strong} y más.",
  "question.price":
    "El cambio tiene un precio, dicho arriba. ¿Lo pagaría usted? ¿O qué color del original cambiaría, y por cuál, para que fuera aún más nítido?",
  "question.priceAnswer": "Si el precio es demasiado alto no lo dice ninguna cifra: pida razones.",
  "question.noGain": "{verdict} ¿Puede haber una razón para hacer el cambio de todos modos?",
  "question.noGainAnswer":
    "No en estas cifras. La razón ha de venir de otra parte: qué significan los colores, quién más los lleva, o el gusto.",
  "question.gain":
    "La nitidez era de {before} y es de {after} tras el cambio. ¿Dónde crece más el contraste?",
  "question.gainOfOne":
    "La nitidez era de {before} y es de {after} tras el cambio. ¿Qué dos colores marcaron la diferencia, y en cuánto?",
  "question.gainAnswer": "{was}, de un contraste de {before} ({wasGrade}) a {after} ({grade}).",
  "question.gainAnswerRenamed":
    "{was}, de un contraste de {before} ({wasGrade}) a {after} ({grade}) como {is}.",
  "question.area": "Adivine: ¿qué color cubre más del original, y cuánto?",
  "question.areaAnswer": "{name}: {share} de la bandera.",
  "question.more": "¿Qué añadiría para que esta bandera se distinga de otras al otro lado de la sala?",
  "question.moreAnswer":
    "Hay muchas respuestas. Lo que se añada ha de ser mucho más claro o mucho más oscuro que {name}.",
  "question.field": "el campo",
};
