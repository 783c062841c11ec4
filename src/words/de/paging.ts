// Floor 7. German: the ways between the pages of a long list.
import type { In } from "../en/all.ts";
import type { paging as english } from "../en/paging.ts";

export const paging: In<typeof english> = {
  "paging.ways": "Seiten dieser Liste",
  "paging.place": "Seite {number} von {count}",
  "paging.title": "{title}, Seite {number} von {count}",
  "paging.onward": "{place}. <next>weiter</next>, <last>letzte</last>",
  "paging.both":
    "{place}. <first>Erste</first>, <previous>zurück</previous>, <next>weiter</next>, <last>letzte</last>",
  "paging.back": "{place}. <first>Erste</first>, <previous>zurück</previous>",
};
