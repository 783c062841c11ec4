// Floor 7. Spanish: what has to be seen, the emblem or charge of a flag, from where the flag is seen, and how far that lasts.
import type { In } from "../en/all.ts";
import type { focus as english } from "../en/focus.ts";

export const focus: In<typeof english> = {
  "focus.none":
    "No se halló emblema: nada debe verse antes que lo demás, y ningún límite cuenta doble. Es un hecho, no un defecto.",
  "focus.notGuessed":
    "Una figura se confunde con una zona de su mismo color. No se ha adivinado, así que nada cuenta doble. Para nombrarla, escriba en el estudio:",
  "focus.fullDrawing": "Medido en el dibujo entero, no a distancia.",
  "focus.fromAway":
    "Medido como se ve a {away} alturas de bandera: una bandera de un metro de alto, a {away} metros. Las partes más finas que {finest} de su altura se asignan a lo que tienen al lado. Es un modelo de la agudeza visual.",
  "focus.afar": "Qué queda de lejos",
  "focus.afarDescription": "{lasting} Nitidez de lo que debe verse: {steps}.",
  "focus.step": "a {distance}, {is}",
  "focus.stepMove": "a {distance}, de {was} a {is}",
  "focus.afarCaption":
    "Aguanta hasta {lasts}, solo por su tamaño: debe quedar {left} de ello, y su trozo mayor debe abarcar {arcminutes, plural, one {# minuto de arco} other {# minutos de arco}}, el tamaño de una letra que lee una agudeza de 20/20.",
  "focus.noEmblem": "no se halló emblema",
  "focus.lastsUnder":
    "{distance, plural, one {menos de # altura de bandera} other {menos de # alturas de bandera}}",
  "focus.lasts": "{distance, plural, one {# altura de bandera} other {# alturas de bandera}}",
  "focus.lastsOrMore":
    "{distance, plural, one {# altura de bandera o más} other {# alturas de bandera o más}}",
  "focus.nothingLeft": "no queda nada",
  "focus.tooSmall":
    "{distance, plural, one {Lo que debe verse es demasiado pequeño para reconocerse a # altura de bandera, la menor distancia probada, sean cuales sean sus colores.} other {Lo que debe verse es demasiado pequeño para reconocerse a # alturas de bandera, la menor distancia probada, sean cuales sean sus colores.}}",
  "focus.largeEnough":
    "{distance, plural, one {Lo que debe verse es bastante grande para reconocerse hasta a # altura de bandera, sean cuales sean sus colores.} other {Lo que debe verse es bastante grande para reconocerse hasta a # alturas de bandera, sean cuales sean sus colores.}}",
  "focus.largeEnoughAlways":
    "{distance, plural, one {Lo que debe verse es bastante grande para reconocerse a # altura de bandera, la mayor distancia probada.} other {Lo que debe verse es bastante grande para reconocerse a # alturas de bandera, la mayor distancia probada.}}",
};
