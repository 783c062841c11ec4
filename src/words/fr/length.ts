// Floor 7. French: how long an edge is.
import type { In } from "../en/all.ts";
import type { length as english } from "../en/length.ts";

export const length: In<typeof english> = {
  "length.heights": "{length} hauteurs de drapeau",
  "length.offFocus": "{length} hauteurs de drapeau, dont aucune sur le contour de ce qui doit se voir",
  "length.onFocus": "{length} hauteurs de drapeau, toutes sur le contour de ce qui doit se voir",
  "length.partOnFocus": "{length} hauteurs de drapeau, dont {part} sur le contour de ce qui doit se voir",
  "length.wholeOutline": "tout le contour",
  "length.ofOutline": "{share} du contour",
  "length.partly": "{length}, dont {own} sur {part}",
  "length.wholly": "{length}, {part}",
};
