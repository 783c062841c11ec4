// Floor 7. French: questions to a class of what a change does, with answers for the teacher.
import type { In } from "../en/all.ts";
import type { question as english } from "../en/question.ts";

export const question: In<typeof english> = {
  "question.hardest":
    "Regardez l’original de l’autre bout de la salle. Parmi les couleurs qui se touchent, quelles sont les deux plus difficiles à distinguer ?",
  "question.hardestAnswer": "{names} : contraste de {contrast}, limite {grade}.",
  "question.hardestIsClear": "{names} : contraste de {contrast}, limite {grade}. Même celle-là est nette.",
  "question.lines": "Combien de lignes entre deux couleurs le nouveau dessin a-t-il ?",
  "question.linesAnswer": "Aucune qui compte : les couleurs qui se touchaient n’en font plus qu’une.",
  "question.grade":
    "Dans le nouveau dessin, le contraste entre {one} et {other} est de {contrast}. La limite est-elle faible, douce, nette ou forte ?",
  "question.weak": "Faible : moins de {soft}.",
  "question.soft": "Douce : de {soft} à moins de {clear}.",
  "question.clear": "Nette : de {clear} à moins de {strong}.",
  "question.strong": "Forte : {strong} et plus.",
  "question.price":
    "Le changement a un prix, dit plus haut. Le paieriez-vous ? Ou quelle couleur de l’original changeriez-vous, et en laquelle, pour plus de netteté encore ?",
  "question.priceAnswer": "Si le prix est trop élevé, aucun chiffre ne le dit : demandez des raisons.",
  "question.noGain": "{verdict} Peut-il y avoir une raison de faire pourtant ce changement ?",
  "question.noGainAnswer":
    "Pas dans ces chiffres. Une raison doit venir d’ailleurs : ce que signifient les couleurs, qui d’autre les porte, ou le goût.",
  "question.gain":
    "La netteté était de {before} ; après le changement, elle est de {after}. Où le contraste croît-il le plus ?",
  "question.gainOfOne":
    "La netteté était de {before} ; après le changement, elle est de {after}. Quelles sont les deux couleurs qui ont fait la différence, et de combien ?",
  "question.gainAnswer": "{was}, d’un contraste de {before} ({wasGrade}) à {after} ({grade}).",
  "question.gainAnswerRenamed":
    "{was}, désormais {is}, d’un contraste de {before} ({wasGrade}) à {after} ({grade}).",
  "question.area": "Devinez : quelle couleur couvre la plus grande part de l’original, et combien ?",
  "question.areaAnswer": "{name} : {share} du drapeau.",
  "question.more":
    "Qu’ajouteriez-vous pour qu’on distingue ce drapeau des autres d’un bout à l’autre de la salle ?",
  "question.moreAnswer":
    "Il y a bien des réponses. Entre {name} et ce qu’on ajoute, il faut un grand écart de clarté.",
  "question.field": "le champ",
};
