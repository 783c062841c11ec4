// Floor 5, a check on the label map: what is seen must be what is measured.
import type { Hex } from "../colour/colour.ts";
import { formatShare } from "../measure/format.ts";
import type { Problem } from "../problem/problem.ts";
import type { LabelMap } from "../regions/label.ts";
import { countLost } from "../regions/lost.ts";
import type { Raster } from "../regions/raster.ts";
import type { Paint } from "../svg/paint.ts";

/** A flat colour that shows where the label map has another; `share` of the flag, 0 to 1. */
export interface LostColour {
  readonly hex: Hex;
  readonly share: number;
}

/** Share of the flag up to which such pixels are roundings along lines (the most of 798 real drawings is 0.03 %). */
const mostLost = 0.001;

/** Returns the flat colours that the true rendering shows, beyond a thousandth of the flag, where they are not measured. */
export function findLost(
  picture: Raster,
  map: LabelMap,
  paints: readonly Paint[],
  flagPixels: number,
): readonly LostColour[] {
  const colours = paints.map(({ flat, declared }) =>
    flat && declared !== null ? Number.parseInt(declared.slice(1), 16) : undefined,
  );
  return [...countLost(picture, map, colours)]
    .map(
      ([colour, pixels]): LostColour => ({
        hex: `#${colour.toString(16).padStart(6, "0")}`,
        share: pixels / Math.max(1, flagPixels),
      }),
    )
    .filter(({ share }) => share > mostLost);
}

/** Returns the error `study/colour-lost`. Which shape it is cannot be told from pixels: the file alone is its place. */
export function tellLost(file: string, { hex, share }: LostColour): Problem {
  return {
    rule: "study/colour-lost",
    severity: "error",
    file,
    reason: `${formatShare(share)} of the flag looks ${hex} and would be measured as another colour.`,
    hint: `Draw what looks so as a plain shape with fill="${hex}", at full opacity and without a transform.`,
  };
}
