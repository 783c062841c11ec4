// Floor 7. Spanish: the measures of an edge.
import type { In } from "../en/all.ts";
import type { metric as english } from "../en/metric.ts";

export const metric: In<typeof english> = {
  "metric.contrastRatio": "Razón de contraste",
  "metric.deltaE00": "Diferencia de color, ΔE00",
  "metric.hueOnly": "Solo difiere el tono",
  "metric.tincture": "Regla de los esmaltes",
  "metric.yes": "sí",
  "metric.no": "no",
  "metric.bothMetals": "ambos metales",
  "metric.bothColours": "ambos colores",
  "metric.noObjection": "sin reparo",
};
