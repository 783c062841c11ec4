// Floor 6, a check on what is left out: filters and blends are drawn once, to see how much of the flag they change.
import { measureDifference } from "../../colour/difference.ts";
import { linearOfCode } from "../../colour/srgb.ts";
import { colourLimits } from "../../measure/limit.ts";
import { formatShare } from "../../measure/percenttext.ts";
import { locate } from "../../problem/locate.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { colourOver, measuringSize, type Raster, renderSvg, wordsOf } from "../../regions/raster.ts";
import { nameLook } from "../../svg/gate/effect.ts";
import type { Drawing } from "../../svg/tree.ts";
import { writeSized } from "../../svg/writesvg.ts";
import { notDrawable } from "./norendering.ts";

/** Pixels: what is told is a share of the flag. */
const height = 240;

/** Share of the flag up to which it may look otherwise without its filters and blends. */
export const mostOtherwise = 0.05;

/**
 * Draws a drawing with what was left out of it, and without.
 *
 * Problems: study/effect, where more than {@link mostOtherwise} of the flag looks otherwise; study/not-drawable.
 */
export async function checkEffects(drawing: Drawing): Promise<readonly Problem[]> {
  const { effects, file, lines } = drawing;
  if (effects === undefined) return [];
  try {
    const share = await measureEffects(drawing);
    if (share <= mostOtherwise) return [];
    const { place, looks } = effects;
    return [
      report(
        "study/effect",
        { file, ...locate(lines[place.line - 1] ?? "", place) },
        {
          reason: `Without what is left out of it, ${looks.map(nameLook).join(", ")}, ${formatShare(share)} of the flag would look otherwise.`,
          hint: "Remove the shadow, blur, glow or blend in a drawing program, or draw it as a plain shape.",
        },
      ),
    ];
  } catch (error) {
    return [notDrawable(file, error, "rendered")];
  }
}

/** Returns the share of the flag, 0 to 1, that filters and blends change by ΔE00 5 or more on white or on black. */
export async function measureEffects({ effects, ...drawing }: Drawing): Promise<number> {
  if (effects === undefined) return 0;
  const size = measuringSize(drawing.viewBox.width, drawing.viewBox.height, height);
  const draw = (root: Drawing["root"]): Promise<Raster> =>
    renderSvg(writeSized({ ...drawing, root }, size.width, size.height));
  const [without, with_] = [await draw(drawing.root), await draw(effects.root)];
  return compare(without, with_);
}

function compare(without: Raster, with_: Raster): number {
  const [ones, others] = [wordsOf(without), wordsOf(with_)];
  const known = new Map<number, boolean>();
  let [flag, otherwise] = [0, 0];
  for (const [at, pixel] of ones.entries()) {
    if (pixel >>> 24 > 0) flag += 1;
    const isOther = [0, 255].some((ground) => {
      const [one, two] = [colourOver(pixel, ground), colourOver(others[at] as number, ground)];
      if (one === two) return false;
      const key = one * 2 ** 24 + two;
      const found =
        known.get(key) ?? measureDifference(linearOfCode(one), linearOfCode(two)) >= colourLimits.same;
      known.set(key, found);
      return found;
    });
    if (isOther) otherwise += 1;
  }
  return flag === 0 ? 1 : otherwise / flag;
}
