// Floor 7. Arabic: the edges that a change makes worse, as clauses in a list.
import type { In } from "../en/all.ts";
import type { price as english } from "../en/price.ts";

export const price: In<typeof english> = {
  "price.merged": "{was}: يصيران لونًا واحدًا",
  "price.parted": "{now}: ينفصلان بحافة {grade}، {contrast}",
  "price.falls": "حافة {was} تهبط من {from} إلى {to}",
  "price.fallsRenamed": "حافة {was}، وهي الآن {now}، تهبط من {from} إلى {to}",
  "price.contrast": "تباين {contrast} ({grade})",
  "price.graded": "{contrast} ({grade})",
  "price.more":
    "{count, plural, zero {لا غيرها} one {حافة أخرى} two {حافتان أخريان} few {# حواف أخرى} many {# حافة أخرى} other {# حافة أخرى}}",
};
