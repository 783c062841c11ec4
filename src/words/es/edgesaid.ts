// Floor 7. Spanish: what became of one edge.
import type { In } from "../en/all.ts";
import type { edgeSaid as english } from "../en/edgesaid.ts";

export const edgeSaid: In<typeof english> = {
  "edgeSaid.unchanged": "Sin cambio",
  "edgeSaid.leftAlone": "El cambio deja este límite como está: contraste {contrast}, {grade}.",
  "edgeSaid.hardlyChange": "{pair} apenas cambian en {where}: {move}.",
  "edgeSaid.stayClear": "{pair} siguen bien separados en {where}: {move}.",
  "edgeSaid.stayHard": "{pair} siguen siendo difíciles de distinguir en {where}: {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} destaca ahora de {neighbour} en {where}: contraste {contrast}, {grade}; con {was} era {wasContrast}, {wasGrade}.} same {{is} destacan ahora entre sí en {where}: contraste {contrast}, {grade}, frente a {wasContrast}, {wasGrade}.} other {{is} destacan ahora entre sí en {where}: contraste {contrast}, {grade}; con {was} era {wasContrast}, {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} destaca de {neighbour} más que {was}, en {where}: {move}.} same {{is} destacan entre sí más que antes, en {where}: {move}.} other {{is} destacan entre sí más que {was}, en {where}: {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} se distingue de {neighbour} mejor que {was}, en {where}, pero sin nitidez: {move}.} same {{is} se distinguen mejor que antes, en {where}, pero sin nitidez: {move}.} other {{is} se distinguen mejor que {was}, en {where}, pero sin nitidez: {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} ya no destaca de {neighbour} en {where}: contraste {contrast}, {grade}; con {was} era {wasContrast}, {wasGrade}.} same {{is} ya no destacan entre sí en {where}: contraste {contrast}, {grade}, frente a {wasContrast}, {wasGrade}.} other {{is} ya no destacan entre sí en {where}: contraste {contrast}, {grade}; con {was} era {wasContrast}, {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} destaca de {neighbour} menos que {was}, en {where}: {move}.} same {{is} destacan entre sí menos que antes, en {where}: {move}.} other {{is} destacan entre sí menos que {was}, en {where}: {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} se distingue de {neighbour} aún peor que {was}, en {where}: {move}.} same {{is} se distinguen aún peor que antes, en {where}: {move}.} other {{is} se distinguen aún peor que {was}, en {where}: {move}.}}",
  "edgeSaid.merged":
    "{pair} se vuelven un solo color a la vista en {where}: la línea entre ambos, con un contraste de {wasContrast}, {wasGrade}, desaparece.",
  "edgeSaid.parted":
    "{pair} eran un solo color y ahora se tocan en un límite {gradeId, select, weak {débil} soft {suave} clear {nítido} other {fuerte}}, en {where}: contraste {contrast}.",
  "edgeSaid.pair": "{one} y {other}",
  "edgeSaid.moveNone": "contraste {contrast}, {grade}",
  "edgeSaid.moveStill": "contraste de {wasContrast} a {contrast}, aún {grade}",
  "edgeSaid.moveGrade": "contraste de {wasContrast} a {contrast}, de {wasGrade} a {grade}",
  "edgeSaid.whereAll": "todas las líneas de la bandera",
  "edgeSaid.wherePart": "{part} de la longitud de todos los límites",
  "edgeSaid.whereOutline": "todo el contorno de lo que debe verse",
  "edgeSaid.whereOutlinePart": "{part} del contorno de lo que debe verse",
  "edgeSaid.whereAllAndOutline": "todas las líneas de la bandera, incluido {outline}",
  "edgeSaid.whereOutlineAndMore": "{outline} y más allá, {part} de la longitud de todos los límites",
};
