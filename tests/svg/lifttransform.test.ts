// Shapes whose own transform brings huge coordinates into the picture: in the true picture and in the label drawing they
// cover what arithmetic says they do. Without the lifting librsvg leaves them out, which the first test shows.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLabels } from "../../src/regions/labelmap.ts";
import { type Raster, renderSvg } from "../../src/regions/raster.ts";
import { codeOf, writeLabels } from "../../src/svg/labeldrawing.ts";
import { liftTransforms } from "../../src/svg/lifttransform.ts";
import { findPaints } from "../../src/svg/paint.ts";
import { walkElements } from "../../src/svg/tree.ts";
import { writeRoot, writeSized } from "../../src/svg/writesvg.ts";
import { pixelsOf, read, render, resolve } from "./drawing.ts";
import { drawings, steady } from "./generate.ts";

/** A drawing of 300 by 200 in blue, so that a unit is a pixel. */
const sheet = (body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200" shape-rendering="crispEdges"><rect width="300" height="200" fill="#0000ff"/>${body}</svg>`;

const countRed = ({ rgba }: Raster): number =>
  rgba.reduce(
    (sum, byte, at) =>
      sum + (at % 4 === 0 && byte === 255 && rgba[at + 1] === 0 && rgba[at + 2] === 0 ? 1 : 0),
    0,
  );

async function countRedLabels(text: string): Promise<number> {
  const shapes = findPaints(resolve(text));
  const codes = shapes.paints.map((_, index) => codeOf(index));
  const { labels } = readLabels(await renderSvg(writeLabels(shapes, 300, 200)), codes);
  const red = shapes.paints.findIndex(({ declared }) => declared === "#ff0000") + 1;
  return labels.reduce((sum, label) => sum + (label === red ? 1 : 0), 0);
}

const huge = 'width="1e7" height="5e6" transform="translate(10 20) scale(0.00001)"';

describe("a shape far smaller than its coordinates", () => {
  test("is left out by the renderer where its transform stands on it", async () => {
    const { root } = read(sheet(`<rect ${huge} fill="#ff0000"/>`));
    const size = { width: "300", height: "200" };
    expect(countRed(await renderSvg(writeRoot(root, size)))).toBe(0);
    expect(countRed(await renderSvg(writeRoot(liftTransforms(root), size)))).toBe(5000);
  });

  // Each shows 100 by 50 pixels of red.
  test.each([
    ["by scale", `<rect ${huge} fill="#ff0000"/>`],
    ["coloured by a sheet", `<style>svg > .a { fill: #ff0000 }</style><rect class="a" ${huge}/>`],
    ["coloured by its own style", `<rect style="fill: #ff0000" ${huge}/>`],
    ["as a stroke", '<path stroke="#ff0000" stroke-width="5e6" d="M0 5e6H1e7" transform="scale(0.00001)"/>'],
    ["through use", `<defs><rect id="r" ${huge}/></defs><use href="#r" x="30" fill="#ff0000"/>`],
    [
      "beside a clip path that shows it too",
      `<defs><rect id="r" ${huge}/></defs><clipPath id="c"><use href="#r"/></clipPath><rect width="300" height="200" clip-path="url(#c)" fill="#ff0000"/>`,
    ],
    [
      "in a clip path",
      `<clipPath id="c"><rect ${huge}/></clipPath><rect width="300" height="200" clip-path="url(#c)" fill="#ff0000"/>`,
    ],
    [
      "in a mask",
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200"><rect fill="#fff" ${huge}/></mask><rect width="300" height="200" mask="url(#m)" fill="#ff0000"/>`,
    ],
    [
      "clipped in its own units",
      '<clipPath id="c"><rect width="1e7" height="5e6"/></clipPath><rect width="1e8" height="1e8" clip-path="url(#c)" transform="scale(0.00001)" fill="#ff0000"/>',
    ],
  ])("%s", async (_, body) => {
    const text = sheet(body);
    expect(countRed(await renderSvg(writeSized(read(text), 300, 200)))).toBe(5000);
    expect(await countRedLabels(text)).toBe(5000);
  });

  test("has its gradient where it had it", async () => {
    const gradient = (end: string): string =>
      `<linearGradient id="g" gradientUnits="userSpaceOnUse" x1="0" x2="${end}"><stop stop-color="#f00"/><stop offset="1" stop-color="#ff0"/></linearGradient>`;
    const near = sheet(`${gradient("100")}<rect x="0" width="100" height="50" fill="url(#g)"/>`);
    const far = sheet(
      `${gradient("1e7")}<rect width="1e7" height="5e6" transform="scale(0.00001)" fill="url(#g)"/>`,
    );
    const [one, other] = await Promise.all([render(read(near), 300, 200), render(read(far), 300, 200)]);
    const most = one.rgba.reduce(
      (worst, byte, at) => Math.max(worst, Math.abs(byte - (other.rgba[at] ?? 0))),
      0,
    );
    expect(most).toBeLessThanOrEqual(1);
  });
});

test("a drawing without transforms on shapes is the very same object", () => {
  const { root } = read(sheet('<g transform="scale(2)"><rect width="1" height="1"/></g>'));
  expect(liftTransforms(root)).toBe(root);
});

test("no shape outside clip paths keeps a transform, and ids stay", () => {
  const { root } = read(
    sheet('<rect id="a" width="1" height="1" transform="scale(2)"/><use href="#a" transform="scale(3)"/>'),
  );
  const elements = [...walkElements(liftTransforms(root))];
  expect(elements.filter(({ name, attributes }) => name === "rect" && attributes["transform"])).toEqual([]);
  expect(elements.filter(({ attributes }) => attributes["id"] === "a").map(({ name }) => name)).toEqual([
    "g",
  ]);
});

test("any drawing looks the same", { timeout: 60_000 }, async () => {
  await fc.assert(
    fc.asyncProperty(drawings, async (text) => {
      const drawing = read(text);
      const size = { width: "30", height: "20", preserveAspectRatio: "none" };
      expect(pixelsOf(await renderSvg(writeSized(drawing, 30, 20)))).toEqual(
        pixelsOf(await renderSvg(writeRoot(drawing.root, { viewBox: "0 0 30 20", ...size }))),
      );
    }),
    { numRuns: 100, ...steady },
  );
});
