// Floor 6. A drawing with more colours than anyone tells apart: those that show least are measured with others, or as one.

import type { Hex } from "../../colour/colour.ts";
import { linearOf } from "../../colour/colourtext.ts";
import { keyed } from "../../content/study/colourword.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { measureAreas } from "../../regions/area.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { findRuns } from "../../regions/runs.ts";
import { joinLabels } from "../../regions/view/distanceview.ts";
import type { Paint, PaintedShapes } from "../../svg/paint.ts";
import { type List, labelOf, listed, type PaintIndex } from "../../svg/paintnumber.ts";
import { joinNear } from "./paintgroup.ts";

/** Most paints that are measured each (our own judgement: edges and their pages grow with the square of it). */
export const mostColours = 48;

/** What those beyond are called, as one. */
export const otherName = "other colours";

const other: Paint = { key: "other", declared: null, flat: false, selected: false };

/** Most paints that others are compared with (our own judgement): the work grows with it times their number. */
const mostCompared = 200;

/** `joined`: how many paints are measured with another, or as one. */
export interface Joined {
  readonly shapes: PaintedShapes;
  readonly map: LabelMap;
  readonly joined: number;
}

/**
 * Where there are more than {@link mostColours} paints, joins each with the nearest under ΔE00 5 that shows more, and those
 * beyond that many, of the ones left, into one, which looks as it does in the picture. `change`: a colour that is replaced
 * stands for itself.
 */
export function joinSmall(shapes: PaintedShapes, map: LabelMap, change?: { readonly replace: Hex }): Joined {
  const { paints, uses } = shapes;
  if (paints.length <= mostColours) return { shapes, map, joined: 0 };
  const { pixels } = measureAreas(findRuns(map), paints.length);
  const groups = groupNear(paints, pixels, change?.replace);
  const large = groups.slice(0, mostColours);
  const heads = new Set(large.map(({ head }) => head));
  const kept = listed<PaintIndex, Paint>([
    ...paints.filter((paint) => heads.has(paint)),
    ...(groups.length > mostColours ? [other] : []),
  ]);
  const placeOf = new Map(kept.map(({ key }, at) => [key, at] as const));
  const keys = new Map(large.flatMap(({ head, joined }) => joined.map((key) => [key, head.key])));
  const keyOf = (key: string): string => keys.get(key) ?? other.key;
  return {
    shapes: { ...shapes, paints: kept, uses: uses.map((use) => ({ ...use, key: keyOf(use.key) })) },
    map: joinLabels(
      map,
      paints.map(({ key }) => labelOf(placeOf.get(keyOf(key)) as PaintIndex)),
    ),
    joined: paints.length - heads.size,
  };
}

/** Each paint that no other takes in, with the keys of those it does, itself among them; those that show most first. */
function groupNear(paints: PaintedShapes["paints"], pixels: List<PaintIndex, number>, replaced?: Hex) {
  const bySize = [...paints.entries()]
    .map(([at, paint]) => ({ paint, size: paint.selected ? Infinity : (pixels[at] ?? 0) }))
    .sort((a, b) => b.size - a.size || 0);
  const heads = joinNear(
    bySize.map(({ paint: { declared, flat, selected } }) =>
      flat && !selected && declared !== null && declared !== replaced ? linearOf(declared) : undefined,
    ),
    mostCompared,
  );
  return bySize
    .flatMap(({ paint: head }, at) => {
      if (heads[at] !== at) return [];
      const joined = bySize.filter((_, other) => heads[other] === at);
      return {
        head,
        joined: joined.map(({ paint }) => paint.key),
        size: joined.reduce((sum, { size }) => sum + size, 0),
      };
    })
    .sort((a, b) => b.size - a.size || 0);
}

/** Whether a paint stands for those that were joined. */
export function isJoined({ key }: Pick<Paint, "key">): boolean {
  return key === other.key;
}

/** Returns the error `study/colour-small` for a change of one of the joined colours. */
export function refuseSmall(replace: Hex, joined: number): Problem {
  return report("study/colour-small", keyed("change.replace"), {
    reason: `${replace} is one of the ${joined} colours that show least of very many, which are not measured each.`,
    hint: "Replace a colour that shows more, or give near shades of the drawing one colour.",
  });
}
