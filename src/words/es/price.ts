// Floor 7. Spanish: the edges that a change makes worse, as clauses in a list.
import type { In } from "../en/all.ts";
import type { price as english } from "../en/price.ts";

export const price: In<typeof english> = {
  "price.merged": "{was} se vuelve un solo color",
  "price.parted": "{now} se separa, {grade}, con {contrast}",
  "price.falls": "{was} baja de {from} a {to}",
  "price.fallsRenamed": "{was}, ahora {now}, baja de {from} a {to}",
  "price.contrast": "un contraste de {contrast} ({grade})",
  "price.graded": "{contrast} ({grade})",
  "price.more": "{count, plural, one {# más} other {# más}}",
};
