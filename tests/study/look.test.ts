// What paints look like: flat ones as declared, others as rendered (figures from mixing by hand).
import { describe, expect, test } from "vitest";
import { linearOf } from "../../src/colour/parse.ts";
import { lookAt, renderTrue } from "../../src/study/look.ts";
import { renderMap } from "../../src/study/map.ts";
import { selectInstances } from "../../src/svg/limited.ts";
import { findPaints, type Selection } from "../../src/svg/paint.ts";
import { box, disc, field, red, resolve, white } from "./sight.ts";

const size = { width: 150, height: 100 };

async function prepare(body: string, selector?: string) {
  const resolved = resolve(body);
  const only = selector === undefined ? undefined : selectInstances(resolved, selector);
  if (typeof only === "string") throw new Error(only);
  const selection: Selection | undefined = only === undefined ? undefined : { instances: only, replace: red };
  const shapes = findPaints(resolved, selection);
  const map = await renderMap(shapes, size);
  return { picture: await renderTrue(resolved.drawing, map), map, paints: shapes.paints };
}

async function looksOf(body: string, selector?: string) {
  const { picture, map, paints } = await prepare(body, selector);
  return lookAt(picture, map, paints);
}

describe("lookAt", () => {
  test("flat paints look as declared, in the order of the paints", async () => {
    expect(await looksOf(field(white) + disc(150, 100, 50, red))).toEqual([
      { hex: white, name: "white", uneven: null },
      { hex: red, name: "red", uneven: null },
    ]);
  });

  test("a flat paint that shows nowhere still has its colour", async () => {
    const looks = await looksOf(disc(150, 100, 50, red) + field(white));
    expect(looks.map(({ hex }) => hex).sort()).toEqual([red, white]);
  });

  test("a translucent paint looks as it is mixed with what lies below: 0.75 red over white", async () => {
    // 255 · 0.25 = 63.75.
    const [, mixed] = await looksOf(
      `${field(white)}<rect width="150" height="200" fill="${red}" fill-opacity="0.75"/>`,
    );
    expect(mixed).toMatchObject({ hex: "#ff4040", uneven: null });
  });

  test("a translucent paint over two others looks like their mean in light, and is uneven", async () => {
    // 60 % red over white is (255, 102, 102), over black (153, 0, 0); half of each.
    const [, , mixed] = await looksOf(
      `${field(white)}${box(0, 0, 150, 200, "#000000")}<rect x="100" y="50" width="100" height="100" fill="${red}" fill-opacity="0.6"/>`,
    );
    const lightOf = (hex: string) => linearOf(hex as `#${string}`);
    expect(mixed?.uneven).toEqual({ lightest: "#ff6666", darkest: "#990000" });
    // Red: (1 + 0.3185) / 2; green: 0.1329 / 2 (sRGB transfer of 153 and 102).
    expect(lightOf(mixed?.hex ?? "").linearR).toBeCloseTo(0.6593, 2);
    expect(lightOf(mixed?.hex ?? "").linearG).toBeCloseTo(0.0664, 2);
  });

  test("after a change: flat paints take the colours given, the labels are those of the map", async () => {
    const { picture, map, paints } = await prepare(field(white) + disc(150, 100, 50, red));
    const looks = lookAt(picture, map, paints.toReversed(), [2, 1], ["#00ff00", white]);
    expect(looks.map(({ hex, name }) => [hex, name])).toEqual([
      ["#00ff00", "green"],
      [white, "white"],
    ]);
  });

  test("labels say where a paint that is not flat is looked at", async () => {
    const { picture, map, paints } = await prepare(
      `${field(white)}<rect width="100" height="200" fill="${red}" fill-opacity="0.6"/><rect x="200" width="100" height="200" fill="#0000ff" fill-opacity="0.6"/>`,
    );
    const [looked] = lookAt(picture, map, paints.slice(2), [2]);
    expect(looked?.hex).toBe("#ff6666");
  });

  test("names are unique, a selected part is named after its paint", async () => {
    const looks = await looksOf(
      field(white) + disc(80, 100, 40, red, "one") + box(180, 60, 80, 80, red),
      "#one",
    );
    expect(looks.map(({ name }) => name).sort()).toEqual(["red", "red, selected part", "white"]);
  });
});
