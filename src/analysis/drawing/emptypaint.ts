// Floor 6, a check on the label map: whether a gradient or pattern shows where it is measured.
import type { Areas } from "../../regions/area.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { type Raster, wordsOf } from "../../regions/raster.ts";
import type { Paint } from "../../svg/paint.ts";
import { type Label, type List, labelOf, type PaintIndex, paintOf } from "../../svg/paintnumber.ts";
import { findReference } from "../../svg/style/attributevalue.ts";
import { type Drawing, mapElements, type SvgElement } from "../../svg/tree.ts";
import { renderTrue } from "./paintlook.ts";

/** A gradient or pattern, by its id, that does not show on `share`, 0 to 1, of what is measured as it. */
export interface EmptyPaint {
  readonly server: string;
  readonly share: number;
}

/** Share of what is measured as a gradient or pattern on which it may not show, as between the lines of a pattern. */
const mostEmpty = 0.5;

/** Share of the flag up to which a paint is not looked at, and up to which all that is empty is passed over. */
const [smallPaint, smallSum] = [0.001, 0.005];

/**
 * Returns the gradients and patterns that are mostly not there where `map` has them, for whatever reason: `picture`, the
 * true rendering, is there the same as a rendering without them.
 */
export async function findEmpty(
  drawing: Drawing,
  picture: Raster,
  map: LabelMap,
  paints: List<PaintIndex, Paint>,
  { pixels, flagPixels }: Areas,
): Promise<readonly EmptyPaint[]> {
  const servers = new Map<Label, string>();
  for (const [paint, { key }] of paints.entries()) {
    const [label, id] = [labelOf(paint), findReference(key)];
    if (typeof id === "string" && (pixels[paint] ?? 0) > smallPaint * flagPixels) servers.set(label, id);
  }
  const empty: EmptyPaint[] = [];
  let sum = 0;
  for (const id of new Set(servers.values())) {
    const same = countSame(picture, await renderTrue(removePaint(drawing, id), map), map);
    for (const [label, hidden] of same) {
      const share = hidden / (pixels[paintOf(label)] ?? 0);
      if (servers.get(label) !== id || share <= mostEmpty) continue;
      empty.push({ server: id, share });
      sum += hidden;
    }
  }
  return sum > smallSum * flagPixels ? empty : [];
}

/** What a mask is drawn with stays: without it another part would show. */
function removePaint(drawing: Drawing, id: string): Drawing {
  const change = (element: SvgElement, original: SvgElement): SvgElement => {
    if (element.name === "mask") return original;
    const names = ["fill", "stroke"].filter((name) => findReference(element.attributes[name] ?? "") === id);
    const removed = Object.fromEntries(names.map((name) => [name, "none"]));
    return names.length === 0 ? element : { ...element, attributes: { ...element.attributes, ...removed } };
  };
  return { ...drawing, root: mapElements(drawing.root, change) };
}

/** Returns, by label, on how many of its pixels two pictures are the same. */
function countSame(one: Raster, other: Raster, { labels }: LabelMap): ReadonlyMap<Label, number> {
  const [here, there] = [wordsOf(one), wordsOf(other)];
  const same = new Map<Label, number>();
  for (let at = 0; at < labels.length; at += 1) {
    const label = labels[at] as Label;
    if (here[at] === there[at]) same.set(label, (same.get(label) ?? 0) + 1);
  }
  return same;
}
