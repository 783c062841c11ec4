// Floor 7. German: the steps of the method from a drawing to its lines. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodSight as english } from "../en/methodsight.ts";

export const methodSight: In<typeof english> = {
  "method.edgesText":
    "Wir zeichnen die Flagge {pixels} Pixel hoch, niedriger, wo sie sehr breit ist, und nummerieren ihre Farben. Wo zwei aneinanderstoßen, zeichnen wir die Linie nach. Alle Linien zwischen denselben zwei Farben sind eine <em>Kante</em>; ihre Länge steht in Höhen der Flagge: quer durch eine von 2:3 sind es 1,5.",
  "method.edgesLimits":
    "Der Rand der Flagge ist keine Kante. Eine Form, die zu weniger als der Hälfte ihrer Stärke zu sehen ist (Deckkraft 0,4), bleibt weg; jede andere zählt als deckend. Eine Kante unter {edge} der Länge aller Kanten wird aufgeführt, ist aber nie die schwächste und ändert kein Urteil.",
  "method.edgesSource":
    "Geprüft an Flaggen, deren Geometrie ein Gesetz festlegt: Anteile stimmen auf 0,2 Punkte genau, Längen auf 1 %, bei feinen Spitzen auf 3 %. Unser eigenes Urteil: die Größe des Bildes, die halbe Stärke, {edge} der Länge aller Kanten.",
  "method.distanceText":
    "Eine Flagge soll von Weitem gesehen werden. Diese Galerie misst aus {distance} Flaggenhöhen; von dort ist das Feinste, was ein Auge erkennt, eine Bogenminute, also {finest} einer Flaggenhöhe. Dünnere Teile werden ihren Nachbarn zugeschlagen, bevor Kanten nachgezeichnet werden; ein dünner Umriss vergeht also, ein breiter bleibt. Ein Teil, der bis auf 10 % an die Grenze herankommt, löst eine Warnung aus.",
  "method.distanceNone":
    "Diese Galerie misst die ganze Zeichnung. Aus einer Entfernung, die sie wählen kann, gehen Teile, die zu dünn sind, um erkannt zu werden, an ihre Nachbarn.",
  "method.distanceFocus":
    "<em>Was gesehen werden muss</em>, sind die Figuren: Teile, die keinen Rand berühren, mit allem, was sie umschließen, und die 0,2 % der Flagge oder mehr füllen. Über 35 % sind sie ein gerahmtes Feld, und wir sehen darin nach; das Loch eines Rings gehört nicht dazu. Ein Stück mit einem Zehntel dieser Fläche ist eine eigene <em>Figur</em>. Autoren können sie stattdessen benennen, und müssen es, wo eine Figur in ein Feld ihrer eigenen Farbe übergeht, denn wir raten nicht. Eine Flagge ohne Figur ist darum nicht schlechter.",
  "method.distanceSame":
    "Eine Farbe, die von einer größeren um höchstens {same} abweicht (<a>ΔE00</a>), zählt mit ihr. Anteile der Farben gelten der ganzen Zeichnung.",
  "method.distanceSource":
    "Eine Bogenminute: volle Sehschärfe, ISO 8596, aus zweiter Hand. Es ist ein Modell: Eine einzelne starke Linie kann noch auffallen. Unser eigenes Urteil: die Entfernung und alle Prozentzahlen, ΔE00 {same}, das Zehntel.",
  "method.lastingText":
    "Aus jeder Entfernung fragen wir zweierlei. Ist klar, was gesehen werden muss? Seine eigenen Kanten haben dort eine <a>Klarheit</a>. Ist es groß genug? Mindestens {left} seiner Fläche müssen übrig sein, und sein größtes Stück muss {span} Bogenminuten messen, wie ein Buchstabe, den man mit voller Sehschärfe liest.",
  "method.lastingLast":
    "<em>Erkennbar bis</em> nennt die letzte Entfernung, aus der es groß genug ist. Das ist eine Frage der Größe, an der keine Farbänderung etwas ändert. Die Bilder sind so unscharf, wie ein Auge sie sieht; keine Zahl wird ihnen entnommen.",
  "method.lastingTable": "Was eine Entfernung aus einer Flagge macht, in Prozent ihrer Höhe",
  "method.lastingFrom": "Flaggenhöhen",
  "method.lastingFinest": "Feinster Teil",
  "method.lastingBlur": "Unschärfe",
  "method.lastingSource":
    "{span} Bogenminuten: ISO 8596, aus zweiter Hand. Unser eigenes Urteil: die {left}, und sie vom größten Stück zu verlangen. Unschärfe, 0,5 Bogenminuten Standardabweichung: Levi und andere, <i>Vision Research</i> 30, 1990, <levi>Zusammenfassung</levi>; eine Gaußkurve ist keine Linse: Strasburger und andere, <strasburger>2018</strasburger>.",
};
