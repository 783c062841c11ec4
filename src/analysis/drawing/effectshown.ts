// Floor 6, a check on what is left out: filters and blends are drawn once, to see how much of the flag they change.
import type { LinearRgb } from "../../colour/colour.ts";
import { linearOf } from "../../colour/colourtext.ts";
import { measureDifference } from "../../colour/difference.ts";
import { colourLimits } from "../../measure/limit.ts";
import { formatShare } from "../../measure/percenttext.ts";
import { locate } from "../../problem/locate.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { measuringSize, type Raster, renderSvg } from "../../regions/raster.ts";
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
          reason: `Without what is left out of it, ${looks.join(", ")}, ${formatShare(share)} of the flag would look otherwise.`,
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

function compare({ rgba: without }: Raster, { rgba: with_ }: Raster): number {
  const known = new Map<number, boolean>();
  let [flag, other] = [0, 0];
  for (let at = 0; at < without.length; at += 4) {
    if ((without[at + 3] ?? 0) > 0) flag += 1;
    const isOther = [0, 255].some((ground) => {
      const [one, two] = [over(without, at, ground), over(with_, at, ground)];
      if (one === two) return false;
      const key = one * 2 ** 24 + two;
      const found = known.get(key) ?? looksOther(one, two);
      known.set(key, found);
      return found;
    });
    if (isOther) other += 1;
  }
  return flag === 0 ? 1 : other / flag;
}

/** A pixel over a grey ground, as 0xrrggbb. */
function over(rgba: Uint8Array, at: number, ground: number): number {
  const opacity01 = (rgba[at + 3] ?? 0) / 255;
  const [red = 0, green = 0, blue = 0] = [0, 1, 2].map((channel) =>
    Math.round((rgba[at + channel] ?? 0) * opacity01 + ground * (1 - opacity01)),
  );
  return red * 2 ** 16 + green * 2 ** 8 + blue;
}

const linear = (code: number): LinearRgb => linearOf(`#${code.toString(16).padStart(6, "0")}`);

function looksOther(one: number, two: number): boolean {
  return measureDifference(linear(one), linear(two)) >= colourLimits.same;
}
