// Floor 8. Both flags small, at sizes that stand for distances: a flag looks as large from afar as a small one at arm's length.

import type { Format } from "../../words/format.ts";
import type { Linker } from "../address.ts";
import { shownSteps } from "./distancestrip.ts";

export interface SizeRow {
  readonly label: string;
  readonly pictures: readonly SizedPicture[];
}

/** In CSS pixels. */
export interface SizedPicture {
  readonly src: string;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  /** `40 flag heights`. */
  readonly distance: string;
}

/** In millimetres. Source: common practice, no standard. */
const armLength = 600;
/** CSS pixels to a millimetre. Source: W3C, CSS Values and Units 4, section 6.2: 1in = 96px = 25.4mm. */
const pixelsPerMillimetre = 96 / 25.4;

/** A row for the original and one for the redesign. `proportions` are height and width. */
export function presentSizes(
  [high, wide]: readonly [number, number],
  link: Linker,
  path: string,
  format: Format,
): readonly [SizeRow, SizeRow] {
  const row = (label: string, name: string): SizeRow => ({
    label,
    pictures: shownSteps.map((step) => {
      const height = sizeFrom(step);
      return {
        src: link(`${path}${name}.svg`),
        alt: format.say("sizes.alt", { label, distance: step }),
        width: Math.max(1, Math.round((height * wide) / high)),
        height,
        distance: format.say("length.distance", { distance: step }),
      };
    }),
  });
  return [row(format.say("plate.original"), "original"), row(format.say("plate.redesign"), "redesign")];
}

/** How high, in CSS pixels, a flag stands at arm's length that looks as large as one seen from `distance` flag heights. */
export function sizeFrom(distance: number): number {
  return Math.round((armLength / distance) * pixelsPerMillimetre);
}
