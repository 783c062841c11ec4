// Floor 7. Spanish: facts beside the numbers of a study.
import type { In } from "../en/all.ts";
import type { facts as english } from "../en/facts.ts";

export const facts: In<typeof english> = {
  "facts.heading": "Datos junto a las cifras, ninguno de ellos una nota",
  "facts.caption": "Datos junto a las cifras",
  "facts.fact": "Dato",
  "facts.clearShareNote":
    "La parte de límites nítidos salta donde cambia un grado; por eso es un dato y no decide nada. <near>En el umbral</near>",
  "facts.hueNote":
    "Solo el tono: un contraste inferior al 30 % con un ΔE00 de 20 o más, y de menos de 10 en gris. Un límite así desaparece al anochecer, en la impresión en gris y para muchos lectores daltónicos. Los pasos son juicio nuestro.",
  "facts.tinctureNote":
    "Regla de los esmaltes: ni metal sobre metal, ni color sobre color; A. C. Fox-Davies, <book>A Complete Guide to Heraldry</book>, 1909, capítulo VII. Los campos partidos, los fileteados y los forros quedan exentos; los forros no se reconocen aquí.",
  "facts.countNote":
    "Colores de más de medio por ciento de la superficie. El folleto <book>Good Flag, Bad Flag</book>, 2006, aconseja dos o tres; los <book>Guiding Principles of Flag Design</book>, 2014, prefieren pocos.",
  "facts.more": "Más sobre estos datos",
  "facts.clearShare": "Parte de límites nítidos: nítidos o fuertes, de la longitud de todos los límites",
  "facts.near": "Grado en el umbral, otro sobre otra tela",
  "facts.hue": "Se distinguen solo por el tono",
  "facts.tincture": "Contra la regla de los esmaltes",
  "facts.count": "Número de colores; las guías aconsejan dos o tres",
  "facts.none": "ninguno",
  "facts.metalOnMetal": "{names}, ambos metales",
  "facts.colourOnColour": "{names}, ambos colores",
  "facts.ruleKept": "Nada va en su contra, ni antes ni después.",
  "facts.ruleBroken": "En su contra antes y después: {names}.",
  "facts.ruleMoved": "En su contra en el original: {was}. En el rediseño: {is}.",
  "facts.exemptFimbriation": "Exento, como fileteado: {names}.",
  "facts.exemptField": "Exento, como partes del campo: {names}.",
  "facts.uneven":
    "Un color desigual: {name} va de {lightest} a {darkest}; un límite suyo solo es nítido si lo son ambos extremos.",
};
