// Floor 7. Spanish: other single changes of a flag, which colour to change first, and what was not tried.
import type { In } from "../en/all.ts";
import type { otherChange as english } from "../en/otherchange.ts";

export const otherChange: In<typeof english> = {
  "otherChange.another": "otro {name}",
  "otherChange.equal": "{count, plural, one {{names} da lo mismo} other {{names} dan lo mismo}}",
  "otherChange.equalShort": "también {names}",
  "otherChange.others": "{count, plural, one {# más} other {# más}}",
  "otherChange.lost": "Más difícil de ver junto a {names}.",
  "otherChange.worse": "Menos nítido junto a {names}.",
  "otherChange.merged": "Un solo color con {names}.",
  "otherChange.outlineMerges": "Se funde {share} del contorno.",
  "otherChange.confusable": "Puede tomarse por un color de la bandera: {names}.",
  "otherChange.confused": "Los ojos {sights} lo toman por {name}.",
  "otherChange.protan": "protanes",
  "otherChange.deutan": "deutanes",
  "otherChange.tritan": "tritanes",
  "otherChange.fromTo": "{before} a {after}",
  "otherChange.unranked":
    "{count, plural, one {Sin puesto: {changes}; fundiría un tercio o más del contorno de una figura.} other {Sin puesto: {changes}; cada uno fundiría un tercio o más del contorno de una figura.}}",
  "otherChange.place":
    "{place, selectordinal, =1 {El más nítido de {total} cambios de un color} other {#.º en nitidez de {total} cambios de un color}}{level, plural, =0 {.} one {, a la par de otro.} other {, a la par de otros #.}}",
  "otherChange.noneTried": "No se pudo probar ninguno de los colores.",
  "otherChange.allMerge": "Todo cambio probado funde un tercio o más del contorno de una figura.",
  "otherChange.clear": "La bandera es nítida como está, con una nitidez de {clarity}.",
  "otherChange.clearAndNone":
    "La bandera es nítida como está, con una nitidez de {clarity}: ningún cambio de un color aporta cinco puntos más.",
  "otherChange.none":
    "La bandera tiene una nitidez de {clarity}, y ningún cambio de un color aporta cinco puntos más.",
  "otherChange.detail": "La bandera en conjunto es nítida, con {clarity}; solo gana un detalle.",
  "otherChange.first":
    "Que cambiar primero: {colour} ({share} de la bandera). Con {best} en su lugar, la nitidez sube de {from} a {to}.",
  "otherChange.firstAlike":
    "{count, plural, =2 {Que cambiar primero: {colours} o {last}. Con {best} en lugar de uno u otro, la nitidez sube de {from} a {to}.} one {Que cambiar primero: {colours} o {last}. Con {best} en lugar de cualquiera de ellos, la nitidez sube de {from} a {to}.} other {Que cambiar primero: {colours} o {last}. Con {best} en lugar de cualquiera de ellos, la nitidez sube de {from} a {to}.}}",
  "otherChange.firstOfSeveral": "Que cambiar primero: {colours} o {last}; {moves}.",
  "otherChange.shareFirst": "{colour} ({share} de la bandera)",
  "otherChange.share": "{colour} ({share})",
  "otherChange.moveFirst": "con {best} por {colour} la nitidez sube de {from} a {to}",
  "otherChange.move": "con {best} por {colour}, a {to}",
  "otherChange.mostGained":
    "Donde más se gana es donde se tocan {colour} y {other} (contraste {contrast} hoy).",
  "otherChange.uneven": "Color desigual, por eso sin probar: {names}.",
  "otherChange.unseen":
    "{distance, plural, one {No se ve a # altura de bandera, por eso sin probar: {names}.} other {No se ve a # alturas de bandera, por eso sin probar: {names}.}}",
  "otherChange.shared":
    "Se ve también translúcido, en un degradado o en un motivo, que las cifras dejan como están: {names}.",
  "otherChange.largest":
    "{all, plural, one {# color} other {# colores}}: solo {tried, plural, one {se probó el más extenso} other {se probaron los # más extensos}}, con los colores de los demás.",
  "otherChange.palette":
    "{all, plural, one {La paleta tiene # color} other {La paleta tiene # colores}}: {tried, plural, one {se probó el primero.} other {se probaron los # primeros.}}",
};
