import { describe, expect, test } from "vitest";
import { properties } from "../../../src/svg/style/property.ts";

// SVG 2, appendix of properties, and CSS Color, Masking and Compositing: which inherit.
test("which properties inherit", () => {
  const inherited = [...properties].filter(([, { inherits }]) => inherits).map(([name]) => name);
  expect(inherited).toEqual(expect.arrayContaining(["fill", "stroke", "color", "visibility", "clip-rule"]));
  expect(inherited).toEqual(expect.arrayContaining(["marker-end", "stroke-width", "paint-order"]));
  for (const name of ["opacity", "display", "clip-path", "mask", "stop-color", "overflow", "vector-effect"])
    expect(inherited).not.toContain(name);
});

test("what is written where nothing is declared is read as itself", () => {
  for (const [name, { initial, read }] of properties) expect(read(initial), name).toBe(initial);
});

describe("read", () => {
  test.each([
    ["fill", "RED", "#ff0000"],
    ["fill", "#0F0", "#00ff00"],
    ["fill", "#0f08", "rgba(0, 255, 0, 0.5333)"],
    ["fill", "rgb(100%, 0%, 0%)", "#ff0000"],
    ["fill", "rgb(255 0 0 / 25%)", "rgba(255, 0, 0, 0.25)"],
    ["fill", "hsl(120, 100%, 50%)", "#00ff00"],
    ["fill", "transparent", "rgba(0, 0, 0, 0)"],
    ["fill", "CURRENTCOLOR", "currentColor"],
    ["fill", "NONE", "none"],
    ["fill", "url('#a') red", "url('#a') #ff0000"],
    ["mask", "url(#a)", "url(#a)"],
    ["stroke-width", "1in", "96"],
    ["stroke-miterlimit", "1.5", "1.5"],
    ["display", "block", "inline"],
    ["visibility", "collapse", "hidden"],
    ["overflow", "scroll", "hidden"],
    ["paint-order", "stroke  FILL", "stroke fill"],
  ])("%s: %s is %s", (name, value, kept) => {
    expect(properties.get(name)?.read(value)).toBe(kept);
  });

  test.each([
    ["fill", "rgb(1, 2%, 3)"],
    ["fill", "rgb(1, 2, 3, 4, 5)"],
    ["fill", "rgb(1 2 3, 4)"],
    ["fill", "rgb(var(--a))"],
    ["fill", "hsl(1, 2, 3)"],
    ["fill", "hsl(1turn 2% 3%)"],
    ["fill", "lab(1 2 3)"],
    ["fill", "CanvasText"],
    ["fill", "red blue"],
    ["fill", "url(#a) url(#b)"],
    ["mask", "url(#a) red"],
    ["clip-path", "circle(3px)"],
    ["color", "none"],
    ["stroke-width", "-1"],
    ["stroke-width", "1em"],
    ["stroke-miterlimit", "0.5"],
    ["stroke-miterlimit", "10%"],
    ["stroke-miterlimit", "10px"],
    ["opacity", "1px"],
    ["display", "contents"],
    ["paint-order", "fill fill"],
    ["vector-effect", "non-scaling-stroke"],
    ["color-interpolation", "linearRGB"],
  ])("%s: %s is not of the set", (name, value) => {
    expect(properties.get(name)?.read(value)).toBeUndefined();
  });
});
