// Floor 7. Spanish: the chart of what each change does to clarity.
import type { In } from "../en/all.ts";
import type { gain as english } from "../en/gain.ts";

export const gain: In<typeof english> = {
  "gain.title": "Qué hace cada cambio con la nitidez",
  "gain.order": "Las mayores ganancias primero.",
  "gain.key":
    "Un anillo para el original, un punto para el rediseño; línea discontinua donde la nitidez baja.",
  "gain.othersListed":
    "{count, plural, one {El otro estudio está en la lista de todos} other {Los otros # estudios están en la lista de todos}}",
  "gain.othersOnFront":
    "{count, plural, one {El otro estudio está en la portada} other {Los otros # estudios están en la portada}}",
  "gain.told": "{count, plural, one {# estudio} other {# estudios}}: la nitidez {ways}.",
  "gain.rises": "sube en {count}",
  "gain.falls": "baja en {count}",
  "gain.stays": "se mantiene en {count}",
  "gain.most": "Donde más sube es en «{title}», de {before} a {after}.",
  "gain.here": "En este estudio va de {before} a {after}.",
};
