// Floor 7. Arabic: the measures of an edge.
import type { In } from "../en/all.ts";
import type { metric as english } from "../en/metric.ts";

export const metric: In<typeof english> = {
  "metric.contrastRatio": "نسبة التباين",
  "metric.deltaE00": "فرق اللون، ΔE00",
  "metric.hueOnly": "لا يختلف إلا كنه اللون",
  "metric.tincture": "قاعدة الصبغات",
  "metric.yes": "نعم",
  "metric.no": "لا",
  "metric.bothMetals": "كلاهما معدن",
  "metric.bothColours": "كلاهما لون",
  "metric.noObjection": "لا اعتراض",
};
