// Floor 7. German: the marks of a flag.
import type { In } from "../en/all.ts";
import type { mark as english } from "../en/mark.ts";

export const mark: In<typeof english> = {
  "mark.clarity": "Klarheit",
  "mark.contrast": "Kontrast",
  "mark.length": "Länge",
  "mark.near": "an der Schwelle",
  "mark.nearNow": "jetzt an der Schwelle",
  "mark.nearBefore": "zuvor an der Schwelle",
  "mark.hue": "nur im Farbton",
  "mark.hueNow": "jetzt nur im Farbton",
  "mark.hueBefore": "zuvor nur im Farbton",
  "mark.clarityMeans": "100 %, wo jede Kante klar ist",
  "mark.focusClarity": "Klarheit dessen, was gesehen werden muss",
  "mark.weakest": "Schwächste Kante",
  "mark.weakestMeans": "Kontrast der beiden Farben",
};
