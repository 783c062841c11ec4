// Floor 7. German: questions to a class of what a change does, with answers for the teacher.
import type { In } from "../en/all.ts";
import type { question as english } from "../en/question.ts";

export const question: In<typeof english> = {
  "question.hardest":
    "Das Original vom anderen Ende des Raumes aus betrachtet: Welche zwei Farben, die aneinanderstoßen, sind am schwersten zu unterscheiden?",
  "question.hardestAnswer": "{names}: Kontrast {contrast}, {grade}.",
  "question.hardestIsClear": "{names}: Kontrast {contrast}, {grade}. Selbst das ist klar.",
  "question.lines": "Wie viele Linien zwischen zwei Farben hat der Neuentwurf?",
  "question.linesAnswer": "Keine, die zählt: Die Farben, die aneinanderstießen, sind eine geworden.",
  "question.grade":
    "Im Neuentwurf stoßen {one} und {other} mit einem Kontrast von {contrast} aneinander. Welche Stufe ist das: schwach, weich, klar oder stark?",
  "question.weak": "Schwach: unter {soft}.",
  "question.soft": "Weich: {soft} bis unter {clear}.",
  "question.clear": "Klar: {clear} bis unter {strong}.",
  "question.strong": "Stark: {strong} und mehr.",
  "question.price":
    "Die Änderung hat einen Preis, der oben steht. Ist sie ihn wert? Oder welche Farbe des Originals wäre zu ändern, und in welche, damit es noch klarer wird?",
  "question.priceAnswer": "Ob der Preis zu hoch ist, sagt keine Zahl: nach Gründen fragen.",
  "question.noGain": "{verdict} Kann es einen Grund geben, die Änderung trotzdem vorzunehmen?",
  "question.noGainAnswer":
    "Nicht in diesen Zahlen. Ein Grund muss von anderswo kommen: wofür die Farben stehen, wer sie noch führt, oder der Geschmack.",
  "question.gain":
    "Die Klarheit war {before} und ist nach der Änderung {after}. Wo wächst der Kontrast am meisten?",
  "question.gainOfOne":
    "Die Klarheit war {before} und ist nach der Änderung {after}. Welche zwei Farben machten den Unterschied, und um wie viel?",
  "question.gainAnswer": "{was}, von Kontrast {before} ({wasGrade}) auf {after} ({grade}).",
  "question.gainAnswerRenamed": "{was}, von Kontrast {before} ({wasGrade}) auf {after} ({grade}) als {is}.",
  "question.area": "Geschätzt: Welche Farbe bedeckt am meisten vom Original, und wie viel davon?",
  "question.areaAnswer": "{name}: {share} der Flagge.",
  "question.more":
    "Was wäre hinzuzufügen, damit man diese Flagge quer durch den Raum von anderen unterscheiden kann?",
  "question.moreAnswer":
    "Es gibt viele Antworten. Was immer hinzukommt, muss viel heller oder viel dunkler sein als {name}.",
  "question.field": "das Feld",
};
