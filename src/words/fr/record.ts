// Floor 7. French: the record at the end of a study.
import type { In } from "../en/all.ts";
import type { record as english } from "../en/record.ts";

export const record: In<typeof english> = {
  "record.onlyIn": "seulement dans {part} (<selector></selector>)",
  "record.source": "Source",
  "record.sourceIs": "Source : {source}",
  "record.licence": "Licence : {licence}.",
  "record.uncertain": "Là où les chiffres sont moins sûrs",
  "record.colours": "Couleurs",
  "record.drawings": "Dessins et données",
  "record.tags": "Mots-clés",
  "record.history": "Historique",
  "record.heading": "Pour mémoire",
  "record.tincture": "Selon la règle de contrariété des couleurs",
  "record.facts": "Faits",
  "record.reflectanceAndTincture": "Réflectance et émail de chacune",
  "record.reflectance": "Réflectance de chacune",
  "record.noSource": "L’étude ne nomme pas de source pour le dessin d’origine.",
  "record.maker":
    "Adoptée : une <sheet>fiche pour fabricants</sheet>, avec proportions, construction et couleurs.",
  "record.lesson": "Images de chaque étape, pour projections et enregistrements",
  "record.originalSvg": "Original, SVG",
  "record.redesignSvg": "Nouveau dessin, SVG",
  "record.originalPng": "Original, PNG",
  "record.redesignPng": "Nouveau dessin, PNG",
  "record.edgesCsv": "Toutes les limites, CSV",
  "record.json": "Tout ce qui est mesuré, JSON",
  "record.selectedPart": "la partie choisie",
  "record.drawing": "Le dessin",
  "record.by": "{title}, par {author}",
  "record.unofficial":
    "Le nouveau dessin est une étude non officielle : une proposition à discuter, non un drapeau en usage.",
  "record.unofficialBy":
    "Le nouveau dessin est une étude non officielle publiée par {society} : une proposition à discuter, non un drapeau en usage.",
};
