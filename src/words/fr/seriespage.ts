// Floor 7. French: the page of a series, and where a study stands in one.
import type { In } from "../en/all.ts";
import type { seriesPage as english } from "../en/seriespage.ts";

export const seriesPage: In<typeof english> = {
  "seriesPage.count": "Une série : {entries}",
  "seriesPage.description": "Une série : {entries}.",
  "seriesPage.show": "Pas à pas",
  "seriesPage.sheet": "Pour la classe",
  "seriesPage.vote": "Voter",
  "seriesPage.step": "Numéro {number} : {title}",
  "seriesPage.today": "Tels qu’ils sont aujourd’hui",
  "seriesPage.gain": "La netteté, étude par étude",
  "seriesPage.cite": "Citer cette série",
  "seriesPage.unofficial": "Les nouveaux dessins sont des études non officielles.",
  "seriesPage.bare": "Sans étude",
  "seriesPage.ask": "Que changeriez-vous ici ?",
  "seriesPage.series": "Séries",
  "seriesPage.firstShown": "{entries}, les {number} premiers montrés",
  "seriesPage.places": "Dans des séries",
  "seriesPage.place": "{number} sur {count} dans <a>{title}</a>",
  "seriesPage.before": "Avant : <a>{title}</a>",
  "seriesPage.next": "Après : <a>{title}</a>",
};
