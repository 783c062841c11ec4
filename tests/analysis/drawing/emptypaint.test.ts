// A gradient or pattern that does not show where it is measured, for whatever reason, is found by drawing without it.
import { describe, expect, test } from "vitest";
import { renderScene } from "../../../src/analysis/drawing/scene.ts";
import { tellLost } from "../../../src/analysis/drawing/unmeasured.ts";
import { resolve } from "../sight.ts";

const field = '<rect width="300" height="200" fill="#ffffff"/>';
const shape = '<rect x="50" y="20" width="200" height="160" fill="url(#p)"/>';
const red = '<rect width="20" height="20" fill="#c01020"/>';
const pattern = (content: string, more = 'width="20" height="20"'): string =>
  `${field}<pattern id="p" patternUnits="userSpaceOnUse" ${more}>${content}</pattern>${shape}`;
const gradient = (stops: string, more = ""): string =>
  `${field}<linearGradient id="p" ${more}>${stops}</linearGradient>${shape}`;
const clear = '<stop stop-color="#c01020" stop-opacity="0"/>';
const full = '<stop offset="1" stop-color="#c01020"/>';

const findLost = async (body: string) =>
  (await renderScene(resolve(body), { distance: 0, heightPixels: 200 })).lost;

const empty: Readonly<Record<string, string>> = {
  "a tile larger than the shape, with its content elsewhere": pattern(red, 'width="600" height="600"'),
  "a pattern of a title": pattern("<title>a</title>"),
  "content of no size": pattern(red.replace("20", "0")),
  "content outside of the tile": pattern(red.replace("<rect", '<rect x="40"')),
  "content without a fill": pattern(red.replace("#c01020", "none")),
  "content that is hidden from outside": `${field}<defs visibility="hidden">${pattern(red)}</defs>${shape}`,
  "content that is see-through": pattern(`<g opacity="0">${red}</g>`),
  "a use of nothing drawn": pattern('<g id="e"/><use href="#e"/>'),
  "a stroke": pattern("<g/>").replace('fill="url(#p)"', 'fill="none" stroke="url(#p)" stroke-width="30"'),
  "over a gradient": `<linearGradient id="g"><stop stop-color="#0000aa"/>${full}</linearGradient>${shape.replace("#p", "#g")}${pattern("<g/>").replace(field, "")}`,
  "in a mask too, where it shows": `${pattern(red, 'width="600" height="600"').replace(shape, "")}<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="300" height="200">${field}${shape}</mask>${shape.replace("<rect", '<rect mask="url(#m)"')}`,
  "a gradient of which the clear end shows alone": gradient(
    clear + full,
    'gradientUnits="userSpaceOnUse" x1="5000" x2="6000"',
  ),
  "a gradient that is clear but for its end": gradient(
    `${clear}${clear.replace("<stop", '<stop offset=".9"')}${full}`,
  ),
};

describe("a paint that is not there is lost", () => {
  test.each(Object.entries(empty))("%s", async (_, body) => {
    const found = (await findLost(body)).filter((each) => "server" in each);
    expect(found).toHaveLength(1);
    expect(found[0]?.share).toBeGreaterThan(0.85);
  });
});

const there: Readonly<Record<string, string>> = {
  "a pattern that fills its tile": pattern(red),
  "a faint pattern, which is measured as it looks": pattern(`<g opacity="0.1">${red}</g>`),
  "a gradient that is clear at one end": gradient(clear + full),
  "an empty pattern on four thousandths of the flag": pattern("<g/>").replace(
    /width="200" height="160"/,
    'width="20" height="12"',
  ),
};

test.each(Object.entries(there))("%s is measured", async (_, body) => {
  expect(await findLost(body)).toEqual([]);
});

test("two of four thousandths are too many", async () => {
  const small = shape.replace(/width="200" height="160"/, 'width="20" height="12"');
  const lost = await findLost(
    pattern("<g/>").replace(shape, small) +
      pattern("<g/>")
        .replace(field, "")
        .replaceAll('p"', 'q"')
        .replaceAll("#p", "#q")
        .replace(/width="200" height="160"/, 'width="20" height="12"')
        .replace('x="50"', 'x="90"'),
  );
  expect(lost).toEqual([
    { server: "p", share: 1 },
    { server: "q", share: 1 },
  ]);
});

test("the problem names it", () => {
  expect(tellLost("ferry.svg", { server: "wave", share: 0.95 })).toMatchObject({
    rule: "study/colour-lost",
    reason: "The gradient or pattern url(#wave) does not show on 95.0 % of what would be measured as it.",
  });
});
