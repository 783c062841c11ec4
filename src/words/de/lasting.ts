// Floor 7. German: how far what has to be seen lasts, as a figure.
import type { In } from "../en/all.ts";
import type { lasting as english } from "../en/lasting.ts";

export const lasting: In<typeof english> = {
  "lasting.caption":
    "Klarheit dessen, was gesehen werden muss, aus so vielen Flaggenhöhen: ein Ring für das Original, ein Punkt für den Neuentwurf.",
  "lasting.model": "Ein Modell des Sehens",
};
