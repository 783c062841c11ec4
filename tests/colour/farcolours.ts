// Test support. Colours of which no two are near each other.
import type { Hex } from "../../src/colour/colour.ts";
import { linearOf } from "../../src/colour/colourtext.ts";
import { measureDifference } from "../../src/colour/difference.ts";

/** Returns `count` colours, each more than ΔE00 5.5 from every other; for 110 there is room. */
export function farColours(count: number): readonly Hex[] {
  const colours: Hex[] = [];
  for (let index = 1; colours.length < count; index += 1) {
    const hex: Hex = `#${(Math.imul(index, 0x9e3779b1) >>> 8).toString(16).padStart(6, "0")}`;
    if (colours.every((other) => measureDifference(linearOf(hex), linearOf(other)) > 5.5)) colours.push(hex);
  }
  return colours;
}

/** Returns upright stripes of such colours over `width`; those beyond the first 48 are a hundredth of it together at most. */
export function farStripes(count: number, width: number): string {
  const narrow = Math.min(4, 1.8 / Math.max(1, count - 48));
  const unit = width / (Math.min(count, 48) * 4 + Math.max(0, count - 48) * narrow);
  let at = 0;
  return farColours(count)
    .map((hex, index) => {
      const [from, wide] = [at, (index < 48 ? 4 : narrow) * unit];
      at += wide;
      return `<path fill="${hex}" d="M${from} 0h${wide}v${width}h-${wide}z"/>`;
    })
    .join("");
}
