// Floor 7. Spanish: the page of a series, and where a study stands in one.
import type { In } from "../en/all.ts";
import type { seriesPage as english } from "../en/seriespage.ts";

export const seriesPage: In<typeof english> = {
  "seriesPage.count": "Una serie: {entries}",
  "seriesPage.description": "Una serie: {entries}.",
  "seriesPage.show": "Paso a paso",
  "seriesPage.sheet": "Para la clase",
  "seriesPage.vote": "Votar",
  "seriesPage.step": "Número {number}: {title}",
  "seriesPage.today": "Como son hoy",
  "seriesPage.gain": "La nitidez, estudio a estudio",
  "seriesPage.cite": "Citar esta serie",
  "seriesPage.unofficial": "Los rediseños son estudios no oficiales.",
  "seriesPage.bare": "Sin estudio",
  "seriesPage.ask": "¿Qué cambiaría usted aquí?",
  "seriesPage.series": "Series",
  "seriesPage.firstShown": "{entries}, se muestran los {number} primeros",
  "seriesPage.places": "En series",
  "seriesPage.place": "{number} de {count} en <a>{title}</a>",
  "seriesPage.before": "Antes: <a>{title}</a>",
  "seriesPage.next": "Después: <a>{title}</a>",
};
