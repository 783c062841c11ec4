// Floor 7. German: what stands around the pages that a gallery writes itself.
import type { In } from "../en/all.ts";
import type { ownPage as english } from "../en/ownpage.ts";

export const ownPage: In<typeof english> = {
  "ownPage.pages": "Seiten",
  "ownPage.pagesOf": "Seiten von {gallery}.",
  "ownPage.beside": "Seiten neben dieser",
  "ownPage.next": "Weiter: <a>{title}</a>",
};
