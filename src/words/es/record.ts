// Floor 7. Spanish: the record at the end of a study.
import type { In } from "../en/all.ts";
import type { record as english } from "../en/record.ts";

export const record: In<typeof english> = {
  "record.onlyIn": "solo en {part} (<selector></selector>)",
  "record.source": "Fuente",
  "record.sourceIs": "Fuente: {source}",
  "record.licence": "Licencia: {licence}.",
  "record.uncertain": "Donde las cifras son menos seguras",
  "record.colours": "Colores",
  "record.drawings": "Dibujos y datos",
  "record.tags": "Etiquetas",
  "record.history": "Historial",
  "record.heading": "Para consulta",
  "record.tincture": "Según la regla de los esmaltes",
  "record.facts": "Datos",
  "record.reflectanceAndTincture": "Reflectancia y esmalte de cada uno",
  "record.reflectance": "Reflectancia de cada uno",
  "record.noSource": "El estudio no nombra fuente del dibujo original.",
  "record.maker":
    "Adoptado: una <sheet>hoja para fabricantes</sheet>, con proporciones, construcción y colores.",
  "record.lesson": "Imágenes de cada paso, para diapositivas y grabaciones",
  "record.originalSvg": "Original, SVG",
  "record.redesignSvg": "Rediseño, SVG",
  "record.originalPng": "Original, PNG",
  "record.redesignPng": "Rediseño, PNG",
  "record.edgesCsv": "Todos los límites, CSV",
  "record.json": "Todo lo medido, JSON",
  "record.selectedPart": "la parte elegida",
  "record.drawing": "El dibujo",
  "record.by": "{title}, de {author}",
  "record.unofficial":
    "El rediseño es un estudio no oficial: una propuesta para discutir, no una bandera en uso.",
  "record.unofficialBy":
    "El rediseño es un estudio no oficial publicado por {society}: una propuesta para discutir, no una bandera en uso.",
};
