// Floor 7. German: the form that finds studies.
import type { In } from "../en/all.ts";
import type { finder as english } from "../en/finder.ts";

export const finder: In<typeof english> = {
  "finder.words": "Wörter",
  "finder.order": "Reihenfolge",
  "finder.more": "Weitere Filter",
  "finder.any": "Alle",
  "finder.find": "Suchen",
  "finder.all": "Alle zeigen",
  "finder.none": "Keine Studie passt zu alldem. Ein Wort oder eine Auswahl weglassen oder alle zeigen.",
  "finder.pages": "Seiten mit diesen Wörtern: <list></list>",
  "finder.status": "Stand",
  "finder.verdict": "Urteil",
  "finder.tag": "Stichwort",
  "finder.author": "Autor",
  "finder.mostGained": "Größter Gewinn",
  "finder.newest": "Neueste",
  "finder.mostLost": "Größter Verlust",
  "finder.leastClear": "Am wenigsten klarer Neuentwurf",
  "finder.title": "Titel",
  "finder.found": "{found} von {count, plural, one {# Studie} other {# Studien}}",
  "finder.foundListed": "{found} der {listed} hier aufgeführten",
};
