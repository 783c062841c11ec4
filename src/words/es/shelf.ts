// Floor 7. Spanish: lists of the studies of one author, with one tag, that are decided, or of all of them.
import type { In } from "../en/all.ts";
import type { shelf as english } from "../en/shelf.ts";

export const shelf: In<typeof english> = {
  "shelf.studies": "{count, plural, one {# estudio} other {# estudios}}",
  "shelf.authorCount": "{count, plural, one {# autor} other {# autores}}",
  "shelf.tagCount": "{count, plural, one {# etiqueta} other {# etiquetas}}",
  "shelf.decisionCount": "{count, plural, one {# decisión} other {# decisiones}}",
  "shelf.authors": "Autores",
  "shelf.authorsLede": "Cuantos han presentado aquí un estudio, con lo que proponen.",
  "shelf.noAuthors": "Ningún estudio nombra aún a un autor. Aquí figurará el primer nombre.",
  "shelf.tags": "Etiquetas",
  "shelf.tagsLede": "De qué tratan los estudios, en palabras de sus autores.",
  "shelf.noTags": "Ningún estudio tiene aún etiqueta. Las ponen los autores en sus estudios.",
  "shelf.author": "Autor",
  "shelf.tag": "Etiqueta",
  "shelf.list": "Lista",
  "shelf.record": "Registro",
  "shelf.decisions": "Decisiones",
  "shelf.ways": "{studies}. <index>{name}</index>, <all>todos los estudios</all>",
  "shelf.waysOrdered":
    "{studies}, los más recientes primero. <index>{name}</index>, <all>todos los estudios</all>",
  "shelf.allAuthors": "Todos los autores",
  "shelf.allTags": "Todas las etiquetas",
  "shelf.byAuthor": "Por autor",
  "shelf.aboutAuthor":
    "{count, plural, one {# estudio} other {# estudios}} de {name}: un color cambiado, cada límite medido.",
  "shelf.aboutTag":
    "{count, plural, one {# estudio} other {# estudios}} con la etiqueta {name}: un color cambiado, cada límite medido.",
  "shelf.aboutDecisions":
    "{count, plural, one {# estudio decidido} other {# estudios decididos}}: un color cambiado, cada límite medido.",
  "shelf.aboutAll":
    "{count, plural, one {# estudio} other {# estudios}} en total: un color cambiado, cada límite medido.",
  "shelf.with": "Con {authors}",
};
