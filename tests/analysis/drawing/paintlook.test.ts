// What paints look like: flat ones as declared, others as rendered (figures from mixing by hand).
import { describe, expect, test } from "vitest";
import { labelsOf, renderMap } from "../../../src/analysis/drawing/measuregeometry.ts";
import { lookAt, nameChanged, nameLooks, renderTrue } from "../../../src/analysis/drawing/paintlook.ts";
import { linearOf } from "../../../src/colour/colourtext.ts";
import { selectInstances } from "../../../src/svg/limitedchange.ts";
import { findPaints, type Selection } from "../../../src/svg/paint.ts";
import { listed } from "../../../src/svg/paintnumber.ts";
import { nth } from "../../numbered.ts";
import { box, disc, field, red, resolve, white } from "../sight.ts";

const size = { width: 150, height: 100 };

async function prepare(body: string, selector?: string) {
  const resolved = resolve(body);
  const only = selector === undefined ? undefined : selectInstances(resolved, selector);
  if (typeof only === "string") throw new Error(only);
  const selection: Selection | undefined = only === undefined ? undefined : { instances: only, replace: red };
  const shapes = findPaints(resolved, selection);
  const map = await renderMap(shapes, size);
  return {
    picture: await renderTrue(resolved.drawing, map),
    map,
    paints: shapes.paints,
    labels: labelsOf(shapes),
  };
}

async function looksOf(body: string) {
  const { picture, map, paints, labels } = await prepare(body);
  return [...lookAt(picture, map, paints, labels)];
}

describe("lookAt", () => {
  test("flat paints look as declared, in the order of the paints", async () => {
    expect(await looksOf(field(white) + disc(150, 100, 50, red))).toEqual([
      { hex: white, uneven: null },
      { hex: red, uneven: null },
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
    const looks = lookAt(
      picture,
      map,
      listed([...paints].reverse()),
      listed([nth(2), nth(1)]),
      listed(["#00ff00", white]),
    );
    expect(looks.map(({ hex }) => hex)).toEqual(["#00ff00", white]);
  });

  test("labels say where a paint that is not flat is looked at", async () => {
    const { picture, map, paints } = await prepare(
      `${field(white)}<rect width="100" height="200" fill="${red}" fill-opacity="0.6"/><rect x="200" width="100" height="200" fill="#0000ff" fill-opacity="0.6"/>`,
    );
    const [looked] = lookAt(picture, map, listed([...paints].slice(2)), listed([nth(2)]));
    expect(looked?.hex).toBe("#ff6666");
  });
});

describe("nameLooks", () => {
  const parted = field(white) + disc(80, 100, 40, red, "one") + box(180, 60, 80, 80, red);
  const named = async (viewing: Parameters<typeof nameLooks>[3], body = parted, selector = "#one") => {
    const { picture, map, paints, labels } = await prepare(body, selector);
    const looks = nameLooks(
      lookAt(picture, map, paints, labels),
      paints,
      paints.map(() => 1),
      viewing,
    );
    return [...looks].map(({ name, part }) => [name, part]);
  };

  test("a selected part is named after its paint, or as the author calls it", async () => {
    expect(await named({})).toEqual([
      ["white", undefined],
      ["red, selected part", { of: "red" }],
      ["red", undefined],
    ]);
    expect(await named({ change: { replace: red, part: "the wheel" } })).toEqual([
      ["white", undefined],
      ["the wheel", { of: "red", called: "the wheel" }],
      ["red", undefined],
    ]);
  });

  test("a part that is all of its paint is no part, unless it is called one", async () => {
    const whole = field(white) + disc(80, 100, 40, red, "one");
    expect(await named({}, whole)).toEqual([
      ["white", undefined],
      ["red", undefined],
    ]);
    expect((await named({ change: { replace: red, part: "the wheel" } }, whole))[1]?.[0]).toBe("the wheel");
  });

  test("what the author calls a colour", async () => {
    expect((await named({ names: new Map([[red, "wine"]]) })).map(([name]) => name)).toEqual([
      "white",
      "wine, selected part",
      "wine",
    ]);
  });
});

describe("nameChanged", () => {
  const flat = (hex: `#${string}`, name: string) => ({ hex, name, uneven: null });
  const before = [flat("#009639", "green"), flat("#ffffff", "white"), flat("#00632a", "darker green")];
  const change = (next: `#${string}`, called?: string) =>
    nameChanged(
      listed(before),
      listed(before.map(({ hex }) => ({ hex: hex === "#009639" ? next : hex, uneven: null }))),
      { replace: "#009639", with: next, ...(called === undefined ? {} : { called }) },
    ).map(({ name }) => name);

  test("what is left alone keeps its name, the new colour is called as the author calls it", () => {
    expect(change("#f4c430")).toEqual(["yellow", "white", "darker green"]);
    expect(change("#f4c430", "gold")).toEqual(["gold", "white", "darker green"]);
  });

  test("the new colour never has the words of the old one, nor of another", () => {
    expect(change("#3fae66")).toEqual(["lighter green", "white", "darker green"]);
    expect(change("#ffffff", "snow")).toEqual(["white", "white", "darker green"]);
    expect(change("#f7f7f7", "white")).toEqual(["off-white", "white", "darker green"]);
  });

  test("a gradient that changes with it has a name of its own", () => {
    const gradient = [...before, flat("#7fcb9c", "light green")];
    const names = nameChanged(
      listed(gradient),
      listed([
        ...before.map((look) => ({ ...look, hex: look.hex === "#009639" ? ("#f4c430" as const) : look.hex })),
        flat("#f9e197", ""),
      ]),
      { replace: "#009639", with: "#f4c430", called: "gold" },
    ).map(({ name }) => name);
    expect(names).toEqual(["gold", "white", "darker green", "light yellow"]);
  });
});
