// Floor 7. French: the form that finds studies.
import type { In } from "../en/all.ts";
import type { finder as english } from "../en/finder.ts";

export const finder: In<typeof english> = {
  "finder.words": "Mots",
  "finder.order": "Ordre",
  "finder.more": "Plus de filtres",
  "finder.any": "Indifférent",
  "finder.find": "Chercher",
  "finder.all": "Tout montrer",
  "finder.none": "Aucune étude ne répond à tout cela. Retirez un mot ou un choix, ou montrez tout.",
  "finder.pages": "Pages où figurent ces mots : <list></list>",
  "finder.status": "État",
  "finder.verdict": "Verdict",
  "finder.tag": "Mot-clé",
  "finder.author": "Auteur",
  "finder.mostGained": "Plus grand gain",
  "finder.newest": "Plus récentes",
  "finder.mostLost": "Plus grande perte",
  "finder.leastClear": "Nouveau dessin le moins net",
  "finder.title": "Titre",
  "finder.found": "{found} sur {count, plural, one {# étude} other {# études}}",
  "finder.foundListed": "{found} sur les {listed} de cette liste",
};
