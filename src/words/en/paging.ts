// Floor 7. English: the ways between the pages of a long list.

export const paging = {
  /** Names the ways, read to screen readers. */
  "paging.ways": "Pages of this list",
  /** Numbers as text. */
  "paging.place": "Page {number} of {count}",
  "paging.title": "{title}, page {number} of {count}",
  /** `place` is “Page 2 of 15”. */
  "paging.onward": "{place}. <next>next</next>, <last>last</last>",
  "paging.both":
    "{place}. <first>First</first>, <previous>previous</previous>, <next>next</next>, <last>last</last>",
  "paging.back": "{place}. <first>First</first>, <previous>previous</previous>",
} as const;
