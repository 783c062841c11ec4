// Floor 7. Spanish: both flags as four kinds of sight have them.
import type { In } from "../en/all.ts";
import type { seen as english } from "../en/seen.ts";

export const seen: In<typeof english> = {
  "seen.title": "Visto de otro modo",
  "seen.caption":
    "Primero el original, luego el rediseño: aproximaciones de lo que los lectores daltónicos, y la impresión en gris, hacen de ambas banderas. No son una prueba de la vista de nadie. Los grises difieren en una diferencia de color, ΔE00: cuanto mayor, más fácil de distinguir.",
  "seen.greys": "diferencia de los dos grises más cercanos",
  "seen.clarity": "nitidez de la bandera entera",
  "seen.looks": "{name} parece {seen}",
  "seen.kept": "{names} {count, plural, one {conserva su nombre} other {conservan sus nombres}}",
  "seen.inGrey": "{name} en gris",
  "seen.byProtan": "{name} visto por ojos protanes",
  "seen.byDeutan": "{name} visto por ojos deutanes",
  "seen.byTritan": "{name} visto por ojos tritanes",
};
