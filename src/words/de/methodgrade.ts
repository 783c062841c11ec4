// Floor 7. German: the steps of the method that decide a grade. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodGrade as english } from "../en/methodgrade.ts";

export const methodGrade: In<typeof english> = {
  "method.reflectanceText":
    "Ein Farbwert des Bildschirms sagt, wie viel Licht eine Farbe abgibt. Wir nehmen ihre Leuchtdichte, von 0 bis 1, in linearem Licht:",
  "method.reflectanceCloth":
    "Tuch ist nie ganz schwarz oder ganz weiß, und nach den Farbwerten des Bildschirms scheinen zwei dunkle Farben leichter zu unterscheiden, als sie es sind. Darum wird die Leuchtdichte zwischen das schwärzeste und das weißeste Tuch gelegt, in Prozent:",
  "method.reflectanceRanges":
    "Baustoffe reichen von etwa {black} bis {white}, die Anstriche eines Herstellers von {paintBlack} bis {paintWhite}. Eine Stufe, die der weitere Bereich ändern würde, ist <em>an der Schwelle</em> vermerkt. Wo ein Gesetz das Tuch festlegt, setzt eine Galerie 0 und 100, und dann gilt: {laws}.",
  "method.law": "{first} auf {second} hat einen Kontrast von {contrast}, {grade}",
  "method.lawColour": "{colour} {reflectance}",
  "method.near":
    "An der Schwelle: Tuch von {black} bis {white} (Ring) und von {paintBlack} bis {paintWhite} (Punkt)",
  "method.reflectanceSource":
    "Leuchtdichte: <wcag>WCAG 2.2</wcag>. sRGB: IEC 61966-2-1. Bereiche: Seiten über Baustoffe, die Karte eines Farbenherstellers; Gesetze: wie andere sie wiedergeben; alles aus zweiter Hand. Die Gerade von Schwarz nach Weiß: keine Quelle. Unser eigenes Urteil: an der Schwelle.",
  "method.contrastText":
    "Kontrast vergleicht das Licht, das zwei Farben zurückwerfen. Er ist 0 %, wo beide gleich viel zurückwerfen, und umso größer, je weiter sie auseinanderliegen:",
  "method.contrastTable": "Was Menschen mit geringem Sehvermögen mindestens brauchen",
  "method.contrastWeak": "unter 30 %",
  "method.contrastSoft": "30 bis unter 45 %",
  "method.contrastClear": "45 bis unter 60 %",
  "method.contrastStrong": "60 % und mehr",
  "method.needsWeak": "unter jedem Grenzwert",
  "method.needsSoft": "große Bauteile",
  "method.needsClear": "kleine einzelne Gegenstände: Figuren",
  "method.needsStrong": "kleine Gegenstände in zwei Farben",
  "method.contrastClose":
    "Eine Figur ist ein kleiner einzelner Gegenstand, darum ist eine Kante ab 45 % klar. Das mit der Formel veröffentlichte Beispiel, {reflectances}, hat {published}; hier {computed}.",
  "method.pairs": "Wie übliche Paare ausfallen; Marken bei 30, 45 und 60 %",
  "method.pair": "Paar",
  "method.pairContrast": "Kontrast",
  "method.pairScale": "Auf einer Skala von 0 bis 100 Prozent",
  "method.pairRatio": "Verhältnis",
  "method.contrastSource":
    "Bowman und Sapolinski: AS 1428.1:2009, Anhang B; AS/NZS 1428.4.1, Anhang E; aus zweiter Hand. Die Prozentzahl ist mit keiner anderen Skala vergleichbar: Boon und andere, <i>Work</i> 70(4), <boon>2021</boon>. Unser eigenes Urteil: dass eine Figur ein kleiner einzelner Gegenstand ist; die Töne der Paare. Welche Paare klar zu lesen sind: übliche Praxis, keine Quelle.",
  "method.besideText":
    "Drei weitere Maße stehen neben dem Kontrast, und keines entscheidet. Das <em>Kontrastverhältnis</em> des Webs ist für Bildschirme gemacht: {first} auf {second} erfüllt dessen 3 zu 1, und doch nennt es niemand, der Flaggen ansieht, leicht zu erkennen. <em>ΔE00</em> sagt, wie verschieden zwei Farben aussehen, den Farbton eingeschlossen. Das dritte ist die <a>Tinkturregel</a>.",
  "method.besidePair":
    "{first} / {second}: Kontrastverhältnis <number>{ratio}</number>, ΔE00 <number>{deltaE00}</number>, Kontrast <number>{contrast}</number>, {grade}",
  "method.besideSource":
    "WCAG 2.2, <ratio>Verhältnis</ratio> und <objects>1.4.11</objects>. Sharma, Wu, Dalal, <sharma>CIEDE2000</sharma>, 2005; ihre 34 Prüfpaare prüfen dieses Programm. Dass Rot auf Schwarz schwer zu sehen ist: übliche Praxis, keine Quelle.",
};
