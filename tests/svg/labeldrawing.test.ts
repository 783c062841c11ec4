// The label drawing: rendered, each pixel has the code of the paint that shows there. Counted against geometry known by
// hand, and against the true picture for drawings made up at random.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLabels } from "../../src/regions/labelmap.ts";
import { renderSvg } from "../../src/regions/raster.ts";
import { codeOf, writeLabels } from "../../src/svg/labeldrawing.ts";
import { findPaints } from "../../src/svg/paint.ts";
import { nth } from "../numbered.ts";
import { pixelsOf, read, render, resolve } from "./drawing.ts";
import { drawings, steady } from "./generate.ts";

const size = { width: 300, height: 200 };

/** Pixels of each paint, by key, `none` for what is transparent. */
async function countLabels(text: string): Promise<Readonly<Record<string, number>>> {
  const shapes = findPaints(resolve(text));
  const picture = await renderSvg(writeLabels(shapes, size.width, size.height));
  const map = readLabels(
    picture,
    shapes.paints.map((_, index) => codeOf(index)),
  );
  const counts: Record<string, number> = {};
  for (const label of map.labels) {
    const key = label === 0 ? "none" : ([...shapes.paints][label - 1]?.key ?? "?");
    counts[key] = (counts[key] ?? 0) + 1;
  }
  return counts;
}

/** A drawing of 300 by 200, so that a unit is a pixel; without crispEdges of its own. */
const sheet = (body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200">${body}</svg>`;
const red = "#ff0000";
const blue = "#0000ff";
const field = '<rect width="300" height="200" fill="blue"/>';

describe("pixels of each paint", () => {
  test("stripes, to the pixel", async () => {
    expect(await countLabels(sheet(`${field}<rect y="50" width="300" height="100" fill="red"/>`))).toEqual({
      [blue]: 30_000,
      [red]: 30_000,
    });
  });

  test("what is not covered is transparent", async () => {
    expect(await countLabels(sheet('<rect x="100" width="200" height="200" fill="red"/>'))).toEqual({
      [red]: 40_000,
      none: 20_000,
    });
  });

  test("a stroke covers half its width on either side", async () => {
    // 120 by 70 outside, 100 by 50 inside.
    expect(
      await countLabels(
        sheet('<rect x="50" y="50" width="110" height="60" fill="none" stroke="red" stroke-width="10"/>'),
      ),
    ).toEqual({
      [red]: 120 * 70 - 100 * 50,
      none: 60_000 - 120 * 70 + 100 * 50,
    });
  });

  test.each([
    [
      "a transform",
      `${field}<rect width="10" height="10" transform="translate(20 30) scale(5)" fill="red"/>`,
      2500,
    ],
    [
      "a use that moves its target",
      `<defs><rect id="r" width="50" height="50"/></defs>${field}<use href="#r" x="20" y="20" fill="red"/>`,
      2500,
    ],
    [
      "a use with a transform",
      `<defs><rect id="r" width="50" height="50"/></defs>${field}<use href="#r" x="10" transform="scale(2)" fill="red"/>`,
      10_000,
    ],
    [
      "a symbol with a viewBox",
      `<symbol id="s" viewBox="0 0 2 2"><rect width="1" height="2"/></symbol>${field}<use href="#s" x="40" y="40" width="100" height="100" fill="red"/>`,
      5000,
    ],
    [
      "a symbol that clips what hangs over",
      `<symbol id="s" viewBox="0 0 1 1"><rect x="-5" width="9" height="1"/></symbol>${field}<use href="#s" x="40" y="40" width="100" height="100" fill="red"/>`,
      10_000,
    ],
    [
      "an svg inside",
      `${field}<svg x="100" y="100" width="50" height="50" viewBox="0 0 1 1"><rect width="9" height="9" fill="red"/></svg>`,
      2500,
    ],
    [
      "a clip path",
      `<clipPath id="c"><rect x="100" y="50" width="100" height="100"/></clipPath>${field}<rect width="300" height="200" fill="red" clip-path="url(#c)"/>`,
      10_000,
    ],
    [
      "a clip path from a sheet",
      `<style>.k{clip-path:url(#c)}</style><clipPath id="c"><rect x="100" y="50" width="100" height="100"/></clipPath>${field}<g class="k"><rect width="300" height="200" fill="red"/></g>`,
      10_000,
    ],
    [
      "a clip path that uses a shape",
      `<defs><rect id="r" x="100" y="50" width="100" height="100"/><clipPath id="c"><use href="#r"/></clipPath></defs>${field}<rect width="300" height="200" fill="red" clip-path="url(#c)"/>`,
      10_000,
    ],
    [
      "a mask keeps its own colours",
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><rect width="300" height="200"/><rect width="100" height="100" fill="white"/></mask>${field}<rect width="300" height="200" fill="red" mask="url(#m)"/>`,
      10_000,
    ],
    [
      "a mask coloured from a sheet",
      `<style>.w{fill:white}</style><mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><rect class="w" width="100" height="100"/></mask>${field}<rect width="300" height="200" fill="red" mask="url(#m)"/>`,
      10_000,
    ],
    [
      "even-odd",
      `${field}<path fill-rule="evenodd" fill="red" d="M0,0h100v100h-100z M25,25h50v50h-50z"/>`,
      7500,
    ],
    [
      "even-odd from a group's style",
      `${field}<g style="fill-rule:evenodd"><path fill="red" d="M0,0h100v100h-100z M25,25h50v50h-50z"/></g>`,
      7500,
    ],
    [
      "dashes",
      `${field}<path stroke="red" stroke-width="10" stroke-dasharray="20 10" d="M0,100 H300"/>`,
      2000,
    ],
    [
      "a marker in the size of the stroke",
      `<marker id="k" markerWidth="5" markerHeight="5" viewBox="0 0 1 1"><rect width="1" height="1" fill="red"/></marker>${field}<path d="M0,0 L100,100" fill="none" stroke="none" stroke-width="2" marker-end="url(#k)"/>`,
      100,
    ],
    [
      "a shape at 60 % counts in full",
      `${field}<rect width="100" height="100" fill="red" opacity="0.6"/>`,
      10_000,
    ],
  ])("%s", async (_, body, pixels) => {
    const counts = await countLabels(sheet(body));
    const reds = Object.entries(counts).reduce(
      (sum, [key, count]) => sum + (key.startsWith(red) ? count : 0),
      0,
    );
    expect(reds).toBe(pixels);
    expect(counts[blue]).toBe(60_000 - pixels);
  });

  test("a shape at 40 % is left out, and what is under it shows", async () => {
    expect(
      await countLabels(sheet(`${field}<rect width="100" height="100" fill="red" opacity="0.4"/>`)),
    ).toEqual({ [blue]: 60_000 });
  });

  test("a gradient is one paint in its whole shape", async () => {
    const gradient =
      '<linearGradient id="l"><stop stop-color="red"/><stop offset="1" stop-color="lime"/></linearGradient>';
    expect(
      await countLabels(sheet(`${gradient}${field}<rect width="100" height="100" fill="url(#l)"/>`)),
    ).toEqual({ [blue]: 50_000, "url(#l)": 10_000 });
  });

  test("a circle has no pixels of another label along its rim", async () => {
    const counts = await countLabels(sheet(`${field}<circle cx="150" cy="100" r="60" fill="red"/>`));
    expect(Object.keys(counts).sort()).toEqual([blue, red].sort());
    expect(Math.abs((counts[red] ?? 0) / (Math.PI * 3600) - 1)).toBeLessThan(0.01);
  });
});

describe("codeOf", () => {
  test("a thousand paints have a thousand codes, none of them black, all in 24 bits", () => {
    const codes = new Set(Array.from({ length: 1000 }, (_, index) => codeOf(nth(index))));
    expect(codes.size).toBe(1000);
    for (const code of codes) expect(code > 0 && code <= 0xffffff).toBe(true);
  });
});

test("for any drawing, the label under each pixel is the paint whose colour shows there", {
  timeout: 60_000,
}, async () => {
  await fc.assert(
    fc.asyncProperty(drawings, async (text) => {
      const shapes = findPaints(resolve(text));
      const labels = readLabels(
        await renderSvg(writeLabels(shapes, 30, 20)),
        shapes.paints.map((_, index) => codeOf(index)),
      );
      expect(labels.exactShare).toBe(1);
      const declared = [...labels.labels].map((label) =>
        label === 0 ? "none" : [...shapes.paints][label - 1]?.declared,
      );
      expect(declared).toEqual(pixelsOf(await render(read(text))));
    }),
    { numRuns: 200, ...steady },
  );
});
