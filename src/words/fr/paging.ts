// Floor 7. French: the ways between the pages of a long list.
import type { In } from "../en/all.ts";
import type { paging as english } from "../en/paging.ts";

export const paging: In<typeof english> = {
  "paging.ways": "Pages de cette liste",
  "paging.place": "Page {number} sur {count}",
  "paging.title": "{title}, page {number} sur {count}",
  "paging.onward": "{place}. <next>suivante</next>, <last>dernière</last>",
  "paging.both":
    "{place}. <first>Première</first>, <previous>précédente</previous>, <next>suivante</next>, <last>dernière</last>",
  "paging.back": "{place}. <first>Première</first>, <previous>précédente</previous>",
};
