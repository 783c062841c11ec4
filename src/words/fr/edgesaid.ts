// Floor 7. French: what became of one edge.
import type { In } from "../en/all.ts";
import type { edgeSaid as english } from "../en/edgesaid.ts";

export const edgeSaid: In<typeof english> = {
  "edgeSaid.unchanged": "Inchangée",
  "edgeSaid.leftAlone": "Le changement laisse cette limite comme elle est : contraste {contrast}, {grade}.",
  "edgeSaid.hardlyChange": "{pair} ne changent guère sur {where} : {move}.",
  "edgeSaid.stayClear": "{pair} restent bien séparés sur {where} : {move}.",
  "edgeSaid.stayHard": "{pair} restent difficiles à distinguer sur {where} : {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} se détache désormais de {neighbour} sur {where} : contraste {contrast}, {grade} ; avec {was}, il était de {wasContrast}, {wasGrade}.} same {{is} se détachent désormais l’un de l’autre sur {where} : contraste {contrast}, {grade}, contre {wasContrast}, {wasGrade}.} other {{is} se détachent désormais l’un de l’autre sur {where} : contraste {contrast}, {grade} ; avec {was}, il était de {wasContrast}, {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} se détache de {neighbour} plus que {was}, sur {where} : {move}.} same {{is} se détachent plus qu’avant, sur {where} : {move}.} other {{is} se détachent plus que {was}, sur {where} : {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} se distingue mieux de {neighbour} que {was}, sur {where}, sans être net : {move}.} same {{is} se distinguent mieux qu’avant, sur {where}, sans être nets : {move}.} other {{is} se distinguent mieux que {was}, sur {where}, sans être nets : {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} ne se détache plus de {neighbour} sur {where} : contraste {contrast}, {grade} ; avec {was}, il était de {wasContrast}, {wasGrade}.} same {{is} ne se détachent plus l’un de l’autre sur {where} : contraste {contrast}, {grade}, contre {wasContrast}, {wasGrade}.} other {{is} ne se détachent plus l’un de l’autre sur {where} : contraste {contrast}, {grade} ; avec {was}, il était de {wasContrast}, {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} se détache de {neighbour} moins que {was}, sur {where} : {move}.} same {{is} se détachent moins qu’avant, sur {where} : {move}.} other {{is} se détachent moins que {was}, sur {where} : {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} se distingue encore moins de {neighbour} que {was}, sur {where} : {move}.} same {{is} se distinguent encore moins qu’avant, sur {where} : {move}.} other {{is} se distinguent encore moins que {was}, sur {where} : {move}.}}",
  "edgeSaid.merged":
    "{pair} deviennent une seule couleur à l’œil sur {where} : la ligne qui les séparait, d’un contraste de {wasContrast}, {wasGrade}, a disparu.",
  "edgeSaid.parted":
    "{pair} étaient une seule couleur et se touchent désormais en une limite {gradeId, select, weak {faible} soft {douce} clear {nette} other {forte}}, sur {where} : contraste {contrast}.",
  "edgeSaid.pair": "{one} et {other}",
  "edgeSaid.moveNone": "contraste {contrast}, {grade}",
  "edgeSaid.moveStill": "contraste de {wasContrast} à {contrast}, toujours {grade}",
  "edgeSaid.moveGrade": "contraste de {wasContrast} à {contrast}, de {wasGrade} à {grade}",
  "edgeSaid.whereAll": "toutes les lignes du drapeau",
  "edgeSaid.wherePart": "{part} de la longueur de toutes les limites",
  "edgeSaid.whereOutline": "tout le contour de ce qui doit se voir",
  "edgeSaid.whereOutlinePart": "{part} du contour de ce qui doit se voir",
  "edgeSaid.whereAllAndOutline": "toutes les lignes du drapeau, {outline} compris",
  "edgeSaid.whereOutlineAndMore": "{outline} et au-delà, {part} de la longueur de toutes les limites",
};
