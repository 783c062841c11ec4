// Floor 7. Spanish: the table of the survey, what can be done with flags chosen in it, and its picture of the whole field.
import type { In } from "../en/all.ts";
import type { surveyTable as english } from "../en/surveytable.ts";

export const surveyTable: In<typeof english> = {
  "surveyTable.caption": "Cada bandera como es.",
  "surveyTable.captionOrdered": "Cada bandera como es, las menos nítidas primero.",
  "surveyTable.captionHeads":
    "Bastante grande: a esa distancia queda la mitad de lo que debe verse, y su trozo mayor abarca 5 minutos de arco. No se halló emblema: la bandera es solo campos.",
  "surveyTable.choose": "Elegir",
  "surveyTable.flag": "Bandera",
  "surveyTable.focus": "Nitidez de lo que debe verse",
  "surveyTable.lasts": "Bastante grande hasta",
  "surveyTable.weakest": "Límite más débil",
  "surveyTable.first": "Color que cambiar primero",
  "surveyTable.best": "Mejor cambio de un color",
  "surveyTable.chooseOne": "Elegir {name}",
  "surveyTable.study": "Estudio: <a>{title}</a>",
  "surveyTable.named": "Señalada por lectores.",
  "surveyTable.noEmblem": "no se halló emblema",
  "surveyTable.ofContrast": "contraste",
  "surveyTable.ofClarity": "nitidez",
  "surveyTable.or": "o",
  "surveyTable.noFirst": "ninguno",
  "surveyTable.noBest": "ninguno",
  "surveyTable.chosen": "{count, plural, one {{number} bandera elegida} other {{number} banderas elegidas}}",
  "surveyTable.onlyChosen": "Mostrar solo estas",
  "surveyTable.list": "Lista para empezar estudios",
  "surveyTable.series": "Archivo para empezar una serie",
  "surveyTable.chooseNone": "No elegir ninguna",
  "surveyTable.showAll": "Mostrar todas las banderas",
  "surveyTable.listHead":
    "Banderas elegidas del censo de {gallery}. Escriba las líneas que empiezan por counterchange en la carpeta que contiene flags/.",
  "surveyTable.seriesTitle": "Banderas elegidas del censo",
  "surveyTable.seriesNote":
    "Para una serie que ya existe: copie las líneas del primer al último - debajo de su «studies:».",
  "surveyTable.seriesClosing": "¿Cuál de sus colores cambiaría usted, y por cuál?",
  "field.title": "Todo el campo",
  "field.about": "Cada bandera en su nitidez de hoy; subrayada donde hay un estudio sobre ella.",
  "field.past": "Pasar la imagen",
  "field.without":
    "{count, plural, one {# de un solo color no tiene límite ni lugar aquí.} other {# de un solo color no tienen límite ni lugar aquí.}}",
  "field.flag": "{name}, nitidez {clarity}",
  "field.least": "La menos nítida: {name}, nitidez {clarity}",
  "field.weakest": "Lo más débil: {one} / {other}, contraste {contrast}",
};
