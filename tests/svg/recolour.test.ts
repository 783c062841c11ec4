// One colour is changed where it is declared, and nothing else in the file: fixtures first, then drawings made up at random.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Hex } from "../../src/colour/colour.ts";
import { mapColours } from "../../src/svg/recolour.ts";
import { writeDrawing } from "../../src/svg/writesvg.ts";
import { changed, draw, pixelsOf, read, render, resolve, written } from "./drawing.ts";
import { drawings, palette, steady } from "./generate.ts";

const box = 'width="30" height="20"';
const next = "#123456";

// A drawing with § for each place that must change: `red` before, the new colour after, and not a byte more.
const inPlace: readonly (readonly [string, string])[] = [
  ["an attribute", `<rect ${box} fill="§"/><circle r="4" fill="blue"/>`],
  ["fill and stroke of one shape", `<rect ${box} stroke="§" fill="§"/>`],
  ["an inline style", `<rect ${box} style=" stroke : blue ; fill:  § ; opacity:1"/>`],
  [
    "a sheet",
    `<style>\n  .a { fill : §;\n stroke:blue }\n  .b{stroke:§!important}\n</style><rect ${box} class="a b"/>`,
  ],
  ["a group that shapes inherit from", `<g fill="§"><rect ${box}/><circle r="4" fill="lime"/></g>`],
  ["color, where currentColor comes from", `<g color="§"><rect ${box} fill="currentColor"/></g>`],
  [
    "stops",
    `<linearGradient id="l"><stop stop-color="§"/><stop offset="1" style="stop-color:§"/><stop offset=".5" stop-color="lime"/></linearGradient><rect ${box} fill="url(#l)"/>`,
  ],
  [
    "a pattern",
    `<pattern id="p" width="4" height="4"><rect width="2" height="2" fill="§"/></pattern><rect ${box} fill="url(#p)"/>`,
  ],
  [
    "a marker",
    `<marker id="k" markerWidth="4" markerHeight="4"><path d="M0,0 h4 v4 z" fill="§"/></marker><path d="M2,2 H20" stroke="blue" marker-end="url(#k)"/>`,
  ],
  [
    "a shape in defs and its use",
    `<defs><rect id="r" ${box} fill="§"/></defs><use href="#r" fill="blue"/><use href="#r" x="2" stroke="§"/>`,
  ],
  ["a fallback beside it stays", `<rect ${box} fill="§"/><g fill="blue"><circle r="3"/></g>`],
  [
    "the contents of masks and clip paths stay",
    `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="30" height="20"><rect ${box} fill="red"/></mask><clipPath id="c"><rect ${box} fill="red"/></clipPath><rect ${box} fill="§" mask="url(#m)" clip-path="url(#c)"/>`,
  ],
  [
    "titles and ids that say red stay",
    `<title>red</title><g id="red" class="red"><rect ${box} fill="§"/></g>`,
  ],
];

describe("recolour", () => {
  test.each(inPlace)("%s: every other byte stays", (_, body) => {
    const after = changed(draw(body.replaceAll("§", "red")), "#ff0000", next);
    expect(after).toBe(written(draw(body.replaceAll("§", next))));
  });

  test.each(["red", "RED", "#f00", "#FF0000", "rgb(255,0,0)", "hsl(0 100% 50%)"])(
    "finds the colour spelt %s",
    (spelling) => {
      expect(changed(draw(`<rect ${box} fill="${spelling}"/>`), "#ff0000", next)).toBe(
        written(draw(`<rect ${box} fill="${next}"/>`)),
      );
    },
  );

  test("a translucent colour keeps its alpha", () => {
    expect(changed(draw(`<rect ${box} fill="rgba(255,0,0,0.5)"/>`), "#ff0000", next)).toBe(
      written(draw(`<rect ${box} fill="rgba(18, 52, 86, 0.5)"/>`)),
    );
  });

  test("black that nobody declared is declared on the root", async () => {
    const text = draw(
      `<rect ${box}/><circle cx="9" cy="9" r="4" fill="lime"/><circle cx="20" cy="9" r="4" fill="#000"/>`,
    );
    const after = changed(text, "#000000", next);
    expect(after).toContain(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20" fill="${next}"`);
    expect(new Set(pixelsOf(await render(read(after))))).toEqual(new Set([next, "#00ff00"]));
  });

  test("black that nobody declared stays black inside a mask, where it hides", async () => {
    // The mask shows the right half: its left half is black because nothing is declared.
    const text = draw(
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="30" height="20"><rect width="15" height="20"/><rect x="15" width="15" height="20" fill="white"/></mask><rect ${box} fill="lime"/><g mask="url(#m)"><rect ${box}/></g>`,
    );
    const before = pixelsOf(await render(read(text)));
    expect(new Set(before)).toEqual(new Set(["#00ff00", "#000000"]));
    const after = pixelsOf(await render(read(changed(text, "#000000", next))));
    expect(after).toEqual(before.map((pixel) => (pixel === "#000000" ? next : pixel)));
  });

  test("a stop without a colour is black and changes", () => {
    expect(
      changed(
        draw(
          `<linearGradient id="l"><stop/><stop offset="1" stop-color="red"/></linearGradient><rect ${box} fill="url(#l)"/>`,
        ),
        "#000000",
        next,
      ),
    ).toContain(`<stop stop-color="${next}"/>`);
  });

  test("a rule that paints a mask too keeps the mask", async () => {
    const text = draw(
      `<style>.w{fill:#ffffff}</style><mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="30" height="20"><rect class="w" width="15" height="20"/></mask><rect ${box} fill="blue"/><rect class="w" ${box} mask="url(#m)"/>`,
    );
    const before = pixelsOf(await render(read(text)));
    const after = pixelsOf(await render(read(changed(text, "#ffffff", next))));
    expect(after).toEqual(before.map((pixel) => (pixel === "#ffffff" ? next : pixel)));
  });

  test("a colour that is not in the drawing changes nothing", () => {
    const text = draw(`<rect ${box} fill="red"/>`);
    expect(changed(text, "#abcdef", next)).toBe(written(text));
  });
});

describe("mapColours", () => {
  test("puts every colour through the map, once", () => {
    const swap = (hex: Hex): Hex => (hex === "#ff0000" ? "#0000ff" : hex === "#0000ff" ? "#ff0000" : hex);
    const text = draw(`<rect ${box} fill="red"/><circle r="4" fill="blue" stroke="lime"/>`);
    expect(writeDrawing(mapColours(resolve(text), swap))).toBe(
      written(draw(`<rect ${box} fill="#0000ff"/><circle r="4" fill="#ff0000" stroke="lime"/>`)),
    );
  });
});

describe("any drawing", { timeout: 60_000 }, () => {
  const fresh = "#b4008c";

  test("shows the new colour exactly where it showed the old one", async () => {
    await fc.assert(
      fc.asyncProperty(drawings, fc.constantFrom(...palette), async (text, replace) => {
        const before = pixelsOf(await render(read(text)));
        const after = pixelsOf(await render(read(changed(text, replace, fresh))));
        expect(after).toEqual(before.map((pixel) => (pixel === replace ? fresh : pixel)));
      }),
      { numRuns: 150, ...steady },
    );
  });

  test("recoloured twice is recoloured once; a change and its reverse restore the picture; to itself changes no byte", async () => {
    await fc.assert(
      fc.asyncProperty(drawings, fc.constantFrom(...palette), async (text, replace) => {
        const once = changed(text, replace, fresh);
        expect(changed(once, replace, fresh)).toBe(once);
        const back = changed(once, fresh, replace);
        expect(pixelsOf(await render(read(back)))).toEqual(pixelsOf(await render(read(text))));
        // Spelt as this project spells, the text itself comes back the second time.
        expect(changed(changed(back, replace, fresh), fresh, replace)).toBe(back);
        expect(changed(text, replace, replace)).toBe(written(text));
      }),
      { numRuns: 100, ...steady },
    );
  });
});
