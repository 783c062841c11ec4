// Floor 7. German: the edges that a change makes worse, as clauses in a list.
import type { In } from "../en/all.ts";
import type { price as english } from "../en/price.ts";

export const price: In<typeof english> = {
  "price.merged": "{was} wird eine Farbe",
  "price.parted": "{now} trennt sich, {grade} mit {contrast}",
  "price.falls": "{was} fällt von {from} auf {to}",
  "price.fallsRenamed": "{was}, jetzt {now}, fällt von {from} auf {to}",
  "price.contrast": "Kontrast {contrast} ({grade})",
  "price.graded": "{contrast} ({grade})",
  "price.more": "{count, plural, one {# weitere} other {# weitere}}",
};
