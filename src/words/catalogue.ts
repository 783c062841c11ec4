// Floor 7. Every word and sentence that a reader sees, by language.

import { arabic } from "./ar/all.ts";
import { german } from "./de/all.ts";
import { type Catalogue, english } from "./en/all.ts";
import { spanish } from "./es/all.ts";
import { french } from "./fr/all.ts";

const catalogues: Readonly<Record<string, Catalogue>> = {
  en: english,
  ar: arabic,
  de: german,
  es: spanish,
  fr: french,
};

/** The languages that all messages are written in, as BCP 47 tags. */
export const languages: readonly string[] = Object.keys(catalogues);

/** The messages in `language`, a BCP 47 tag, or in English where there are none: `de-AT` has those of `de`. */
export function findCatalogue(language: string): Catalogue {
  return catalogues[new Intl.Locale(language).language] ?? english;
}
