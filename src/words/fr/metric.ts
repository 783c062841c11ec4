// Floor 7. French: the measures of an edge.
import type { In } from "../en/all.ts";
import type { metric as english } from "../en/metric.ts";

export const metric: In<typeof english> = {
  "metric.contrastRatio": "Rapport de contraste",
  "metric.deltaE00": "Écart de couleur, ΔE00",
  "metric.hueOnly": "Seule la teinte diffère",
  "metric.tincture": "Règle de contrariété",
  "metric.yes": "oui",
  "metric.no": "non",
  "metric.bothMetals": "deux métaux",
  "metric.bothColours": "deux couleurs",
  "metric.noObjection": "rien à redire",
};
