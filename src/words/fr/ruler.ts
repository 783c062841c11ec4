// Floor 7. French: the contrast ruler.
import type { In } from "../en/all.ts";
import type { ruler as english } from "../en/ruler.ts";

export const ruler: In<typeof english> = {
  "ruler.caption":
    "Le contraste de deux couleurs qui se touchent : un anneau pour l’original, un point pour le nouveau dessin ; trait épais pour une longue limite.",
  "ruler.fallsNote": "Discontinu là où le contraste baisse.",
  "ruler.mergedNote": "Une croix là où deux couleurs n’en font plus qu’une.",
  "ruler.outlineNote": "Le contour est celui de ce qui doit se voir, qui compte double.",
  "ruler.nearNote": "Au seuil : sur une autre étoffe, le degré serait un autre.",
  "ruler.hueNote":
    "Par la teinte seule : les deux diffèrent par la teinte et à peine par la clarté, et s’effacent donc au crépuscule et en gris.",
  "ruler.ladderNote":
    "À côté, combien de lumière rend l’étoffe de chaque couleur : deux à la même hauteur sont difficiles à distinguer.",
  "ruler.edge": "Limite",
  "ruler.contrast": "Contraste, de l’original au nouveau dessin",
  "ruler.outcome": "Résultat",
  "ruler.guess": "Votre estimation",
  "ruler.title": "Règle des contrastes",
  "ruler.same":
    "{count, plural, one {# limite qui reste ce qu’elle était} other {# limites qui restent ce qu’elles étaient}}",
  "ruler.moreMoved": "{count, plural, one {# autre limite qui change} other {# autres limites qui changent}}",
  "ruler.moreMovedAndSame": "{moved}, et {same}",
  "ruler.row": "{edge}, {extent} : contraste {contrast}, {grades}",
};
