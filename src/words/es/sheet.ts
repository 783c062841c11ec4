// Floor 7. Spanish: sheets for a class, printed on paper: a handout, a worksheet and the answers for the teacher.
import type { In } from "../en/all.ts";
import type { sheet as english } from "../en/sheet.ts";

export const sheet: In<typeof english> = {
  "sheet.title": "{title}, hojas para la clase",
  "sheet.description":
    "Hoja de apoyo, hoja de trabajo y respuestas, para imprimir. Estudio no oficial de rediseño.",
  "sheet.kind": "Hojas para la clase",
  "sheet.print":
    "Para imprimir: la orden de impresión de su navegador, A4 o Carta, en vertical. Cada parte ocupa su propia página.",
  "sheet.toStudy": "El estudio",
  "sheet.toSeries": "La serie",
  "sheet.contents": "Contenido",
  "sheet.handout": "Hoja de apoyo",
  "sheet.worksheet": "Hoja de trabajo",
  "sheet.answers": "Respuestas",
  "sheet.redesign": "Rediseño, estudio no oficial",
  "sheet.questions": "Tres preguntas",
  "sheet.ruler":
    "El contraste es cuánto distan en claridad dos colores que se tocan. Anillo: el original. Punto: el rediseño.",
  "sheet.left":
    "{count, plural, one {Hay # límite más en la página del estudio.} other {Hay # límites más en la página del estudio.}}",
  "sheet.noRuler": "Un solo color: no hay límites que medir.",
  "sheet.hatched": "En líneas, para impresión en gris",
  "sheet.hatchedHow":
    "Cada color tiene sus líneas, según Silvester Petra Sancta, Roma 1638. Los matices de un color las comparten.",
  "sheet.originalInLines": "Original en líneas",
  "sheet.redesignInLines": "Rediseño en líneas",
  "sheet.inOutlines": "{flag}, en contornos",
  "sheet.name": "Nombre",
  "sheet.change": "Cambia un color. Colorea la bandera con el nuevo en su lugar.",
  "sheet.own": "Los colores de la bandera",
  "sheet.palette": "Colores para elegir",
  "sheet.guess":
    "Estima el contraste donde se tocan dos colores: un anillo para el original, un punto para tu bandera.",
  "sheet.reason": "Cambio <line></line> por <line></line>, porque",
  "sheet.price": "Qué empeora, y por qué lo acepto:",
  "sheet.yours": "Aquí no hay estudio de esta bandera: es tuya.",
  "sheet.teacher": "Para el docente",
  "sheet.others": "Otros cambios",
  "sheet.onWorksheet": "La hoja de trabajo",
  "sheet.opinion":
    "En la hoja de trabajo ninguna elección es buena o mala. Lo que cuenta es una razón que nombre un límite.",
  "sheet.signs": "Colores en líneas",
  "sheet.signsSource":
    "Líneas que representan colores. Fuente: Silvester Petra Sancta, «Tesserae gentilitiae», Roma 1638; recogido en A. C. Fox-Davies, «A Complete Guide to Heraldry», 1909, capítulo VII. Naranja y marrón: convención posterior, en la que los libros difieren; sin fuente. El gris y el rosa no tienen líneas y quedan grises: elección nuestra.",
  "sheet.red": "rojo (gules)",
  "sheet.blue": "azul (azur)",
  "sheet.green": "verde (sinople)",
  "sheet.black": "negro (sable)",
  "sheet.purple": "morado (púrpura)",
  "sheet.yellow": "amarillo (oro)",
  "sheet.white": "blanco (plata)",
  "sheet.orange": "naranja (tenné), posterior",
  "sheet.brown": "marrón, posterior",
};
