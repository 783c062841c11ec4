// Floor 7. German: the distance strip.
import type { In } from "../en/all.ts";
import type { strip as english } from "../en/strip.ts";

export const strip: In<typeof english> = {
  "strip.from": "Aus <number>{distance}</number> Flaggenhöhen",
  "strip.focus": "was gesehen werden muss:",
  "strip.clarity": "Klarheit",
  "strip.caption":
    "Zuerst das Original, dann der Neuentwurf, wie ein scharfes Auge sie von dort sieht, auf eine Größe gebracht: ohne Wind, Dunst und Blendung.",
  "strip.title": "Entfernungsstreifen",
  "strip.label": "{label} aus {distance} Flaggenhöhen",
  "strip.blur": "Unscharf um {blur} Prozent der Höhe.",
  "strip.blurAndFocus": "Unscharf um {blur} Prozent der Höhe; {focus}.",
  "strip.focusClarity": "was gesehen werden muss, hat eine Klarheit von {clarity}",
  "strip.focusLost": "was gesehen werden muss, ist zu klein, um erkannt zu werden",
  "strip.lost": "vergrößert: in wirklicher Größe zu klein, um erkannt zu werden",
  "strip.describe": "Beide Flaggen, wie sie aus {distances} Flaggenhöhen aussehen, immer unschärfer.",
  "strip.onlyThere": "Die Klarheit steht nur dort, wo noch zu erkennen ist, was gesehen werden muss.",
  "strip.level":
    "Soweit es zu erkennen ist, hat das, was gesehen werden muss, im Original eine Klarheit von {before} und im Neuentwurf von {after}.",
  "strip.rises":
    "Sie steigt mit der Entfernung, wo feine Teile mit schwachen Kanten nicht mehr zu sehen sind und nicht mehr zählen.",
};
