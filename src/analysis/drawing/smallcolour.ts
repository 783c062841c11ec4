// Floor 6. A drawing with more colours than anyone tells apart: those that show least are measured as one.

import type { Hex } from "../../colour/colour.ts";
import { keyed } from "../../content/study/colourword.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { measureAreas } from "../../regions/area.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { findRuns } from "../../regions/runs.ts";
import { joinLabels } from "../../regions/view/distanceview.ts";
import type { Paint, PaintedShapes } from "../../svg/paint.ts";
import { labelOf, listed, type PaintIndex } from "../../svg/paintnumber.ts";

/** Most paints that are measured each (our own judgement: edges and their pages grow with the square of it). */
export const mostColours = 48;

/** What those beyond are called, as one. */
export const otherName = "other colours";

const other: Paint = { key: "other", declared: null, flat: false, selected: false };

/** `joined`: how many paints are one. */
export interface Joined {
  readonly shapes: PaintedShapes;
  readonly map: LabelMap;
  readonly joined: number;
}

/** Joins the paints beyond the {@link mostColours} that cover most into one, which looks as it does in the picture. */
export function joinSmall(shapes: PaintedShapes, map: LabelMap): Joined {
  const { paints, uses } = shapes;
  if (paints.length <= mostColours) return { shapes, map, joined: 0 };
  const { pixels } = measureAreas(findRuns(map), paints.length);
  const bySize = [...paints.entries()]
    .map(([at, paint]) => ({ paint, size: paint.selected ? Infinity : (pixels[at] ?? 0) }))
    .sort((a, b) => b.size - a.size || 0);
  const large = new Set(bySize.slice(0, mostColours).map(({ paint }) => paint));
  const kept = listed<PaintIndex, Paint>([...paints.filter((paint) => large.has(paint)), other]);
  const placeOf = new Map(kept.map(({ key }, at) => [key, at] as const));
  const last = placeOf.get(other.key) as PaintIndex;
  const joins = paints.map(({ key }) => labelOf(placeOf.get(key) ?? last));
  return {
    shapes: {
      ...shapes,
      paints: kept,
      uses: uses.map((use) => (placeOf.has(use.key) ? use : { ...use, key: other.key })),
    },
    map: joinLabels(map, joins),
    joined: paints.length - mostColours,
  };
}

/** Whether a paint stands for those that were joined. */
export function isJoined({ key }: Paint): boolean {
  return key === other.key;
}

/** Returns the error `study/colour-small` for a change of one of the joined colours. */
export function refuseSmall(replace: Hex, joined: number): Problem {
  return report("study/colour-small", keyed("change.replace"), {
    reason: `${replace} is one of the ${joined} colours that show least in this drawing of ${mostColours + joined}, which are measured as one.`,
    hint: "Replace a colour that shows more, or give near shades of the drawing one colour.",
  });
}
