// Floor 7. Spanish: the ways between the pages of a long list.
import type { In } from "../en/all.ts";
import type { paging as english } from "../en/paging.ts";

export const paging: In<typeof english> = {
  "paging.ways": "Páginas de esta lista",
  "paging.place": "Página {number} de {count}",
  "paging.title": "{title}, página {number} de {count}",
  "paging.onward": "{place}. <next>siguiente</next>, <last>última</last>",
  "paging.both":
    "{place}. <first>Primera</first>, <previous>anterior</previous>, <next>siguiente</next>, <last>última</last>",
  "paging.back": "{place}. <first>Primera</first>, <previous>anterior</previous>",
};
