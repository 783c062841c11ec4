// Floor 7. French: what stands around the pages that a gallery writes itself.
import type { In } from "../en/all.ts";
import type { ownPage as english } from "../en/ownpage.ts";

export const ownPage: In<typeof english> = {
  "ownPage.pages": "Pages",
  "ownPage.pagesOf": "Pages : {gallery}.",
  "ownPage.beside": "Pages voisines",
  "ownPage.next": "Suite : <a>{title}</a>",
};
