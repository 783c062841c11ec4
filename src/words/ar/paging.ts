// Floor 7. Arabic: the ways between the pages of a long list.
import type { In } from "../en/all.ts";
import type { paging as english } from "../en/paging.ts";

export const paging: In<typeof english> = {
  "paging.ways": "صفحات هذه القائمة",
  "paging.place": "الصفحة {number} من {count}",
  "paging.title": "{title}، الصفحة {number} من {count}",
  "paging.onward": "{place}. <next>التالية</next>، <last>الأخيرة</last>",
  "paging.both":
    "{place}. <first>الأولى</first>، <previous>السابقة</previous>، <next>التالية</next>، <last>الأخيرة</last>",
  "paging.back": "{place}. <first>الأولى</first>، <previous>السابقة</previous>",
};
