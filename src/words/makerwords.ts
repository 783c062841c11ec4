// Floor 7. The messages of plain shapes.
import type { PlainShape } from "../svg/construction.ts";
import type { WordId } from "./en/all.ts";

/** A plain shape, and what its positions and sizes are. */
export const shapeIds = {
  rectangle: "maker.rectangle",
  line: "maker.line",
  circle: "maker.circle",
  ring: "maker.ring",
} as const satisfies Record<PlainShape["kind"], WordId>;
