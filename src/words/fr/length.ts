// Floor 7. French: how long an edge is.
import type { In } from "../en/all.ts";
import type { length as english } from "../en/length.ts";

export const length: In<typeof english> = {
  "length.heights": "{length} fois la hauteur du drapeau",
  "length.offFocus": "{length} fois la hauteur du drapeau, et rien sur le contour de ce qui doit se voir",
  "length.onFocus": "{length} fois la hauteur du drapeau, en entier sur le contour de ce qui doit se voir",
  "length.partOnFocus":
    "{length} fois la hauteur du drapeau, dont {part} sur le contour de ce qui doit se voir",
  "length.wholeOutline": "tout le contour",
  "length.ofOutline": "{share} du contour",
  "length.partly": "{length}, dont {own} sur {part}",
  "length.wholly": "{length}, {part}",
};
