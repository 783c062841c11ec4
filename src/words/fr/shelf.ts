// Floor 7. French: lists of the studies of one author, with one tag, that are decided, or of all of them.
import type { In } from "../en/all.ts";
import type { shelf as english } from "../en/shelf.ts";

export const shelf: In<typeof english> = {
  "shelf.studies": "{count, plural, one {# étude} other {# études}}",
  "shelf.authorCount": "{count, plural, one {# auteur} other {# auteurs}}",
  "shelf.tagCount": "{count, plural, one {# mot-clé} other {# mots-clés}}",
  "shelf.decisionCount": "{count, plural, one {# décision} other {# décisions}}",
  "shelf.authors": "Auteurs",
  "shelf.authorsLede": "Tous ceux qui ont présenté ici une étude, avec ce qu’ils proposent.",
  "shelf.noAuthors": "Aucune étude ne nomme encore d’auteur. Le premier nom figurera ici.",
  "shelf.tags": "Mots-clés",
  "shelf.tagsLede": "Ce dont traitent les études, dans les mots de leurs auteurs.",
  "shelf.noTags": "Aucune étude n’a encore de mot-clé. Les auteurs les mettent dans leurs études.",
  "shelf.author": "Auteur",
  "shelf.tag": "Mot-clé",
  "shelf.list": "Liste",
  "shelf.record": "Registre",
  "shelf.decisions": "Décisions",
  "shelf.ways": "{studies}. <index>{name}</index>, <all>toutes les études</all>",
  "shelf.waysOrdered":
    "{studies}, les plus récentes d’abord. <index>{name}</index>, <all>toutes les études</all>",
  "shelf.allAuthors": "Tous les auteurs",
  "shelf.allTags": "Tous les mots-clés",
  "shelf.byAuthor": "Par auteur",
  "shelf.aboutAuthor":
    "{count, plural, one {# étude} other {# études}} par {name} : une couleur changée, chaque limite mesurée.",
  "shelf.aboutTag":
    "{count, plural, one {# étude} other {# études}} sous le mot-clé {name} : une couleur changée, chaque limite mesurée.",
  "shelf.aboutDecisions":
    "{count, plural, one {# étude décidée} other {# études décidées}} : une couleur changée, chaque limite mesurée.",
  "shelf.aboutAll":
    "{count, plural, one {# étude} other {# études}} en tout : une couleur changée, chaque limite mesurée.",
  "shelf.with": "Avec {authors}",
};
