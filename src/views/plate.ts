// Floor 8. A flag on its mat: address, size, words for those who do not see it, and how it fits.

import type { StudyResult } from "../analysis/result.ts";
import type { Measure } from "../measure/measurement.ts";
import type { Format } from "../words/format.ts";
import { describePaints } from "../words/paintname.ts";
import type { Linker } from "./address.ts";
import { formatStudyPath } from "./status.ts";

export interface Plate {
  readonly label: string;
  readonly src: string;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  /** Which side of the mat the flag fills. */
  readonly fit: "wide" | "tall";
}

/** One of a pair, with its clarity as the page tells it; undefined where the flag has no edge. */
export interface MarkedPlate extends Plate {
  readonly clarity: string | undefined;
}

/** A flag that a figure draws within a drawing of its own, which says what it shows instead of an alt text. */
export interface DrawnPlate extends Omit<Plate, "alt"> {
  readonly description: string;
}

/** Nominal width in pixels: drawings are vectors, only the proportions matter. */
const plateWidth = 1200;

/** A mat is three units wide and two high; flags squarer than this would stand over its margin. */
const squarest = 1.3;

/** The plate of one drawing. `label` says what it is: `Original`. */
export function presentPlate(label: string, src: string, measure: Measure, format: Format): Plate {
  const [height, width] = measure.proportions;
  return {
    label,
    src,
    alt: format.say("plate.alt", { label, paints: describePaints(measure, format) }),
    width: plateWidth,
    height: Math.round((plateWidth * height) / width),
    fit: width / height >= squarest ? "wide" : "tall",
  };
}

/** Both plates of a study, for the page that `link` writes addresses for. */
export function presentPair(
  { study, comparison }: Pick<StudyResult, "study" | "comparison">,
  link: Linker,
  format: Format,
): readonly [MarkedPlate, MarkedPlate] {
  const src = (file: string) => link(`${formatStudyPath(study.slug)}${file}.svg`);
  const mark = (plate: Plate, clarity: number | null) => ({
    ...plate,
    clarity: clarity === null ? undefined : format.percent(clarity),
  });
  const { before, after, clarity } = comparison;
  return [
    mark(presentPlate(format.say("plate.original"), src("original"), before, format), clarity[0]),
    mark(presentPlate(format.say("plate.redesign"), src("redesign"), after, format), clarity[1]),
  ];
}
