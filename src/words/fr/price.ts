// Floor 7. French: the edges that a change makes worse, as clauses in a list.
import type { In } from "../en/all.ts";
import type { price as english } from "../en/price.ts";

export const price: In<typeof english> = {
  "price.merged": "{was} ne font plus qu’une couleur",
  "price.parted": "{now} se séparent, limite {grade}, contraste de {contrast}",
  "price.falls": "{was} passe de {from} à {to}",
  "price.fallsRenamed": "{was}, désormais {now}, passe de {from} à {to}",
  "price.contrast": "{contrast} de contraste ({grade})",
  "price.graded": "{contrast} ({grade})",
  "price.more": "{count, plural, one {# autre} other {# autres}}",
};
