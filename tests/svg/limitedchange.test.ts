// A change limited by a selector: the pictures say whether it changed what was selected, all of it and nothing else.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Hex } from "../../src/colour/colour.ts";
import { readLabels } from "../../src/regions/labelmap.ts";
import { renderSvg } from "../../src/regions/raster.ts";
import { codeOf, writeLabels } from "../../src/svg/labeldrawing.ts";
import { selectInstances } from "../../src/svg/limitedchange.ts";
import { findPaints } from "../../src/svg/paint.ts";
import { changed, draw, pixelAt, pixelsOf, read, render, resolve, written } from "./drawing.ts";
import { drawings, palette, steady } from "./generate.ts";

const next = "#123456";

/** Colours at the middle of the left, the middle and the right third of 30 by 20. */
async function thirds(text: string): Promise<readonly string[]> {
  const picture = await render(read(text));
  return [5, 15, 25].map((x) => pixelAt(picture, x, 10));
}

const third = (id: string, x: number, rest = ""): string =>
  `<rect id="${id}" x="${x}" width="10" height="20"${rest}/>`;
const used = (id: string, rest = ""): string => `<rect id="${id}" width="10" height="20"${rest}/>`;

describe("selectInstances", () => {
  const select = (body: string, selector: string): readonly string[] | string => {
    const found = selectInstances(resolve(draw(body)), selector);
    return typeof found === "string"
      ? found
      : [...found].map(({ element }) => element.attributes["id"] ?? element.name);
  };

  test("an element with everything inside it", () => {
    expect(select('<g id="g"><g id="h"><rect id="r"/></g></g><rect id="s"/>', "#g")).toEqual(["g", "h", "r"]);
  });

  test("reaches through use, as if the target stood there", () => {
    const body = '<defs><g id="g"><rect id="r"/></g></defs><use id="u" href="#g"/><use id="v" href="#g"/>';
    expect(select(body, "#u")).toEqual(["u", "g", "r"]);
    expect(select(body, "#v rect")).toEqual(["r"]);
    // In defs, and inside either use.
    expect(select(body, "#r")).toEqual(["r", "r", "r"]);
  });

  test("nothing, where nothing matches", () => {
    expect(select("<rect/>", "#nowhere")).toEqual([]);
  });

  test.each(["#", "rect[", "..", "rect:no-such-class", "rect::before", "rect + rect", ":is(rect)", "rect,"])(
    "says what is wrong with %j",
    (selector) => {
      expect(typeof select("<rect/>", selector)).toBe("string");
    },
  );
});

describe("recolourSelected", () => {
  // Title, drawing of three thirds, selector, what the thirds show after red became the new colour.
  test.each([
    [
      "a shape with a fill of its own",
      `${third("a", 0, ' fill="red"')}${third("b", 10, ' fill="red"')}${third("c", 20, ' fill="blue"')}`,
      "#a",
      [next, "#ff0000", "#0000ff"],
    ],
    [
      "a shape that inherits from its group",
      `<g fill="red">${third("a", 0)}${third("b", 10)}${third("c", 20)}</g>`,
      "#b",
      ["#ff0000", next, "#ff0000"],
    ],
    [
      "all shapes of a group",
      `<g id="g" fill="red">${third("a", 0)}${third("b", 10)}</g>${third("c", 20, ' fill="red"')}`,
      "#g",
      [next, next, "#ff0000"],
    ],
    [
      "a shape coloured by a sheet that others use",
      `<style>rect{fill:red}</style>${third("a", 0)}${third("b", 10)}${third("c", 20)}`,
      "#c",
      ["#ff0000", "#ff0000", next],
    ],
    [
      "a sheet with !important",
      `<style>rect{fill:red!important}</style>${third("a", 0)}${third("b", 10)}${third("c", 20)}`,
      "#c",
      ["#ff0000", "#ff0000", next],
    ],
    [
      "by class",
      `<style>.k{fill:red}</style>${third("a", 0, ' class="k"')}${third("b", 10, ' fill="red"')}${third("c", 20, ' class="k"')}`,
      ".k",
      [next, "#ff0000", next],
    ],
    [
      "one of two uses that give the colour",
      `<defs>${used("r")}</defs><use id="u" href="#r" fill="red"/><use id="v" href="#r" x="10" fill="red"/>`,
      "#u",
      [next, "#ff0000", "none"],
    ],
    [
      "one of two uses that inherit it",
      `<defs>${used("r")}</defs><g fill="red"><use id="u" href="#r"/><use id="v" href="#r" x="10"/></g>`,
      "#v",
      ["#ff0000", next, "none"],
    ],
    [
      "a shape inside one use that inherits through it",
      `<defs><g id="g">${used("r")}</g></defs><use id="u" href="#g" fill="red"/><use id="v" href="#g" x="10" fill="red"/>`,
      "#u rect",
      [next, "#ff0000", "none"],
    ],
    [
      "every showing of a shape that declares it",
      `<defs>${used("r", ' fill="red"')}</defs><use href="#r"/><use href="#r" x="10"/>${third("c", 20, ' fill="red"')}`,
      "#r",
      [next, next, "#ff0000"],
    ],
    [
      "currentColor of one of two",
      `<g color="red">${third("a", 0, ' fill="currentColor"')}${third("b", 10, ' fill="currentColor"')}</g>`,
      "#a",
      [next, "#ff0000", "none"],
    ],
    [
      "black that nobody declared",
      `${third("a", 0)}${third("b", 10)}`,
      "#a",
      [next, "#000000", "none"],
      "#000000",
    ],
    [
      "another colour in the selection stays",
      `<g id="g">${third("a", 0, ' fill="red"')}${third("b", 10, ' fill="blue"')}</g>`,
      "#g",
      [next, "#0000ff", "none"],
    ],
    [
      "the stroke, when it has the colour",
      `<path id="a" d="M5,0 V20" stroke="red" stroke-width="10"/><path d="M15,0 V20" stroke="red" stroke-width="10"/>`,
      "#a",
      [next, "#ff0000", "none"],
    ],
  ] as const)("%s", async (_, body, selector, shown, replace: Hex = "#ff0000") => {
    expect(await thirds(changed(draw(body), replace, next, selector))).toEqual(shown);
  });

  const twice = `<defs>${used("r", ' fill="red"')}</defs><use id="u" href="#r"/><use id="v" href="#r" x="10"/>`;

  test("a shape shown twice by its own colour: the selected showing gets a copy of its own", async () => {
    expect(await thirds(changed(draw(twice), "#ff0000", next, "#v"))).toEqual(["#ff0000", next, "none"]);
  });

  test("a style sheet that colours the shape stands in nobody's way", async () => {
    const body = `<style>.k{fill:red}</style><defs>${used("r", ' class="k"')}</defs><use id="u" href="#r"/><use id="v" href="#r" x="10"/>`;
    expect(await thirds(changed(draw(body), "#ff0000", next, "#v"))).toEqual(["#ff0000", next, "none"]);
  });

  test("only the selected element is touched: every other byte stays", () => {
    const body = (fill: string): string =>
      `<g fill="red">${third("a", 0, fill)}${third("b", 10)}</g><!-- -->`;
    expect(changed(draw(body("")), "#ff0000", next, "#a")).toBe(written(draw(body(` fill="${next}"`))));
  });

  test("a selection without the colour changes nothing", () => {
    const text = draw(`${third("a", 0, ' fill="blue"')}${third("b", 10, ' fill="red"')}`);
    expect(changed(text, "#ff0000", next, "#a")).toBe(written(text));
  });
});

test("for any drawing: the change shows exactly where the selected part of the paint showed", {
  timeout: 60_000,
}, async () => {
  const fresh = "#b4008c";
  let done = 0;
  const selectors = fc.constantFrom(
    "#n0",
    "#n1",
    "#n2",
    "g",
    "g rect",
    "use",
    ".a",
    "rect",
    "use rect",
    "#d0",
    "svg",
  );
  await fc.assert(
    fc.asyncProperty(drawings, fc.constantFrom(...palette), selectors, async (text, replace, selector) => {
      const result = changed(text, replace, fresh, selector);
      const resolved = resolve(text);
      const instances = selectInstances(resolved, selector);
      if (typeof instances === "string") throw new Error(instances);
      const shapes = findPaints(resolved, { instances, replace });
      const map = readLabels(
        await renderSvg(writeLabels(shapes, 30, 20)),
        shapes.paints.map((_, index) => codeOf(index)),
      );
      const before = pixelsOf(await render(read(text)));
      const after = pixelsOf(await render(read(result)));
      const expected = before.map((pixel, at) =>
        [...shapes.paints][(map.labels[at] ?? 0) - 1]?.selected === true ? fresh : pixel,
      );
      expect(after).toEqual(expected);
      if (expected.includes(fresh)) done += 1;
    }),
    { numRuns: 300, ...steady },
  );
  // Enough of the made-up changes must have been possible, or nothing was shown.
  expect(done).toBeGreaterThan(20);
});
