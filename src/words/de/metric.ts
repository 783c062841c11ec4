// Floor 7. German: the measures of an edge.
import type { In } from "../en/all.ts";
import type { metric as english } from "../en/metric.ts";

export const metric: In<typeof english> = {
  "metric.contrastRatio": "Kontrastverhältnis",
  "metric.deltaE00": "Farbabstand, ΔE00",
  "metric.hueOnly": "Nur im Farbton verschieden",
  "metric.tincture": "Tinkturregel",
  "metric.yes": "ja",
  "metric.no": "nein",
  "metric.bothMetals": "beides Metall",
  "metric.bothColours": "beides Farbe",
  "metric.noObjection": "kein Einwand",
};
