// Floor 7. Spanish: what makes the figures of a drawing less certain.
import type { In } from "../en/all.ts";
import type { doubt as english } from "../en/doubt.ts";

export const doubt: In<typeof english> = {
  "doubt.joined":
    "El dibujo tiene más colores de los que se miden por separado: {count, plural, one {el que menos se ve se mide con uno parecido que se ve más, o en conjunto, como «{name}».} other {los # que menos se ven se miden con uno parecido que se ve más, o en conjunto, como «{name}».}}",
  "doubt.faint":
    "{count, plural, one {Una forma se ve a menos de la mitad y queda fuera de la medición.} other {# formas se ven a menos de la mitad y quedan fuera de la medición.}}",
  "doubt.inexact": "Solo se pudo distinguir con exactitud {share} del dibujo; sus cifras son menos seguras.",
  "doubt.nearLimit": "Cerca del límite de la vista: partes en {names}.",
  "doubt.effect": "El dibujo del autor tiene lo que aquí no se muestra ni se mide: {looks}.",
};
