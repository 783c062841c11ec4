// Floor 7. Spanish: the definitions of the method. `em` is an emphasised term, `i` the title of a book; `move` stands for an
import type { In } from "../en/all.ts";
import type { methodTerm as english } from "../en/methodterm.ts";

export const methodTerm: In<typeof english> = {
  "method.numbersText":
    "Un límite cuenta en la medida en que su contraste se acerca a {clear}, y por entero desde ahí: 30 / 45 = 67 %. La nitidez es la media de todos los límites, cada uno pesado por su longitud y, otra vez, por la parte que bordea lo que debe verse:",
  "method.numbersClose":
    "Así, una bandera con todos los límites nítidos tiene el 100 %, y un límite débil largo cuesta más que uno corto. Una bandera de un solo color no tiene límite ni nitidez.",
  "method.numbersSource": "Juicio nuestro: la suma, y que cuente doble lo que debe verse.",
  "method.strength": "Fuerza",
  "method.strengthMeans": "la misma suma hasta {strong}; ordena lo que la nitidez deja a la par",
  "method.weakest": "Límite más débil",
  "method.weakestMeans": "el límite de menor contraste, sin los más cortos",
  "method.clearShare": "Parte de límites nítidos",
  "method.clearShareMeans": "la parte de longitud nítida o fuerte; salta en un paso, así que no decide nada",
  "method.outcomesText": "A un límite, un cambio le hace esto:",
  "method.gained": "Ganado, perdido",
  "method.gainedMeans":
    "se vuelve nítido, o deja de serlo, y se mueve {contrastStep} puntos o más: <move></move>",
  "method.better": "Mejor, peor",
  "method.betterMeans":
    "se mueve otro tanto sin volverse nítido ni dejar de serlo: <move></move>; nada cuenta por encima de {strong}",
  "method.same": "Igual",
  "method.sameMeans": "se mueve menos: <move></move>",
  "method.merged": "Fundido",
  "method.mergedMeans": "sus dos colores se acercan tanto que cuentan como uno",
  "method.parted": "Separado",
  "method.partedMeans": "es nuevo, porque solo se cambió una parte de un color",
  "method.outcomesPrice":
    "El <em>precio</em> de un cambio son los límites perdidos, peores, fundidos, o separados y no nítidos. El veredicto va según la nitidez en tantos por ciento enteros y, a la par, según la fuerza:",
  "method.clearer": "Más nítido",
  "method.clearerMeans":
    "sube {leastMove, plural, one {# punto} other {# puntos}} o más, sin precio: <move></move>",
  "method.atAPrice": "Más nítido, a un precio",
  "method.atAPriceMeans": "sube {largeMove} puntos o más, y se nombra el precio: <move></move>",
  "method.lessClear": "Menos nítido",
  "method.lessClearMeans":
    "baja {largeMove} puntos o más: <move></move>; o {leastMove} sin nada ganado, mejor, ni separado y nítido",
  "method.mixed": "Desigual",
  "method.mixedMeans": "ganancias y un precio, la nitidez entre medias: <move></move>",
  "method.noGain": "Sin ganancia",
  "method.noGainMeans": "todo límite queda igual, o no se cumple nada de lo anterior",
  "method.outcomesSource":
    "Juicio nuestro: los pasos de {contrastStep}, {leastMove} y {largeMove} puntos. Un límite fundido conserva su longitud, pues las formas quedan, y cuenta con contraste 0 %. Las cifras que se muestran están redondeadas; las que deciden, no.",
  "method.wordsText":
    "Las frases se componen por reglas, solo con las cifras y los nombres de la página. Hablan primero de lo que debe verse, y de los límites débiles antes que de los fuertes. Un <em>fileteado</em> es una línea estrecha de un tercer color que separa otros dos; mientras se ve, cuentan sus propios límites, y las palabras dicen qué hace por la pareja.",
  "method.wordsSource":
    "Qué es un fileteado: práctica común, sin fuente. Juicio nuestro, en qué lo reconocemos: una anchura media de menos del 8 % de la altura de la bandera, dos lados iguales en longitud salvo un tercio, entre colores que se tocan como mucho en una quinta parte.",
  "method.hue": "Solo el tono",
  "method.hueMeans":
    "débil con un ΔE00 de 20 o más, en gris menos de 10: desaparece al anochecer, en la impresión en gris y para muchos ojos daltónicos",
  "method.tincture": "Esmalte",
  "method.tinctureMeans":
    "ni metal (blanco, amarillo) sobre metal, ni color (rojo, azul, verde, negro, morado) sobre color. Exentos: las partes del campo que llegan ambas al borde, los fileteados; también los forros, que aquí no se reconocen",
  "method.colours": "Colores",
  "method.coloursMeans":
    "los de más del 0,5 % de la superficie, los matices parecidos como uno; las guías aconsejan dos o tres",
  "method.factsSource":
    "A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, capítulo VII; exenciones: práctica común, sin fuente. <good>Good Flag, Bad Flag</good>, North American Vexillological Association, 2006, tercer principio; <i>Guiding Principles of Flag Design</i>, Joint Commission on Vexillographic Principles, 2014, 3.1. Juicio nuestro: solo el tono, el 0,5 %.",
};
