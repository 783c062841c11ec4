// Floor 7. German: the chart of what each change does to clarity.
import type { In } from "../en/all.ts";
import type { gain as english } from "../en/gain.ts";

export const gain: In<typeof english> = {
  "gain.title": "Was jede Änderung an der Klarheit bewirkt",
  "gain.order": "Der größte Gewinn zuerst.",
  "gain.key":
    "Ein Ring für das Original, ein Punkt für den Neuentwurf; eine gestrichelte Linie, wo die Klarheit sinkt.",
  "gain.othersListed":
    "{count, plural, one {Die andere Studie steht in der Liste aller Studien} other {Die anderen # Studien stehen in der Liste aller Studien}}",
  "gain.othersOnFront":
    "{count, plural, one {Die andere Studie steht auf der Titelseite} other {Die anderen # Studien stehen auf der Titelseite}}",
  "gain.told": "{count, plural, one {# Studie} other {# Studien}}: Die Klarheit {ways}.",
  "gain.rises": "steigt bei {count}",
  "gain.falls": "sinkt bei {count}",
  "gain.stays": "bleibt gleich bei {count}",
  "gain.most": "Am stärksten steigt sie in „{title}“, von {before} auf {after}.",
  "gain.here": "In dieser Studie ändert sie sich von {before} auf {after}.",
};
