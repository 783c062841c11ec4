// Floor 7. German: the page of a series, and where a study stands in one.
import type { In } from "../en/all.ts";
import type { seriesPage as english } from "../en/seriespage.ts";

export const seriesPage: In<typeof english> = {
  "seriesPage.count": "Eine Reihe: {entries}",
  "seriesPage.description": "Eine Reihe: {entries}.",
  "seriesPage.show": "Schritt für Schritt",
  "seriesPage.sheet": "Für den Unterricht",
  "seriesPage.vote": "Abstimmen",
  "seriesPage.step": "Nummer {number}: {title}",
  "seriesPage.today": "Wie sie heute sind",
  "seriesPage.gain": "Klarheit, Studie für Studie",
  "seriesPage.cite": "Zitierweise",
  "seriesPage.unofficial": "Die Neuentwürfe sind inoffizielle Studien.",
  "seriesPage.bare": "Ohne Studie",
  "seriesPage.ask": "Was würden Sie hier ändern?",
  "seriesPage.series": "Reihen",
  "seriesPage.firstShown": "{entries}, die ersten {number} gezeigt",
  "seriesPage.places": "In Reihen",
  "seriesPage.place": "{number} von {count} in <a>{title}</a>",
  "seriesPage.before": "Davor: <a>{title}</a>",
  "seriesPage.next": "Danach: <a>{title}</a>",
};
