// Floor 8. The colours table of a study as finished rows.

import type { StudyResult } from "../../analysis/result.ts";
import type { Hex } from "../../colour/colour.ts";
import type { Format } from "../../words/format.ts";
import { findChanged, isReplaced, type Swatch } from "../../words/paintname.ts";

export interface ColourRow {
  readonly id: string;
  readonly hex: Hex;
  readonly name: string;
  readonly share: string;
  readonly reflectance: string;
  readonly tincture: string;
  /** Where nothing of the paint is left from the viewing distance, that distance in flag heights. */
  readonly vanishesAt: number | undefined;
  readonly becomes: Swatch | undefined;
  /** Lightest and darkest of a paint that is not one flat colour. */
  readonly uneven: readonly [Hex, Hex] | undefined;
}

const tinctureIds = { metal: "colours.metal", colour: "colours.ofTincture" } as const;

/** The paints of the original, largest first; the one that is replaced says what it becomes. */
export function presentColours(result: StudyResult, format: Format): readonly ColourRow[] {
  const { comparison, change } = result;
  const [, becomes] = findChanged(result);
  return comparison.before.colours.map((colour) => ({
    id: colour.id,
    hex: colour.hex,
    name: colour.name,
    share: format.share(colour.share),
    reflectance: format.percent(colour.reflectance),
    tincture: colour.tincture === "unclassed" ? "–" : format.say(tinctureIds[colour.tincture]),
    vanishesAt: colour.vanishes ? comparison.before.distance : undefined,
    becomes: isReplaced(comparison, colour, change.replace) ? becomes : undefined,
    uneven: colour.uneven === null ? undefined : [colour.uneven.lightest, colour.uneven.darkest],
  }));
}
