// Floor 7. French: the edges that a change makes worse, as clauses in a list.
import type { In } from "../en/all.ts";
import type { price as english } from "../en/price.ts";

export const price: In<typeof english> = {
  "price.merged": "{was} ne fait plus qu’une couleur",
  "price.parted": "{now} se sépare, {grade}, à {contrast}",
  "price.falls": "{was} passe de {from} à {to}",
  "price.fallsRenamed": "{was}, devenu {now}, passe de {from} à {to}",
  "price.contrast": "un contraste de {contrast} ({grade})",
  "price.graded": "{contrast} ({grade})",
  "price.more": "{count, plural, one {# autre} other {# autres}}",
};
