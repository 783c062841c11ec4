// Floor 7. Spanish: the page by which readers propose a study, with the words of its script and of the letter.
import type { In } from "../en/all.ts";
import type { part as english } from "../en/part.ts";

export const part: In<typeof english> = {
  "part.link": "Proponer un estudio propio",
  "part.title": "Proponer un estudio",
  "part.description":
    "Cómo proponer a esta galería un estudio de rediseño: dos archivos, y una carta con la que enviarlos.",
  "part.lede":
    "Un estudio es una carpeta con dos archivos: el dibujo de una bandera y un texto que nombra un cambio de color y lo defiende. No hace falta cuenta ni programa para escribirlo.",
  "part.files": "Los dos archivos",
  "part.drawing":
    "original.svg: la bandera como es, dibujada en SVG, 512 KB como mucho. Las imágenes de píxeles y las fotografías no se pueden recolorear.",
  "part.study":
    "study.md: texto simple. Entre las dos líneas de guiones van el título, el color que se sustituye y el que ocupa su lugar; debajo, sus razones.",
  "part.credit":
    "Si el dibujo no es suyo, diga de quién es y con qué licencia, en una línea como esta, encima de la segunda línea de guiones:",
  "part.template": "Un texto para empezar",
  "part.sampleTitle": "Una rueda más clara",
  "part.sampleFlag": "La bandera del transbordador",
  "part.sampleWhy": "Por qué este cambio, qué no se veía antes, y qué cuesta.",
  "part.send": "Enviarlo",
  "part.sendByMail": "Adjunte el dibujo a la carta: ninguna página puede hacerlo por usted.",
  "part.sendAtForm": "Adjunte allí el dibujo si se aceptan archivos, o diga dónde se encuentra.",
  "part.letter": "Escribir la carta",
  "part.byMail": "por correo a {address}, con el texto ya puesto.",
  "part.atForm": "en {host}, con el texto ya puesto.",
  "part.atFormEmpty": "en {host}; copie antes el texto.",
  "part.subject": "Un estudio para {gallery}",
  "part.try": "Probar un cambio",
  "part.private": "El dibujo se queda en su ordenador: esta página no sube nada ni recuerda nada.",
  "part.choose": "Elegir un dibujo (SVG)",
  "part.tooBig": "Este archivo pasa de 512 KB, lo más que puede tener un dibujo.",
  "part.broken":
    "Este archivo no se puede leer como dibujo SVG. Guárdelo de nuevo como SVG simple y elija ese archivo.",
  "part.endless": "Este dibujo es demasiado grande para mostrarse aquí, o se refiere a sí mismo sin fin.",
  "part.colourless": "No se halló en este dibujo ningún color que sustituir.",
  "part.chosen": "El dibujo se muestra abajo, con sus colores.",
  "part.replace": "Sustituir",
  "part.palette": "por un color de la galería",
  "part.typed": "o por uno que usted escriba",
  "part.unknown": "Este no es un color que tape lo que hay detrás. Escriba, por ejemplo, #f4c430.",
  "part.same": "Este es el color que ya está.",
  "part.before": "Antes",
  "part.after": "Después",
  "part.beforeShown": "El dibujo como es",
  "part.afterShown": "El dibujo con el cambio",
  "part.pairs": "Contraste de sus colores",
  "part.pair": "Pareja",
  "part.rough":
    "Son valores aproximados de cada pareja de colores, se toquen o no. La galería mide los propios límites, con sus longitudes, y mira a distancia; valen sus cifras.",
  "part.more": "Aquí solo se comparan los doce primeros colores.",
  "part.text": "Su texto",
  "part.textTitle": "Título del estudio",
  "part.textFlag": "Cómo se llama la bandera",
  "part.textAuthor": "Su nombre, como deba publicarse",
  "part.textWhy": "Por qué este cambio",
  "part.untitled": "Dé al estudio un título y diga por qué: entonces podrá enviarse el texto de abajo.",
  "part.ready": "Guarde esto como study.md junto al dibujo, o envíelo tal cual.",
  "part.copy": "Copiar el texto",
  "part.copied": "Copiado.",
  "part.refused": "El navegador no lo permitió; seleccione el texto y cópielo.",
  "part.unscripted":
    "Con scripts, esta página muestra un dibujo de su ordenador con el cambio y escribe el texto por usted. Sin ellos, copie el texto de arriba y complételo.",
};
