// Floor 7. German: lists of the studies of one author, with one tag, that are decided, or of all of them.
import type { In } from "../en/all.ts";
import type { shelf as english } from "../en/shelf.ts";

export const shelf: In<typeof english> = {
  "shelf.studies": "{count, plural, one {# Studie} other {# Studien}}",
  "shelf.authorCount": "{count, plural, one {# Autor} other {# Autoren}}",
  "shelf.tagCount": "{count, plural, one {# Stichwort} other {# Stichwörter}}",
  "shelf.decisionCount": "{count, plural, one {# Entscheidung} other {# Entscheidungen}}",
  "shelf.authors": "Autoren",
  "shelf.authorsLede": "Alle, die hier eine Studie vorgelegt haben, mit dem, was sie vorschlagen.",
  "shelf.noAuthors": "Noch nennt keine Studie einen Autor. Hier wird der erste Name stehen.",
  "shelf.tags": "Stichwörter",
  "shelf.tagsLede": "Wovon die Studien handeln, in den Worten ihrer Autoren.",
  "shelf.noTags": "Noch hat keine Studie ein Stichwort. Autoren setzen sie in ihre Studien.",
  "shelf.author": "Autor",
  "shelf.tag": "Stichwort",
  "shelf.list": "Liste",
  "shelf.record": "Verzeichnis",
  "shelf.decisions": "Entscheidungen",
  "shelf.ways": "{studies}. <index>{name}</index>, <all>alle Studien</all>",
  "shelf.waysOrdered": "{studies}, die neueste zuerst. <index>{name}</index>, <all>alle Studien</all>",
  "shelf.allAuthors": "Alle Autoren",
  "shelf.allTags": "Alle Stichwörter",
  "shelf.byAuthor": "Nach Autoren",
  "shelf.aboutAuthor":
    "{count, plural, one {# Studie} other {# Studien}} von {name}: eine Farbe geändert, jede Kante gemessen.",
  "shelf.aboutTag":
    "{count, plural, one {# Studie} other {# Studien}} mit dem Stichwort {name}: eine Farbe geändert, jede Kante gemessen.",
  "shelf.aboutDecisions":
    "{count, plural, one {# entschiedene Studie} other {# entschiedene Studien}}: eine Farbe geändert, jede Kante gemessen.",
  "shelf.aboutAll":
    "{count, plural, one {# Studie} other {# Studien}} im Ganzen: eine Farbe geändert, jede Kante gemessen.",
  "shelf.with": "Mit {authors}",
};
