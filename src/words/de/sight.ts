// Floor 7. German: kinds of sight.
import type { In } from "../en/all.ts";
import type { sight as english } from "../en/sight.ts";

export const sight: In<typeof english> = {
  "sight.protan": "Protan",
  "sight.deutan": "Deutan",
  "sight.tritan": "Tritan",
  "sight.grey": "Grau",
  "sight.protanMeans": "ohne die Zapfen für lange Wellen",
  "sight.deutanMeans": "ohne die Zapfen für mittlere Wellen",
  "sight.tritanMeans": "ohne die Zapfen für kurze Wellen",
  "sight.greyMeans": "wie ein Schwarzweißkopierer es druckt",
};
