// Floor 7. Spanish: which flags a redesign could be taken for.
import type { In } from "../en/all.ts";
import type { likeness as english } from "../en/likeness.ts";

export const likeness: In<typeof english> = {
  "likeness.figure": "Diferencia media de color ΔE00 {difference}",
  "likeness.figureMirrored": "Diferencia media de color ΔE00 {difference}, vista por el reverso",
  "likeness.figureTurned": "Diferencia media de color ΔE00 {difference}, cabeza abajo",
  "likeness.flags": "{count, plural, one {# otra bandera o rediseño} other {# otras banderas y rediseños}}",
  "likeness.hardly":
    "Difícilmente. De {flags}, lo más cercano: {nearest}, con {figure}; por debajo de {limit}, una bandera se toma fácilmente por otra.",
  "likeness.could":
    "Podría. De {flags}, {count, plural, one {una está cerca} other {varias están cerca}}: {names}; por debajo de {limit}, una bandera se toma fácilmente por otra, y la más cercana tiene {figure}.",
  "likeness.rivals": "Las otras propuestas para esta bandera no cuentan.",
  "likeness.own": "Este rediseño",
};
