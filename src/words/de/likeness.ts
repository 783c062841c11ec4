// Floor 7. German: which flags a redesign could be taken for.
import type { In } from "../en/all.ts";
import type { likeness as english } from "../en/likeness.ts";

export const likeness: In<typeof english> = {
  "likeness.figure": "Mittlerer Farbabstand ΔE00 {difference}",
  "likeness.figureMirrored": "Mittlerer Farbabstand ΔE00 {difference}, von hinten gesehen",
  "likeness.figureTurned": "Mittlerer Farbabstand ΔE00 {difference}, auf dem Kopf",
  "likeness.flags":
    "{count, plural, one {einer anderen Flagge oder einem anderen Neuentwurf} other {# anderen Flaggen und Neuentwürfen}}",
  "likeness.hardly":
    "Kaum. Von {flags} kommt am nächsten: {nearest}; {figure}. Unter {limit} wird eine Flagge leicht für eine andere gehalten.",
  "likeness.could":
    "Möglich. Von {flags} {count, plural, one {kommt eine nahe} other {kommen mehrere nahe}}: {names}. Unter {limit} wird eine Flagge leicht für eine andere gehalten; die nächste hat: {figure}.",
  "likeness.rivals": "Andere Vorschläge für diese Flagge zählen nicht mit.",
  "likeness.own": "Dieser Neuentwurf",
};
