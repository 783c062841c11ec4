// Floor 7. Spanish: the sheet from which an adopted redesign is made as a flag.
import type { In } from "../en/all.ts";
import type { maker as english } from "../en/maker.ts";

export const maker: In<typeof english> = {
  "maker.title": "{title}, hoja para fabricantes",
  "maker.description": "Proporciones, construcción y colores del rediseño adoptado, para imprimir.",
  "maker.kind": "Hoja para fabricantes",
  "maker.for": "Para fabricantes",
  "maker.print": "Para imprimir: la orden de impresión de su navegador, A4 o Carta, en vertical. Una página.",
  "maker.toStudy": "El estudio",
  "maker.redesign": "Rediseño",
  "maker.outline": "El rediseño de {name}, en contornos",
  "maker.proportions": "Alto por ancho <number>{proportions}</number>. La vaina, a la izquierda.",
  "maker.built": "Construcción",
  "maker.shape": "Forma",
  "maker.fromHoist": "Desde la vaina",
  "maker.fromTop": "Desde arriba",
  "maker.width": "Ancho",
  "maker.height": "Alto",
  "maker.rectangle": "Rectángulo",
  "maker.line": "Línea",
  "maker.circle": "Círculo, por su centro",
  "maker.ring": "Anillo, por su centro",
  "maker.across": "{width} de diámetro",
  "maker.hole": "hueco {height}",
  "maker.laid": "En el orden en que se colocan: lo posterior cubre lo anterior.",
  "maker.none": "No se pudo leer ninguna forma sencilla del dibujo. Decide el archivo del dibujo.",
  "maker.parts": "Los números enteros son partes, de las que la altura tiene {parts}.",
  "maker.percent": "Las posiciones y los tamaños en % son de la altura, redondeados.",
  "maker.untold":
    "{count, plural, one {Se omite # forma más, que no es sencilla o no cabe: decide el archivo del dibujo.} other {Se omiten # formas más, que no son sencillas o no caben: decide el archivo del dibujo.}}",
  "maker.colours": "Colores",
  "maker.colour": "Color",
  "maker.hex": "Hex",
  "maker.reflectance": "Reflectancia",
  "maker.others":
    "{count, plural, one {Hay # color más en la página del estudio.} other {Hay # colores más en la página del estudio.}}",
  "maker.coloursHow":
    "sRGB en bytes; CIELAB bajo D65; reflectancia de una tela cuyo tinte responde a la pantalla, entre la tela negra y la blanca de la galería.",
  "maker.source": "Fuentes: IEC 61966-2-1 (sRGB), CIE 15:2004 (CIELAB).",
  "maker.cautions": "Antes de fabricarla",
  "maker.law":
    "La ley local va primero: sobre el aspecto de una bandera, quién puede fabricarla y quién puede izarla.",
  "maker.cloth":
    "Deciden las cartas de telas y tintes. Un color de pantalla no es un tinte: elija en una carta, a la luz del día, y mantenga entre los colores la distancia de claridad que tienen aquí.",
  "maker.file": "Donde esta hoja y el archivo del dibujo difieren, decide el archivo.",
};
