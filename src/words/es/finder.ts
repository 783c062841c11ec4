// Floor 7. Spanish: the form that finds studies.
import type { In } from "../en/all.ts";
import type { finder as english } from "../en/finder.ts";

export const finder: In<typeof english> = {
  "finder.words": "Palabras",
  "finder.order": "Orden",
  "finder.more": "Más filtros",
  "finder.any": "Cualquiera",
  "finder.find": "Buscar",
  "finder.all": "Mostrar todo",
  "finder.none": "Ningún estudio cumple todo esto. Quite una palabra o una opción, o muestre todo.",
  "finder.pages": "Páginas con estas palabras: <list></list>",
  "finder.status": "Estado",
  "finder.verdict": "Veredicto",
  "finder.tag": "Etiqueta",
  "finder.author": "Autor",
  "finder.mostGained": "Mayor ganancia",
  "finder.newest": "Más recientes",
  "finder.mostLost": "Mayor pérdida",
  "finder.leastClear": "Rediseño menos nítido",
  "finder.title": "Título",
  "finder.found": "{found} de {count, plural, one {# estudio} other {# estudios}}",
  "finder.foundListed": "{found} de los {listed} que figuran aquí",
};
