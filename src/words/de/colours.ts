// Floor 7. German: the colours of a study.
import type { In } from "../en/all.ts";
import type { colours as english } from "../en/colours.ts";

export const colours: In<typeof english> = {
  "colours.caption":
    "Farben des Originals, die größte zuerst. Anteil an der ganzen Zeichnung; Reflexionsgrad des Tuchs.",
  "colours.colour": "Farbe",
  "colours.share": "Anteil",
  "colours.reflectance": "Reflexionsgrad",
  "colours.tincture": "Tinktur",
  "colours.becomes": "jetzt",
  "colours.vanishes": "aus {distance} Flaggenhöhen nicht mehr zu erkennen",
  "colours.uneven": "ungleichmäßig, von <first></first> bis <last></last>",
  "colours.metal": "Metall",
  "colours.ofTincture": "Farbe",
};
