// Floor 7. German: whether a redesign could be mistaken for another flag.
import type { In } from "../en/all.ts";
import type { near as english } from "../en/near.ts";

export const near: In<typeof english> = {
  "near.beside": "Neben den Flaggen, denen er am nächsten kommt",
  "near.hidden": "{name}, hier nicht gezeigt",
  "near.scale":
    "Mittleres ΔE00 über die ganze Flagge als Tuch: 0 ist dasselbe Bild. <how>Wie Ähnlichkeit gemessen wird</how>",
  "near.redesign": "der Neuentwurf „{study}“",
};
