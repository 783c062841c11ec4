// Floor 7. French: what became of one edge.
import type { In } from "../en/all.ts";
import type { edgeSaid as english } from "../en/edgesaid.ts";

export const edgeSaid: In<typeof english> = {
  "edgeSaid.unchanged": "Inchangée",
  "edgeSaid.leftAlone":
    "Le changement laisse cette limite telle quelle : contraste de {contrast}, limite {grade}.",
  "edgeSaid.hardlyChange": "{pair} ne changent guère, le long de {where} : {move}.",
  "edgeSaid.stayClear": "{pair} restent bien séparés, le long de {where} : {move}.",
  "edgeSaid.stayHard": "{pair} restent difficiles à distinguer, le long de {where} : {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} se détache désormais sur {neighbour}, le long de {where} : contraste de {contrast}, limite {grade} ; avec {was}, {wasContrast}, limite {wasGrade}.} same {{is} se détachent désormais l’un sur l’autre, le long de {where} : contraste de {contrast}, limite {grade}, contre {wasContrast}, limite {wasGrade}.} other {{is} se détachent désormais l’un sur l’autre, le long de {where} : contraste de {contrast}, limite {grade} ; avec {was}, {wasContrast}, limite {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} se détache mieux sur {neighbour} qu’auparavant {was}, le long de {where} : {move}.} same {{is} se détachent mieux l’un sur l’autre qu’auparavant, le long de {where} : {move}.} other {{is} se détachent mieux l’un sur l’autre qu’auparavant {was}, le long de {where} : {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} se distingue mieux sur {neighbour} qu’auparavant {was}, le long de {where}, sans que la limite soit nette : {move}.} same {{is} se distinguent mieux qu’auparavant, le long de {where}, sans que la limite soit nette : {move}.} other {{is} se distinguent mieux qu’auparavant {was}, le long de {where}, sans que la limite soit nette : {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} ne se détache plus sur {neighbour}, le long de {where} : contraste de {contrast}, limite {grade} ; avec {was}, {wasContrast}, limite {wasGrade}.} same {{is} ne se détachent plus l’un sur l’autre, le long de {where} : contraste de {contrast}, limite {grade}, contre {wasContrast}, limite {wasGrade}.} other {{is} ne se détachent plus l’un sur l’autre, le long de {where} : contraste de {contrast}, limite {grade} ; avec {was}, {wasContrast}, limite {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} se détache moins sur {neighbour} qu’auparavant {was}, le long de {where} : {move}.} same {{is} se détachent moins l’un sur l’autre qu’auparavant, le long de {where} : {move}.} other {{is} se détachent moins l’un sur l’autre qu’auparavant {was}, le long de {where} : {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} se distingue encore moins sur {neighbour} qu’auparavant {was}, le long de {where} : {move}.} same {{is} se distinguent encore moins qu’auparavant, le long de {where} : {move}.} other {{is} se distinguent encore moins qu’auparavant {was}, le long de {where} : {move}.}}",
  "edgeSaid.merged":
    "{pair} ne font plus qu’une couleur à l’œil, le long de {where} : la ligne qui les séparait, d’un contraste de {wasContrast}, limite {wasGrade}, a disparu.",
  "edgeSaid.parted":
    "{pair} ne faisaient qu’une couleur et se touchent désormais en une limite {gradeId, select, weak {faible} soft {douce} clear {nette} other {forte}}, le long de {where} : contraste de {contrast}.",
  "edgeSaid.pair": "{one} et {other}",
  "edgeSaid.moveNone": "contraste de {contrast}, limite {grade}",
  "edgeSaid.moveStill": "contraste de {wasContrast} à {contrast}, limite toujours {grade}",
  "edgeSaid.moveGrade": "contraste de {wasContrast} à {contrast}, limite de {wasGrade} à {grade}",
  "edgeSaid.whereAll": "toutes les lignes du drapeau",
  "edgeSaid.wherePart": "{part} de la longueur totale des limites",
  "edgeSaid.whereOutline": "tout le contour de ce qui doit se voir",
  "edgeSaid.whereOutlinePart": "{part} du contour de ce qui doit se voir",
  "edgeSaid.whereAllAndOutline": "toutes les lignes du drapeau, {outline} compris",
  "edgeSaid.whereOutlineAndMore": "{outline} et au-delà, soit {part} de la longueur totale des limites",
};
