// Floor 7. German: the steps of the method beyond one comparison. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodBeyond as english } from "../en/methodbeyond.ts";

export const methodBeyond: In<typeof english> = {
  "method.optionsText":
    "Jede Farbe mit mehr als 0,4 % der Flagge wird einzeln ersetzt: durch jede Farbe der Palette der Galerie, durch jede andere Farbe der Flagge und durch ihren <em>bewahrten Farbton</em>, denselben Farbton um so viel heller oder dunkler, dass er zu den Nachbarn, von denen er nicht klar getrennt ist, {keptHue} Kontrast gewinnt. Dafür darf keine Stufe sinken, und die Farbe bleibt in ihrer Familie: Rosa ist kein Rot. Innerhalb von ΔE*ab {departure} gilt nichts als Änderung, denn amtliche Flaggen eines Landes weichen ebenso weit voneinander ab.",
  "method.optionsOrder":
    "Die klarste steht zuerst, dann die stärkste, dieselbe Familie, der kleinere Abstand. Was ein Drittel vom Umriss einer Figur verschmelzen lässt, bleibt ohne Rang. <em>Zuerst zu ändern</em> sind höchstens die {mostFirst} Farben, deren bester Ersatz bis auf {firstWithin} Punkte an den besten von allen heranreicht, sofern dieser {leastGain} Punkte bringt; ohne einen solchen Gewinn ist eine Flagge ab {wholeClear} klar, wie sie ist. Was am besten aussieht, sagen die Autoren.",
  "method.optionsSource":
    "ΔE*ab {departure}: Melgosa und Gómez-Robledo, <i>Óptica Pura y Aplicada</i> 55(2), 2022, die es vorschlagen; Zusammenfassung gelesen. Helligkeit des bewahrten Farbtons: <ottosson>Ottosson, 2020</ottosson>. Unser eigenes Urteil: alle anderen Zahlen und die Reihenfolge.",
  "method.surveyText":
    "Die <a>Übersicht</a> misst jede Flagge, wie sie heute ist, jede einmal, so viele Studien sie auch hat. Die am wenigsten klare steht zuerst, eine einfarbige zuletzt. Ein hinterer Platz heißt nicht, dass eine Flagge sich ändern soll, ein vorderer nicht, dass sie gut ist.",
  "method.surveySource": "Unser eigenes Urteil: die Reihenfolge.",
  "method.likenessText":
    "Eine klarere Flagge kann die eines Nachbarn sein. Darum wird jeder Neuentwurf auf jede andere hier bekannte Flagge und jeden anderen Neuentwurf gelegt, nur nicht auf das eigene Original und dessen andere Vorschläge. Beide werden in {columns} mal {rows} Zellen mittlerer Farbe als Tuch geteilt; die Zahl ist das mittlere ΔE00 der Zellen: 0 ist dasselbe Bild, und eine Zelle, die einer fehlt, zählt 100. Die andere wird auch gespiegelt und auf dem Kopf verglichen. Unter {threshold} sagt die Studie es.",
  "method.likenessCare":
    "Große Felder zählen viel und kleine Figuren wenig; eine kleine Zahl ist also ein Grund hinzusehen und kein Beweis, wie es dazu kam. Zeichnungen, die nur dafür aufbewahrt werden, sind genannt und nicht gezeigt: Über ihre Lizenz verfügen wir nicht.",
  "method.likenessSource":
    "Unser eigenes Urteil: das Raster, das Mittel und {threshold}. Von den 36 585 Paaren einer offenen Sammlung liegen 144 näher beieinander, 50 davon sind eine Flagge unter zwei Namen; die Hälfte liegt über 36 auseinander.",
  "method.visionText":
    "Vielen Menschen fehlt eine der drei Zapfenarten im Auge. Wir färben beide Zeichnungen um, wie solche Augen sie sehen, und in Grau, und messen noch einmal. Grau behält jeden Kontrast, darum sagen wir dort, wie weit die beiden nächsten Grautöne auseinanderliegen.",
  "method.visionSource":
    "Protan, deutan: Machado, Oliveira, Fernandes, <machado>2009</machado>, Schweregrad 1, in linearem Licht, was der Aufsatz nicht ausdrücklich sagt. Tritan, das dieses Modell nicht erreicht: Brettel, Viénot, Mollon, 1997. Matrizen nach veröffentlichten Umsetzungen.",
  "method.cautionProposal":
    "Jeder Neuentwurf ist ein Vorschlag und keine Flagge in Gebrauch, es sei denn, seine Entscheidung sagt es.",
  "method.cautionLaw":
    "Gesetze über Flaggen sind verschieden. Das örtliche Recht geht vor, bevor etwas hier Gezeigtes hergestellt, geändert oder geführt wird, und die Lizenz jeder Zeichnung ist zu achten.",
  "method.cautionEyes": "Bilder für andere Augen sind Näherungen und keine Prüfung des Sehens.",
  "method.cautionWorth": "Kontrast sagt nicht, ob eine Flagge gut ist, was sie bedeutet oder wem sie gehört.",
  "method.cautionDistance":
    "Entfernung ist ein Modell: Dunst, Blendung und Wind machen jede Entfernung kürzer.",
  "method.cautionCloth":
    "Die Zahlen gelten für die Zeichnung bei Tageslicht. Farbstoffe sind verschieden, und Tuch bleicht aus, wird nass und wirft Falten.",
};
