// Floor 7. German: both flags at sizes that stand for distances.
import type { In } from "../en/all.ts";
import type { sizes as english } from "../en/sizes.ts";

export const sizes: In<typeof english> = {
  "sizes.title": "Auf Armeslänge",
  "sizes.caption":
    "Aus 60 cm gesehen ist jede so groß wie die Flagge aus der Entfernung darunter, auf einem Bildschirm oder Papier mit 96 Pixeln je Zoll.",
  "sizes.says": "Beide Flaggen so klein, wie sie aus der Entfernung aussehen, auf Armeslänge: {distances}.",
  "sizes.distance": "{distance} Flaggenhöhen",
  "sizes.alt": "{label}, so groß wie aus {distance}",
};
