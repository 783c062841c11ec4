import { describe, expect, test } from "vitest";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { writeDrawing } from "../../../src/svg/writesvg.ts";
import { bytesOf, draw, read, rulesOf, written } from "../drawing.ts";

const blur = '<filter id="f"><feGaussianBlur stdDeviation="1"/></filter>';
const shadow =
  '<filter id="f"><feOffset in="SourceAlpha" dx="1"/><feGaussianBlur stdDeviation="1"/></filter>';
const rect = (more: string): string => `<rect width="9" height="9" ${more}/>`;
const withEffects = (text: string): string => {
  const drawing = read(text);
  return writeDrawing({ ...drawing, root: drawing.effects?.root ?? drawing.root });
};

describe("takeEffects", () => {
  test.each([
    ["an attribute", rect('filter="url(#f)"')],
    ["a style", rect('style="filter:url(#f)"')],
    ["a sheet", `<style>.a{filter:url("#f")}</style>${rect('class="a"')}`],
    ["a group", `<g filter="url(#f)">${rect("")}</g>`],
    ["a link", `<a filter="url(#f)">${rect("")}</a>`],
    ["what is shown elsewhere", `<defs><g id="a" filter="url(#f)">${rect("")}</g></defs><use href="#a"/>`],
  ])("a filter by %s is left out, with a warning of what it looked like", (_, body) => {
    const { value, problems } = readDrawing("a.svg", bytesOf(draw(blur + body)));
    expect(problems.filter(({ rule }) => rule === "svg/effect")).toMatchObject([
      { severity: "warning", reason: expect.stringMatching(/a blur\.$/), place: { line: 1 } },
    ]);
    expect(value?.effects).toMatchObject({ looks: [{ kind: "blur", mode: "" }] });
    expect(written(draw(blur + body))).not.toMatch(/filter|effect/);
    expect(withEffects(draw(blur + body))).toMatch(/<filter id="effect-1">.*filter="url\(#effect-1\)"/s);
  });

  test("a blend, and what keeps it apart", () => {
    const text = draw(`<g style="isolation:isolate">${rect('style="mix-blend-mode:multiply"')}</g>`);
    expect(rulesOf(text)).toEqual(["(svg/effect)"]);
    expect(written(text)).toContain('<g><rect width="9" height="9"/></g>');
    expect(withEffects(text)).toMatch(/<g style="isolation:isolate"><rect .*style="mix-blend-mode:multiply"/);
  });

  test("what shows as its shadow alone goes with it, and what points there finds nothing", () => {
    const text = draw(
      `${shadow}${rect('id="a" fill="#000" filter="url(#f)"')}${rect('fill="#c00"')}<use href="#a"/>`,
    );
    expect(written(text)).toContain('<g id="a"/><rect width="9" height="9" fill="#cc0000"/>');
    expect(read(text).effects?.looks).toEqual([{ kind: "shadow", mode: "" }]);
  });

  test("properties that a filter is none of are left out in silence", () => {
    const text = draw(rect('style="filter:none;mix-blend-mode:normal;isolation:isolate;flood-color:red"'));
    expect(rulesOf(text)).toEqual([]);
    expect(read(text).effects).toBeUndefined();
    expect(written(text)).toContain('<rect width="9" height="9"/>');
  });

  test.each([
    ["that is not there", rect('filter="url(#g)"')],
    ["that is a gradient", `<linearGradient id="g"/>${rect('filter="url(#g)"')}`],
    [
      "in a mask",
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="9" height="9">${rect('filter="url(#f)"')}</mask>`,
    ],
    ["in a clip path", `<clipPath id="c">${rect('filter="url(#f)"')}</clipPath>`],
    [
      "in a pattern",
      `<pattern id="p" width="9" height="9">${rect('style="mix-blend-mode:screen"')}</pattern>`,
    ],
    ["of a text that is gone", '<g filter="url(#t)"><rect/></g><text><filter id="t"/></text>'],
    ["201 times", `<g id="a">${rect('filter="url(#f)"')}</g>${'<use href="#a"/>'.repeat(200)}`],
  ])("a filter %s is refused", (_, body) => {
    expect(rulesOf(draw(blur + body))).toContain("svg/unsupported");
  });

  test("an id that stands twice is refused where a filter is meant", () => {
    expect(rulesOf(draw(`${blur}${blur}${rect('filter="url(#f)"')}`))).toEqual(["svg/duplicate-id"]);
  });

  test("a shadow alone of a group in which something has an id is refused", () => {
    expect(rulesOf(draw(`${shadow}<g filter="url(#f)">${rect('id="a"')}</g><use href="#a"/>`))).toContain(
      "svg/unsupported",
    );
  });
});
