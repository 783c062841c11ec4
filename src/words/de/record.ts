// Floor 7. German: the record at the end of a study.
import type { In } from "../en/all.ts";
import type { record as english } from "../en/record.ts";

export const record: In<typeof english> = {
  "record.onlyIn": "nur {part} (<selector></selector>)",
  "record.source": "Quelle",
  "record.sourceIs": "Quelle: {source}",
  "record.licence": "Lizenz: {licence}.",
  "record.uncertain": "Wo die Zahlen weniger sicher sind",
  "record.colours": "Farben",
  "record.drawings": "Zeichnungen und Daten",
  "record.tags": "Stichwörter",
  "record.history": "Verlauf",
  "record.heading": "Zum Nachschlagen",
  "record.tincture": "Nach der Tinkturregel",
  "record.facts": "Tatsachen",
  "record.reflectanceAndTincture": "Reflexionsgrad und Tinktur jeder Farbe",
  "record.reflectance": "Reflexionsgrad jeder Farbe",
  "record.noSource": "Die Studie nennt keine Quelle für die ursprüngliche Zeichnung.",
  "record.maker":
    "Angenommen: ein <sheet>Blatt für Hersteller</sheet> mit Maßverhältnissen, Konstruktion und Farben.",
  "record.lesson": "Bilder jedes Schritts, für Folien und Aufnahmen",
  "record.originalSvg": "Original, SVG",
  "record.redesignSvg": "Neuentwurf, SVG",
  "record.originalPng": "Original, PNG",
  "record.redesignPng": "Neuentwurf, PNG",
  "record.edgesCsv": "Alle Kanten, CSV",
  "record.json": "Alles Gemessene, JSON",
  "record.selectedPart": "der ausgewählte Teil",
  "record.drawing": "Die Zeichnung",
  "record.by": "{title}, von {author}",
  "record.unofficial":
    "Der Neuentwurf ist eine inoffizielle Studie: ein Vorschlag zur Diskussion, keine Flagge in Gebrauch.",
  "record.unofficialBy":
    "Der Neuentwurf ist eine inoffizielle Studie, herausgegeben von {society}: ein Vorschlag zur Diskussion, keine Flagge in Gebrauch.",
};
