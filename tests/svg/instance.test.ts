import { describe, expect, test } from "vitest";
import type { Instance } from "../../src/svg/instance.ts";
import { draw, listUses, paintsOfX, pixelAt, read, render, renderOther, resolve } from "./drawing.ts";

const box = 'width="30" height="20"';

/** All showings of the element with the id `x`. */
const showings = (text: string): readonly Instance[] =>
  resolve(text).instances.filter(({ element }) => element.attributes["id"] === "x");

describe("use", () => {
  // Title, drawing, what the pixel in the middle shows.
  test.each([
    [
      "a shape that declares nothing inherits from its use",
      `<defs><rect id="x" ${box}/></defs><use href="#x" fill="#00ff00"/>`,
    ],
    [
      "or from the group around its use",
      `<defs><rect id="x" ${box}/></defs><g fill="#00ff00"><use href="#x"/></g>`,
    ],
    [
      "not from the elements around it in the file",
      `<defs><g fill="red"><rect id="x" ${box}/></g></defs><use href="#x" fill="#00ff00"/>`,
    ],
    [
      "a shape that declares its fill keeps it",
      `<defs><rect id="x" ${box} fill="#00ff00"/></defs><use href="#x" fill="red"/>`,
    ],
    [
      "a rule reaches the shape wherever it is shown",
      `<style>.d{fill:#00ff00}</style><defs><rect id="x" class="d" ${box}/></defs><use href="#x" fill="red"/>`,
    ],
    [
      "currentColor is that of the use",
      `<defs><rect id="x" ${box} fill="currentColor"/></defs><use href="#x" color="#00ff00"/>`,
    ],
    [
      "xlink:href",
      `<defs><rect id="x" ${box}/></defs><use xmlns:l="http://www.w3.org/1999/xlink" l:href="#x" fill="#00ff00"/>`,
    ],
    [
      "a use of a use",
      `<defs><rect id="x" ${box}/><use id="y" href="#x"/></defs><use href="#y" fill="#00ff00"/>`,
    ],
    ["a group", `<defs><g id="g"><rect id="x" ${box}/></g></defs><use href="#g" fill="#00ff00"/>`],
    [
      "a symbol",
      `<symbol id="s" viewBox="0 0 3 2"><rect id="x" width="3" height="2"/></symbol><use href="#s" ${box} fill="#00ff00"/>`,
    ],
  ])("%s", async (_, body) => {
    expect(paintsOfX(draw(body))).toEqual(["fill #00ff00"]);
    expect(pixelAt(await render(read(draw(body))), 15, 10)).toBe("#00ff00");
    expect(pixelAt(renderOther(draw(body)), 15, 10)).toBe("#00ff00");
  });

  test("each use is a showing of its own", () => {
    const body = `<defs><rect id="x" width="9" height="9"/></defs><use href="#x" fill="red"/><use href="#x" x="10" fill="blue"/><use href="#x" x="20"/>`;
    expect(paintsOfX(draw(body))).toEqual(["fill #ff0000", "fill #0000ff", "fill #000000"]);
  });

  test("a shape that is drawn and used shows twice", () => {
    expect(paintsOfX(draw('<rect id="x" width="9" height="9" fill="red"/><use href="#x" x="10"/>'))).toEqual([
      "fill #ff0000",
      "fill #ff0000",
    ]);
  });
});

describe("what is not shown", () => {
  test.each([
    ["in defs", '<defs><rect id="x" width="9" height="9" fill="red"/></defs>'],
    ["a symbol without a use", '<symbol><rect id="x" width="9" height="9" fill="red"/></symbol>'],
    ["in a clip path", '<clipPath id="c"><rect id="x" width="9" height="9" fill="red"/></clipPath>'],
    ["in a mask", '<mask id="m"><rect id="x" width="9" height="9" fill="red"/></mask>'],
    ["in a pattern", '<pattern id="p"><rect id="x" width="9" height="9" fill="red"/></pattern>'],
    ["in a marker nobody uses", '<marker id="k"><rect id="x" width="9" height="9" fill="red"/></marker>'],
    ["display: none", '<g style="display:none"><rect id="x" width="9" height="9" fill="red"/></g>'],
    [
      "display: none that a shape inside cannot undo",
      '<g display="none"><rect id="x" display="inline" width="9" height="9" fill="red"/></g>',
    ],
    ["visibility: hidden", '<g visibility="hidden"><rect id="x" width="9" height="9" fill="red"/></g>'],
    ["visibility: collapse", '<rect id="x" visibility="collapse" width="9" height="9" fill="red"/>'],
  ])("%s", (_, body) => {
    expect(paintsOfX(draw(body))).toEqual([]);
  });

  test("visibility that a shape inside turns on again is shown", () => {
    expect(
      paintsOfX(
        draw(
          '<g visibility="hidden"><rect id="x" visibility="visible" width="9" height="9" fill="red"/></g>',
        ),
      ),
    ).toEqual(["fill #ff0000"]);
  });

  test("a stroke of width 0", () => {
    expect(
      paintsOfX(draw('<g stroke-width="0"><rect id="x" width="9" height="9" fill="none" stroke="red"/></g>')),
    ).toEqual([]);
    expect(
      paintsOfX(
        draw(
          '<g stroke-width="0"><rect id="x" width="9" height="9" fill="none" stroke="red" stroke-width="1"/></g>',
        ),
      ),
    ).toEqual(["stroke #ff0000"]);
  });

  test("the content of a marker that is used is shown", () => {
    const body =
      '<marker id="k" markerWidth="4" markerHeight="4"><rect id="x" width="4" height="4" fill="red"/></marker><path d="M2,2 H20" stroke="blue" marker-end="url(#k)"/>';
    expect(listUses(draw(body))).toEqual(["x fill #ff0000", "path fill #000000", "path stroke #0000ff"]);
  });
});

describe("opacity", () => {
  test.each([
    ["fill-opacity", '<rect id="x" fill="red" fill-opacity="0.6"/>', 0.6],
    ["a percentage", '<rect id="x" fill="red" fill-opacity="60%"/>', 0.6],
    ["alpha of the colour", '<rect id="x" fill="rgba(255,0,0,0.5)"/>', 0.5],
    [
      "the product of all",
      '<g opacity="0.8"><g opacity="0.5"><rect id="x" fill="rgb(255 0 0 / 0.5)" fill-opacity="0.5" opacity="0.5"/></g></g>',
      0.05,
    ],
    ["opacity is not inherited twice", '<g opacity="0.5"><g><rect id="x" fill="red"/></g></g>', 0.5],
    [
      "fill-opacity is inherited, not multiplied",
      '<g fill-opacity="0.5"><g fill-opacity="0.8"><rect id="x" fill="red"/></g></g>',
      0.8,
    ],
    ["more than all", '<rect id="x" fill="red" opacity="7"/>', 1],
    [
      "through a use",
      '<defs><rect id="x" fill="red" opacity="0.5"/></defs><use href="#x" opacity="0.5"/>',
      0.25,
    ],
  ])("%s", (_, body, opacity) => {
    expect(showings(draw(body)).at(-1)?.fillOpacity).toBeCloseTo(opacity, 12);
  });

  test("a stroke has its own", () => {
    expect(
      showings(draw('<rect id="x" stroke="red" stroke-opacity="0.25" opacity="0.5"/>'))[0],
    ).toMatchObject({ strokeOpacity: 0.125, fillOpacity: 0.5 });
  });
});

test("parents come before children, and everything hangs together", () => {
  const { instances, root } = resolve(
    draw('<defs><g id="g"><rect/></g></defs><use href="#g"/><use href="#g"/>'),
  );
  expect(instances[0]).toBe(root);
  for (const [index, instance] of instances.entries()) {
    for (const child of instance.children) {
      expect(child.parent).toBe(instance);
      expect(instances.indexOf(child)).toBeGreaterThan(index);
    }
  }
  // svg, defs, g, rect; and twice use, g, rect.
  expect(instances).toHaveLength(4 + 2 * 3);
});
