import { expect, test } from "vitest";
import { tinctureOf } from "../../src/colour/tincture.ts";

// Source: A. C. Fox-Davies, “A Complete Guide to Heraldry”, 1909, chapter VII: or and argent are metals; gules, azure,
// vert, sable and purpure are colours. Shades are ours; light blue as a colour is common practice, no source.
test.each([
  ["#ffffff", "metal"],
  ["#f4f5f8", "metal"],
  ["#ffd700", "metal"],
  ["#fcd116", "metal"],
  ["#fff59d", "metal"],
  ["#b8860b", "metal"],
  ["#c8102e", "colour"],
  ["#7a1020", "colour"],
  ["#0039a6", "colour"],
  ["#12235c", "colour"],
  ["#6cb4e4", "colour"],
  ["#009639", "colour"],
  ["#004225", "colour"],
  ["#000000", "colour"],
  ["#6a2c8c", "colour"],
  ["#3b1053", "colour"],
  ["#ff7900", "unclassed"],
  ["#8b4513", "unclassed"],
  ["#c4a484", "unclassed"],
  ["#ff69b4", "unclassed"],
  ["#808080", "unclassed"],
  ["#c0c0c0", "unclassed"],
  ["#404040", "unclassed"],
  ["#90ee90", "unclassed"],
  ["#b39ddb", "unclassed"],
] as const)("%s is %s", (hex, tincture) => {
  expect(tinctureOf(hex)).toBe(tincture);
});

test("refuses what is not #rrggbb", () => {
  expect(() => tinctureOf("#fff")).toThrow(RangeError);
});
