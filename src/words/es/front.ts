// Floor 7. Spanish: the front page.
import type { In } from "../en/all.ts";
import type { front as english } from "../en/front.ts";

export const front: In<typeof english> = {
  "front.nominate": "¿Una bandera que merece un estudio? <name>Señálela y diga por qué</name>",
  "front.empty":
    "Aún no hay nada publicado. El primer estudio figurará en esta página; hasta entonces, <method>el método</method> cuenta cómo se medirá.",
  "front.earlier": "Estudios anteriores",
  "front.edgeless": "Sin límite que medir: <list></list>.",
  "front.more": "{count, plural, one {# más} other {# más}}",
};
