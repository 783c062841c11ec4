// Floor 7. Spanish: the distance strip.
import type { In } from "../en/all.ts";
import type { strip as english } from "../en/strip.ts";

export const strip: In<typeof english> = {
  "strip.from": "A <number>{distance}</number> alturas de bandera",
  "strip.focus": "lo que debe verse:",
  "strip.clarity": "nitidez",
  "strip.caption":
    "Primero el original, luego el rediseño, como los ve desde allí un ojo agudo, llevados a un mismo tamaño: sin viento, sin bruma, sin deslumbramiento.",
  "strip.title": "Tira de distancias",
  "strip.label": "{label} a {distance} alturas de bandera",
  "strip.blur": "Borrosa en un {blur} por ciento de su altura.",
  "strip.blurAndFocus": "Borrosa en un {blur} por ciento de su altura; {focus}.",
  "strip.focusClarity": "lo que debe verse tiene una nitidez de {clarity}",
  "strip.focusLost": "lo que debe verse es demasiado pequeño para reconocerse",
  "strip.lost": "ampliado: a su tamaño real, demasiado pequeño para reconocerse",
  "strip.describe": "Ambas banderas como se ven a {distances} alturas de bandera, cada vez más borrosas.",
  "strip.onlyThere": "La nitidez solo se da donde aún se reconoce lo que debe verse.",
  "strip.level":
    "Hasta donde se reconoce, lo que debe verse tiene una nitidez de {before} en el original y de {after} en el rediseño.",
  "strip.rises":
    "Sube desde más lejos, donde las partes finas con límites débiles ya no se ven y no cuentan más.",
};
