// Floor 3, part of step 3. Parts whose thickness is so near the limit of sight that the view could as well be otherwise.
import type { LabelMap } from "./label.ts";
import { viewFrom } from "./view.ts";

/** How near, as a fraction of the thinnest part that is seen. */
const margin = 0.1;
/** Share of a paint that has to be in doubt, and of the flag, before it is worth a warning (our own judgement). */
const leastOfPaint = 0.1;
const leastOfFlag = 0.002;

/** Returns the labels of which a part worth a warning is seen at 0.9 times `thinnestPixels` and gone at 1.1 times. */
export function findNearLimit(map: LabelMap, thinnestPixels: number, whole: LabelMap = map): readonly number[] {
  const near = Math.round(thinnestPixels * (1 - margin));
  const far = Math.max(near + 1, Math.round(thinnestPixels * (1 + margin)));
  if (far <= 1) return [];
  const closer = viewFrom(map, near, whole);
  const further = viewFrom(map, far, whole);
  if (closer === further) return [];
  const gone = new Map<number, number>();
  const areas = new Map<number, number>();
  for (let at = 0; at < map.labels.length; at += 1) {
    const label = map.labels[at] as number;
    areas.set(label, (areas.get(label) ?? 0) + 1);
    if (closer.labels[at] === label && further.labels[at] !== label) gone.set(label, (gone.get(label) ?? 0) + 1);
  }
  return [...gone].filter(([label, pixels]) => pixels >= leastOfPaint * (areas.get(label) ?? 0) && pixels >= leastOfFlag * map.labels.length).map(([label]) => label);
}
