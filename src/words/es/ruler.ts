// Floor 7. Spanish: the contrast ruler.
import type { In } from "../en/all.ts";
import type { ruler as english } from "../en/ruler.ts";

export const ruler: In<typeof english> = {
  "ruler.caption":
    "El contraste de dos colores que se tocan: un anillo para el original, un punto para el rediseño; trazo grueso para un límite largo.",
  "ruler.fallsNote": "Discontinuo donde el contraste baja.",
  "ruler.mergedNote": "Una cruz donde dos colores se vuelven uno.",
  "ruler.outlineNote": "El contorno es el de lo que debe verse, que cuenta doble.",
  "ruler.nearNote": "En el umbral: sobre otra tela el grado sería otro.",
  "ruler.hueNote":
    "Solo por el tono: los dos difieren en el tono y apenas en la claridad, así que se borran al anochecer y en gris.",
  "ruler.ladderNote":
    "Al lado, cuánta luz devuelve la tela de cada color: dos a la misma altura son difíciles de distinguir.",
  "ruler.edge": "Límite",
  "ruler.contrast": "Contraste, del original al rediseño",
  "ruler.outcome": "Resultado",
  "ruler.guess": "Su estimación",
  "ruler.title": "Regla de contraste",
  "ruler.same":
    "{count, plural, one {# límite que queda como estaba} other {# límites que quedan como estaban}}",
  "ruler.moreMoved": "{count, plural, one {# límite más que cambia} other {# límites más que cambian}}",
  "ruler.moreMovedAndSame": "{moved}, y {same}",
  "ruler.row": "{edge}, {extent}: contraste {contrast}, {grades}",
};
