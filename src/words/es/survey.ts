// Floor 7. Spanish: the survey of all flags as they are.
import type { In } from "../en/all.ts";
import type { survey as english } from "../en/survey.ts";

export const survey: In<typeof english> = {
  "survey.title": "Censo",
  "survey.lede":
    "Cada bandera de la galería como es hoy: cuán nítidos son sus límites, cuál es el más débil y qué color cambiar primero. Las cifras no dicen nada de la belleza ni del sentido.",
  "survey.flags": "{count, plural, one {# bandera} other {# banderas}}",
  "survey.only": "{count, plural, one {# bandera} other {# banderas}}.",
  "survey.ordered": "{count, plural, one {# bandera} other {# banderas}}, las menos nítidas primero.",
  "survey.description":
    "{count, plural, one {# bandera} other {# banderas}}, las menos nítidas primero: el límite más débil de cada una, el color que cambiar primero, el mejor cambio de un color.",
  "survey.told":
    "{weak, plural, =0 {En ninguna} one {En #} other {En #}} el límite más débil tiene un contraste inferior a {limit}; {helped, plural, =0 {en ninguna} one {en #} other {en #}} un cambio de color aporta {points, plural, one {# punto} other {# puntos}} de nitidez o más.",
  "survey.how": "Cómo se hace el censo",
  "survey.empty": "Aún no hay nada que censar.",
  "survey.more": "{count, plural, one {# bandera más} other {# banderas más}}",
  "survey.rest": "Figuran las {listed} menos nítidas; las otras {rest} están en los archivos.",
  "survey.failed": "Sin medir",
  "survey.files": "Archivos",
  "survey.failedRest": "Y {count} más, todas en el archivo JSON.",
  "survey.csv": "El censo, CSV",
  "survey.json": "El censo, JSON",
  "survey.pictured": "{count, plural, one {# bandera} other {# banderas}}, las menos nítidas primero",
  "survey.range": "de {least} a {most}",
  "survey.caution": "Las cifras no dicen nada de la belleza ni del sentido.",
  "survey.alt": "Una lámina de banderas. Censo: {flags}. Nitidez: {number}. {caution}",
  "survey.study": "Estudio",
  "survey.withStudy": "Con estudio",
  "survey.withoutStudy": "Sin estudio",
  "survey.none": "Ninguna bandera cumple todo esto. Quite una palabra o una opción, o muestre todo.",
  "survey.found": "{found} de {count, plural, one {# bandera} other {# banderas}}",
};
