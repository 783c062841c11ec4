import { describe, expect, test } from "vitest";
import { selectInstances } from "../../src/svg/limitedchange.ts";
import { findPaints } from "../../src/svg/paint.ts";
import { draw, listUses, resolve } from "./drawing.ts";

const box = 'width="30" height="20"';
const paintsOf = (text: string) =>
  findPaints(resolve(text)).paints.map(({ declared, flat }) => ({ declared, flat }));

describe("findPaints", () => {
  test("one colour, however it is spelt, is one paint; the order is that of the drawing", () => {
    const text = draw(
      `<rect ${box} fill="blue"/><rect ${box} fill="red"/><rect ${box} fill="#f00"/><circle r="4" style="fill:rgb(255,0,0);stroke:#00f"/>`,
    );
    expect(paintsOf(text)).toEqual([
      { declared: "#0000ff", flat: true },
      { declared: "#ff0000", flat: true },
    ]);
  });

  // Half is where a shape begins to count (our own rule): under it left out, from it on labelled.
  test.each([
    ["1", [{ declared: "#ff0000", flat: true }], 0],
    ["0.75", [{ declared: "#ff0000", flat: false }], 0],
    ["0.5", [{ declared: "#ff0000", flat: false }], 0],
    ["0.49", [], 1],
    ["0", [], 0],
  ])("opacity %s", (opacity, paints, faint) => {
    const found = findPaints(resolve(draw(`<rect ${box} fill="red" opacity="${opacity}"/>`)));
    expect(found.paints.map(({ declared, flat }) => ({ declared, flat }))).toEqual(paints);
    expect(found.faint).toHaveLength(faint);
  });

  test("a translucent paint is another one than the same colour in full", () => {
    expect(paintsOf(draw(`<rect ${box} fill="red"/><rect ${box} fill="red" opacity="0.7"/>`))).toHaveLength(
      2,
    );
  });

  test("gradients and patterns are looked at; each is one paint wherever it is used", () => {
    const servers =
      '<linearGradient id="l"><stop stop-color="red"/><stop offset="1" stop-color="blue"/></linearGradient><pattern id="p" width="2" height="2"><rect width="1" height="1"/></pattern>';
    expect(
      paintsOf(
        draw(
          `${servers}<rect ${box} fill="url(#l)"/><circle r="3" fill="url(#l)"/><circle r="2" fill="url(#p)"/>`,
        ),
      ),
    ).toEqual([
      { declared: null, flat: false },
      { declared: null, flat: false },
    ]);
  });

  test("a gradient without stops paints nothing (SVG 2, 14.2.4)", () => {
    expect(listUses(draw(`<linearGradient id="l"/><rect ${box} fill="url(#l)"/>`))).toEqual([]);
  });

  test("a gradient of one colour of which one stop is translucent is no flat paint", () => {
    const stops = '<stop stop-color="red"/><stop offset="1" stop-color="red" stop-opacity="0.5"/>';
    expect(
      paintsOf(draw(`<radialGradient id="l">${stops}</radialGradient><rect ${box} fill="url(#l)"/>`)),
    ).toMatchObject([{ flat: false }]);
  });

  test("the part that a selection picks out stands for itself, the rest of the paint too", () => {
    const resolved = resolve(
      draw(`<rect ${box} fill="red"/><circle id="c" r="4" fill="red" stroke="blue"/>`),
    );
    const instances = selectInstances(resolved, "#c");
    if (typeof instances === "string") throw new Error(instances);
    const { paints } = findPaints(resolved, { instances, replace: "#ff0000" });
    expect(paints.map(({ declared, selected }) => [declared, selected])).toEqual([
      ["#ff0000", false],
      ["#ff0000", true],
      ["#0000ff", false],
    ]);
  });
});
