// Floor 7. German: the vote on a series, flag by flag.
import type { In } from "../en/all.ts";
import type { vote as english } from "../en/vote.ts";

export const vote: In<typeof english> = {
  "vote.title": "Abstimmung: {series}",
  "vote.description":
    "Original oder Neuentwurf? Eine Abstimmung über {series}, Flagge für Flagge, bevor eine Zahl zu sehen ist.",
  "vote.on": "Eine Abstimmung über <a>{series}</a>",
  "vote.heading": "Welche würden Sie hissen?",
  "vote.how":
    "Die Flagge, wie sie ist, und was an ihrer Stelle vorgeschlagen wird. Welche welche ist, wird nicht gesagt und keine Zahl gezeigt, bis Sie gewählt haben.",
  "vote.unscripted":
    "Zum Abstimmen auf dieser Seite braucht es ein Skript, das dieser Browser nicht ausführt. In einem Raum geht es ohne: die Seite drucken, die Flaggen einzeln hochhalten und für jede Hand ein Kästchen ankreuzen. Am Ende jeder Frage steht, welche welche ist.",
  "vote.questions": "Fragen",
  "vote.back": "Zurück",
  "vote.next": "Weiter",
  "vote.place": "{number} von {count}",
  "vote.flag": "Flagge {number}",
  "vote.alt": "Eine Flagge: {paints}",
  "vote.neither": "Keine von beiden",
  "vote.original": "Das Original",
  "vote.redesign": "Der Neuentwurf",
  "vote.redesignOf": "Der Neuentwurf „{title}“",
  "vote.unofficial": "{name}, eine inoffizielle Studie",
  "vote.cautionOne":
    "Eine davon ist die Flagge, wie sie ist; was vorgeschlagen wird, ist eine inoffizielle Studie.",
  "vote.cautionMany":
    "Eine davon ist die Flagge, wie sie ist; was vorgeschlagen wird, sind inoffizielle Studien.",
  "vote.why": "Warum? (freiwillig)",
  "vote.choose": "Das ist meine Wahl",
  "vote.missing": "Zuerst eine Flagge wählen oder keine von beiden.",
  "vote.told": "Welche welche ist und die Zahlen",
  "vote.which": "{flag}: welche welche ist",
  "vote.headFlag": "Flagge",
  "vote.headChosen": "Gewählt, bei {count, plural, one {# Stimme} other {# Stimmen}}",
  "vote.own": "Ihre Wahl",
  "vote.range": "{low} bis {high}",
  "vote.study": "Zur Studie",
  "vote.verdictOf": "{name}: {sentence}",
  "vote.said": "<quiet>{side}:</quiet> <said></said>",
  "vote.ballot": "Ihr Stimmzettel",
  "vote.answer": "{flag}: {choice}",
  "vote.answerWhy": "{flag}: {choice}, „{why}“",
  "vote.unanswered": "{flag}: nicht beantwortet",
  "vote.kept":
    "Er bleibt allein in diesem Browser, unter einer ausgelosten Nummer, und niemand erfährt davon, bis Sie ihn abgeben.",
  "vote.copy": "Diese Zeile kopieren",
  "vote.copied": "Kopiert.",
  "vote.refused": "Der Browser hat es nicht erlaubt; die Zeile markieren und kopieren.",
  "vote.save": "Als Tabelle speichern (CSV)",
  "vote.mail": "Per E-Mail senden",
  "vote.form": "Mit einem Formular senden",
  "vote.anew": "Neuen Stimmzettel beginnen",
  "vote.letter": "Ein Stimmzettel zu {series}",
  "vote.room": "Für eine Klasse oder eine Versammlung",
  "vote.same":
    "<same>Dieselbe Reihenfolge für alle</same> · <own>Eine eigene Reihenfolge</own>. Mit der ersten sehen alle, die sie öffnen, A und B wie Sie jetzt; mit der zweiten sieht jeder sie in einer ausgelosten Reihenfolge.",
  "vote.paper":
    "Gedruckt ist diese Seite eine Strichliste: die Flaggen, Kästchen für die Hände, und auf der letzten Seite, welche welche ist.",
  "vote.ballots":
    "{count, plural, one {# Stimmzettel kam zurück.} other {# Stimmzettel kamen zurück.}} Neben jedem Anteil steht der Bereich, in dem mit 95 % Sicherheit der aller läge, wären die Abstimmenden ausgelost worden (Intervall nach Wilson); wer von selbst kam, war es nicht.",
  "vote.noBallots": "Noch kam kein Stimmzettel zurück.",
  "vote.key": "Für die Auszählung: welche welche ist",
  "vote.sides": "{flag}: <sides></sides>",
};
