// Floor 7. Spanish: other single changes of a flag.
import type { In } from "../en/all.ts";
import type { options as english } from "../en/options.ts";

export const options: In<typeof english> = {
  "options.caption": "El mejor sustituto de cada color",
  "options.byColour": "Lo mejor para cada color",
  "options.all": "Todos a la vez",
  "options.how":
    "Cada color de la bandera se prueba con la paleta, con los demás colores de la bandera y con el matiz nítido más cercano de su propio tono. Las cifras los ordenan; la belleza es cosa del autor. <how>Cómo se clasifican los cambios</how>",
  "options.tried": "También probados por el autor",
  "options.changed": "Color cambiado",
  "options.best": "Mejor sustituto",
  "options.ofFocus": "De lo que debe verse",
  "options.worse": "Qué empeora",
  "options.share": "{share} de la bandera",
  "options.none": "Ninguno que deje a cada figura su contorno.",
  "options.bestLabel": "El mejor:",
  "options.worseLabel": "Empeora:",
  "options.nothing": "Nada.",
  "options.beside": "junto a <study>{title}</study>",
  "options.title": "Otros cambios de un color",
  "options.description": "Todo otro cambio de un color junto a {title}, medido.",
  "options.standing": "Este estudio: {standing}",
  "options.whole": "El original tiene una nitidez de {clarity}: ningún cambio puede aumentarla.",
  "options.clearest": "Lo más nítido: {was} a {is}, {clarity}.",
  "options.clearestTried": "Lo más nítido, probado por el autor: {was} a {is}, {clarity}.",
  "options.clearestTriedInPart": "Lo más nítido, probado por el autor: {was} a {is} en {part}, {clarity}.",
  "options.clearerTried": "Aún más nítido, probado por el autor: {was} a {is}, {clarity}.",
  "options.clearerTriedInPart": "Aún más nítido, probado por el autor: {was} a {is} en {part}, {clarity}.",
  "options.onePart": "una parte",
  "options.noneLevel": "Ningún cambio ayuda; a la par:",
  "options.noneNearest": "Ningún cambio ayuda; lo más cercano:",
  "options.triedHas": "{name}, probado por el autor, tiene {clarity}",
  "options.option": "Variante",
  "options.triedAlt": "La bandera con {is} en lugar de {was}",
  "options.triedAltInPart": "La bandera con {is} en lugar de {was} en {part}",
  "options.changeInPart": "{before} pasa a {after} en {part}.",
  "options.figure": "Nitidez {clarity}",
  "options.figureAndFocus": "Nitidez {clarity}, de lo que debe verse {focus}",
  "options.strengthRises":
    "la nitidez se mantiene, y la fuerza, lo que los límites pasan de nítidos, sube de {was} a {is}",
  "options.strengthFalls":
    "la nitidez se mantiene, y la fuerza, lo que los límites pasan de nítidos, baja de {was} a {is}",
  "options.verdict": "{verdict}.",
  "options.verdictWhy": "{verdict}: {why}.",
};
