import { expect, test } from "vitest";
import { parse } from "yaml";
import { matLimits, type Theme, themeGuide, themeSchema } from "../../../src/content/gallery/themekey.ts";

test("every key has an example that is right", () => {
  const all = Object.values(themeGuide.examples).join("\n");
  expect(Object.keys(themeSchema.parse(parse(all)) satisfies Theme)).toEqual(Object.keys(themeSchema.shape));
});

/** Relative luminance of a lightness, over 8. Source: CIE 15:2004, 8.2.1, the inverse of L*. */
const luminanceOf = (lightness: number) => ((lightness + 16) / 116) ** 3;
/** Source: WCAG 2.2, relative luminance and contrast ratio; the greys are --paper of base.css. */
const luminanceOfGrey = (grey: number) => ((grey / 255 + 0.055) / 1.055) ** 2.4;
const ratio = (a: number, b: number) => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);

test.each([matLimits.least, 50, matLimits.most])("a mat of L* %i stands 3:1 off both papers", (lightness) => {
  for (const paper of [0xf7, 0x16])
    expect(ratio(luminanceOf(lightness), luminanceOfGrey(paper))).toBeGreaterThan(3);
});
