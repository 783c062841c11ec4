// Floor 7. Arabic: what stands around the pages that a gallery writes itself.
import type { In } from "../en/all.ts";
import type { ownPage as english } from "../en/ownpage.ts";

export const ownPage: In<typeof english> = {
  "ownPage.pages": "صفحات",
  "ownPage.pagesOf": "صفحات {gallery}.",
  "ownPage.beside": "صفحات إلى جانب هذه",
  "ownPage.next": "التالي: <a>{title}</a>",
};
