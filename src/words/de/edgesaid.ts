// Floor 7. German: what became of one edge.
import type { In } from "../catalogue.ts";
import type { edgeSaid as english } from "../en/edgesaid.ts";

export const edgeSaid: In<typeof english> = {
  "edgeSaid.unchanged": "Unverändert",
  "edgeSaid.leftAlone": "Die Änderung lässt diese Kante, wie sie ist: Kontrast {contrast}, {grade}.",
  "edgeSaid.hardlyChange": "{pair} ändern sich auf {where} kaum: {move}.",
  "edgeSaid.stayClear": "{pair} bleiben auf {where} klar getrennt: {move}.",
  "edgeSaid.stayHard": "{pair} bleiben auf {where} schwer zu unterscheiden: {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} hebt sich jetzt auf {where} von {neighbour} ab: Kontrast {contrast}, {grade}; bei {was} waren es {wasContrast}, {wasGrade}.} same {{is} heben sich jetzt auf {where} voneinander ab: Kontrast {contrast}, {grade}, statt {wasContrast}, {wasGrade}.} other {{is} heben sich jetzt auf {where} voneinander ab: Kontrast {contrast}, {grade}; bei {was} waren es {wasContrast}, {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} hebt sich auf {where} stärker von {neighbour} ab als {was}: {move}.} same {{is} heben sich auf {where} stärker voneinander ab als zuvor: {move}.} other {{is} heben sich auf {where} stärker voneinander ab als {was}: {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} ist auf {where} leichter von {neighbour} zu unterscheiden als {was}, aber nicht klar: {move}.} same {{is} sind auf {where} leichter zu unterscheiden als zuvor, aber nicht klar: {move}.} other {{is} sind auf {where} leichter zu unterscheiden als {was}, aber nicht klar: {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} hebt sich auf {where} nicht mehr von {neighbour} ab: Kontrast {contrast}, {grade}; bei {was} waren es {wasContrast}, {wasGrade}.} same {{is} heben sich auf {where} nicht mehr voneinander ab: Kontrast {contrast}, {grade}, statt {wasContrast}, {wasGrade}.} other {{is} heben sich auf {where} nicht mehr voneinander ab: Kontrast {contrast}, {grade}; bei {was} waren es {wasContrast}, {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} hebt sich auf {where} weniger von {neighbour} ab als {was}: {move}.} same {{is} heben sich auf {where} weniger voneinander ab als zuvor: {move}.} other {{is} heben sich auf {where} weniger voneinander ab als {was}: {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} ist auf {where} noch schwerer von {neighbour} zu unterscheiden als {was}: {move}.} same {{is} sind auf {where} noch schwerer zu unterscheiden als zuvor: {move}.} other {{is} sind auf {where} noch schwerer zu unterscheiden als {was}: {move}.}}",
  "edgeSaid.merged":
    "{pair} werden auf {where} für das Auge eine Farbe: Die Linie zwischen ihnen, mit einem Kontrast von {wasContrast}, {wasGrade}, ist verschwunden.",
  "edgeSaid.parted":
    "{pair} waren eine Farbe und stoßen jetzt auf {where} in {gradeId, select, weak {einer schwachen Kante} soft {einer weichen Kante} clear {einer klaren Kante} other {einer starken Kante}} aneinander: Kontrast {contrast}.",
  "edgeSaid.pair": "{one} und {other}",
  "edgeSaid.moveNone": "Kontrast {contrast}, {grade}",
  "edgeSaid.moveStill": "Kontrast {wasContrast} zu {contrast}, weiterhin {grade}",
  "edgeSaid.moveGrade": "Kontrast {wasContrast} zu {contrast}, {wasGrade} zu {grade}",
  "edgeSaid.whereAll": "allen Linien der Flagge",
  "edgeSaid.wherePart": "{part} der Länge aller Kanten",
  "edgeSaid.whereOutline": "dem ganzen Umriss dessen, was gesehen werden muss",
  "edgeSaid.whereOutlinePart": "{part} des Umrisses dessen, was gesehen werden muss",
  "edgeSaid.whereAllAndOutline": "allen Linien der Flagge, auch {outline}",
  "edgeSaid.whereOutlineAndMore": "{outline} und darüber hinaus, {part} der Länge aller Kanten",
};
