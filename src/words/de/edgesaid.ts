// Floor 7. German: what became of one edge.
import type { In } from "../en/all.ts";
import type { edgeSaid as english } from "../en/edgesaid.ts";

export const edgeSaid: In<typeof english> = {
  "edgeSaid.unchanged": "Unverändert",
  "edgeSaid.leftAlone": "Die Änderung lässt diese Kante, wie sie ist: Kontrast {contrast}, {grade}.",
  "edgeSaid.hardlyChange": "{pair} ändern sich kaum, auf {where}: {move}.",
  "edgeSaid.stayClear": "{pair} bleiben klar getrennt, auf {where}: {move}.",
  "edgeSaid.stayHard": "{pair} bleiben schwer zu unterscheiden, auf {where}: {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} hebt sich jetzt gegen {neighbour} ab, auf {where}: Kontrast {contrast}, {grade}; {was} hatte {wasContrast}, {wasGrade}.} same {{is} heben sich jetzt voneinander ab, auf {where}: Kontrast {contrast}, {grade}, statt {wasContrast}, {wasGrade}.} other {{is} heben sich jetzt voneinander ab, auf {where}: Kontrast {contrast}, {grade}; {was} hatten {wasContrast}, {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} hebt sich stärker gegen {neighbour} ab als {was}, auf {where}: {move}.} same {{is} heben sich stärker voneinander ab als zuvor, auf {where}: {move}.} other {{is} heben sich stärker voneinander ab als {was}, auf {where}: {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} hebt sich stärker gegen {neighbour} ab als {was}, aber nicht klar, auf {where}: {move}.} same {{is} sind leichter zu unterscheiden als zuvor, aber nicht klar, auf {where}: {move}.} other {{is} sind leichter zu unterscheiden als {was}, aber nicht klar, auf {where}: {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} hebt sich nicht mehr gegen {neighbour} ab, auf {where}: Kontrast {contrast}, {grade}; {was} hatte {wasContrast}, {wasGrade}.} same {{is} heben sich nicht mehr voneinander ab, auf {where}: Kontrast {contrast}, {grade}, statt {wasContrast}, {wasGrade}.} other {{is} heben sich nicht mehr voneinander ab, auf {where}: Kontrast {contrast}, {grade}; {was} hatten {wasContrast}, {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} hebt sich weniger gegen {neighbour} ab als {was}, auf {where}: {move}.} same {{is} heben sich weniger voneinander ab als zuvor, auf {where}: {move}.} other {{is} heben sich weniger voneinander ab als {was}, auf {where}: {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} hebt sich noch weniger gegen {neighbour} ab als {was}, auf {where}: {move}.} same {{is} sind noch schwerer zu unterscheiden als zuvor, auf {where}: {move}.} other {{is} sind noch schwerer zu unterscheiden als {was}, auf {where}: {move}.}}",
  "edgeSaid.merged":
    "{pair} werden für das Auge eine Farbe, auf {where}: Die Linie zwischen ihnen, mit einem Kontrast von {wasContrast}, {wasGrade}, ist verschwunden.",
  "edgeSaid.parted":
    "{pair} waren eine Farbe und stoßen jetzt in {gradeId, select, weak {einer schwachen Kante} soft {einer weichen Kante} clear {einer klaren Kante} other {einer starken Kante}} aneinander, auf {where}: Kontrast {contrast}.",
  "edgeSaid.pair": "{one} und {other}",
  "edgeSaid.moveNone": "Kontrast {contrast}, {grade}",
  "edgeSaid.moveStill": "Kontrast von {wasContrast} auf {contrast}, weiterhin {grade}",
  "edgeSaid.moveGrade": "Kontrast von {wasContrast} auf {contrast}, von {wasGrade} zu {grade}",
  "edgeSaid.whereAll": "allen Linien der Flagge",
  "edgeSaid.wherePart": "{part} der Länge aller Kanten",
  "edgeSaid.whereOutline": "dem ganzen Umriss dessen, was gesehen werden muss",
  "edgeSaid.whereOutlinePart": "{part} des Umrisses dessen, was gesehen werden muss",
  "edgeSaid.whereAllAndOutline": "allen Linien der Flagge, darunter {outline}",
  "edgeSaid.whereOutlineAndMore": "{part} der Länge aller Kanten, darunter {outline}",
};
