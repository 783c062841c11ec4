// Floor 7. Spanish: what stands around the pages that a gallery writes itself.
import type { In } from "../en/all.ts";
import type { ownPage as english } from "../en/ownpage.ts";

export const ownPage: In<typeof english> = {
  "ownPage.pages": "Páginas",
  "ownPage.pagesOf": "Páginas de {gallery}.",
  "ownPage.beside": "Páginas vecinas",
  "ownPage.next": "Sigue: <a>{title}</a>",
};
