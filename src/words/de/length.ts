// Floor 7. German: how long an edge is.
import type { In } from "../en/all.ts";
import type { length as english } from "../en/length.ts";

export const length: In<typeof english> = {
  "length.heights": "{length} Flaggenhöhen",
  "length.offFocus": "{length} Flaggenhöhen, keine davon am Umriss dessen, was gesehen werden muss",
  "length.onFocus": "{length} Flaggenhöhen, alle am Umriss dessen, was gesehen werden muss",
  "length.partOnFocus": "{length} Flaggenhöhen, davon {part} am Umriss dessen, was gesehen werden muss",
  "length.wholeOutline": "ganzer Umriss",
  "length.ofOutline": "{share} des Umrisses",
  "length.partly": "{length}, davon {own}: {part}",
  "length.wholly": "{length}, {part}",
};
