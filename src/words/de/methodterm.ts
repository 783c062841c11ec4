// Floor 7. German: the definitions of the method. `em` is an emphasised term, `i` the title of a book; `move` stands for an
import type { In } from "../en/all.ts";
import type { methodTerm as english } from "../en/methodterm.ts";

export const methodTerm: In<typeof english> = {
  "method.numbersText":
    "Eine Kante zählt so weit, wie ihr Kontrast an {clear} heranreicht, und von da an ganz: 30 / 45 = 67 %. Klarheit ist das Mittel aller Kanten, jede gewichtet nach ihrer Länge und noch einmal nach dem Teil davon, der an das grenzt, was gesehen werden muss:",
  "method.numbersClose":
    "Eine Flagge, deren Kanten alle klar sind, hat also 100 %, und eine lange schwache Kante kostet mehr als eine kurze. Eine einfarbige Flagge hat keine Kante und keine Klarheit.",
  "method.numbersSource": "Unser eigenes Urteil: die Summe, und dass doppelt zählt, was gesehen werden muss.",
  "method.strength": "Stärke",
  "method.strengthMeans": "dieselbe Summe bis {strong}; sie ordnet, was die Klarheit gleich lässt",
  "method.weakest": "Schwächste Kante",
  "method.weakestMeans": "die Kante mit dem geringsten Kontrast, ohne die kürzesten",
  "method.clearShare": "Anteil klarer Kanten",
  "method.clearShareMeans":
    "der Anteil der Länge, der klar oder stark ist; er springt an einer einzigen Grenze, darum entscheidet er nichts",
  "method.outcomesText": "An einer Kante bewirkt eine Änderung dies:",
  "method.gained": "Gewonnen, verloren",
  "method.gainedMeans":
    "sie wird klar oder ist es nicht mehr, und bewegt sich um {contrastStep} Punkte oder mehr: <move></move>",
  "method.better": "Besser, schlechter",
  "method.betterMeans":
    "sie bewegt sich ebenso weit, ohne klar zu werden oder es nicht mehr zu sein: <move></move>; über {strong} zählt nichts",
  "method.same": "Gleich",
  "method.sameMeans": "sie bewegt sich um weniger: <move></move>",
  "method.merged": "Verschmolzen",
  "method.mergedMeans": "ihre beiden Farben kommen einander so nahe, dass sie als eine zählen",
  "method.parted": "Getrennt",
  "method.partedMeans": "sie ist neu, weil nur ein Teil einer Farbe geändert wurde",
  "method.outcomesPrice":
    "Der <em>Preis</em> einer Änderung sind die Kanten, die verloren, schlechter oder verschmolzen sind, oder getrennt und nicht klar. Das Urteil geht nach der Klarheit in ganzen Prozent und, wo diese gleich ist, nach der Stärke:",
  "method.clearer": "Klarer",
  "method.clearerMeans":
    "um {leastMove, plural, one {# Punkt} other {# Punkte}} oder mehr gestiegen, ohne Preis: <move></move>",
  "method.atAPrice": "Klarer, um einen Preis",
  "method.atAPriceMeans": "um {largeMove} Punkte oder mehr gestiegen, der Preis dabei genannt: <move></move>",
  "method.lessClear": "Weniger klar",
  "method.lessClearMeans":
    "um {largeMove} Punkte oder mehr gefallen: <move></move>; oder um {leastMove}, ohne dass etwas gewonnen, besser oder getrennt und klar ist",
  "method.mixed": "Gemischt",
  "method.mixedMeans": "Gewinne und ein Preis, die Klarheit dazwischen: <move></move>",
  "method.noGain": "Kein Gewinn",
  "method.noGainMeans": "jede Kante bleibt gleich, oder nichts vom Vorigen trifft zu",
  "method.outcomesSource":
    "Unser eigenes Urteil: die Grenzen von {contrastStep}, {leastMove} und {largeMove} Punkten. Eine verschmolzene Kante behält ihre Länge, denn die Formen bleiben, und zählt mit Kontrast 0 %. Gezeigte Zahlen sind gerundet, entscheidende nicht.",
  "method.wordsText":
    "Sätze werden nach Regeln gebildet, allein aus den Zahlen und Namen der Seite. Sie sprechen zuerst von dem, was gesehen werden muss, und von schwachen Kanten vor starken. Ein <em>Saum</em> ist eine schmale Linie in einer dritten Farbe, die zwei andere trennt; solange sie zu sehen ist, zählen ihre eigenen Kanten, und die Worte sagen, was sie für das Paar tut.",
  "method.wordsSource":
    "Was ein Saum ist: übliche Praxis, keine Quelle. Unser eigenes Urteil, woran wir ihn erkennen: eine mittlere Breite unter 8 % der Flaggenhöhe, zwei Seiten, deren Längen bis auf ein Drittel gleich sind, zwischen Farben, die höchstens auf einem Fünftel davon aneinanderstoßen.",
  "method.hue": "Nur Farbton",
  "method.hueMeans":
    "schwach bei einem ΔE00 von 20 oder mehr, in Grau unter 10: vergeht in der Dämmerung, im Graudruck und für viele farbenfehlsichtige Augen",
  "method.tincture": "Tinktur",
  "method.tinctureMeans":
    "kein Metall (Weiß, Gelb) auf Metall, keine Farbe (Rot, Blau, Grün, Schwarz, Violett) auf Farbe. Ausgenommen: Teile des Feldes, die beide an den Rand reichen, Säume; auch Pelzwerk, das hier nicht erkannt wird",
  "method.colours": "Farben",
  "method.coloursMeans":
    "die über 0,5 % der Fläche, ähnliche Töne als eine; Leitfäden raten zu zwei oder drei",
  "method.factsSource":
    "A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, Kapitel VII; Ausnahmen: übliche Praxis, keine Quelle. <good>Good Flag, Bad Flag</good>, North American Vexillological Association, 2006, dritter Grundsatz; <i>Guiding Principles of Flag Design</i>, Joint Commission on Vexillographic Principles, 2014, 3.1. Unser eigenes Urteil: nur Farbton, die 0,5 %.",
};
