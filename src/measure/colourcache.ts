// Floor 4, step 3. Colours with what every edge asks of them, worked out once: reflectance, and Lab, for each eye.
import { type Cloth, measureReflectance } from "../colour/cloth.ts";
import type { Hex, LinearRgb } from "../colour/colour.ts";
import { linearOf } from "../colour/colourtext.ts";
import { measureLabDifference, measureLabDistance } from "../colour/difference.ts";
import { type Lab, labOf } from "../colour/space.ts";
import { simulate, type Vision } from "../colour/vision.ts";

/** How a pair is seen: by an eye without a deficiency, with one of the three, or in grey. */
export type Sight = "normal" | Vision;

/** Colours on one cloth. Every question about a colour, or about a pair of colours, is answered once and kept. */
export class SwatchBook {
  readonly cloth: Cloth;
  private readonly reflectances = new Map<string, number>();
  private readonly labs = new Map<string, Lab>();
  private readonly differences = new Map<string, number>();

  constructor(cloth: Cloth) {
    this.cloth = cloth;
  }

  /** Returns a colour as `sight` sees it. Throws RangeError where it is not `#rrggbb`. */
  seenBy(hex: Hex, sight: Sight = "normal"): LinearRgb {
    return sight === "normal" ? linearOf(hex) : simulate(linearOf(hex), sight);
  }

  /** Returns the reflectance of a colour on the cloth, in percent. Throws RangeError where it is not `#rrggbb`. */
  reflectanceOf(hex: Hex, sight: Sight = "normal"): number {
    const key = `${sight}${hex}`;
    const known = this.reflectances.get(key);
    if (known !== undefined) return known;
    const reflectance = measureReflectance(this.seenBy(hex, sight), this.cloth);
    this.reflectances.set(key, reflectance);
    return reflectance;
  }

  /** Returns ΔE00 of two colours as `sight` sees them. Throws RangeError where one is not `#rrggbb`. */
  differenceOf(one: Hex, other: Hex, sight: Sight = "normal"): number {
    const key = one < other ? `${sight}${one}${other}` : `${sight}${other}${one}`;
    const known = this.differences.get(key);
    if (known !== undefined) return known;
    const difference = measureLabDifference(this.labOf(one, sight), this.labOf(other, sight));
    this.differences.set(key, difference);
    return difference;
  }

  /** Returns ΔE*ab of two colours. Throws RangeError where one is not `#rrggbb`. */
  distanceOf(one: Hex, other: Hex): number {
    return measureLabDistance(this.labOf(one, "normal"), this.labOf(other, "normal"));
  }

  private labOf(hex: Hex, sight: Sight): Lab {
    const key = `${sight}${hex}`;
    const known = this.labs.get(key);
    if (known !== undefined) return known;
    const lab = labOf(this.seenBy(hex, sight));
    this.labs.set(key, lab);
    return lab;
  }
}
