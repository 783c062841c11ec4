import { describe, expect, test } from "vitest";
import { writeDrawing } from "../../../src/svg/writesvg.ts";
import { draw, read, rulesOf } from "../drawing.ts";

const filtered = (steps: string, more = "", attributes = ""): string =>
  draw(`<filter id="f" ${attributes}>${steps}</filter>${more}<rect width="9" height="9" filter="url(#f)"/>`);
const blur = '<feGaussianBlur stdDeviation="1"/>';

describe("readFilter", () => {
  test.each([
    ["a blur", blur],
    ["a blur in one direction", '<feGaussianBlur in="SourceAlpha" stdDeviation="1 0"/>'],
    ["a shadow", '<feDropShadow dx="1" dy="-1" stdDeviation=".5" flood-color="#000" flood-opacity=".5"/>'],
    [
      "a shadow in steps",
      '<feFlood style="flood-color:rgb(0,0,0);flood-opacity:.5" result="a"/><feComposite in="a" in2="SourceGraphic" operator="in" result="b"/><feOffset in="b" dx="1" dy="1" result="c"/><feMerge><feMergeNode in="c"/><feMergeNode in="SourceGraphic"/></feMerge>',
    ],
    ["a colour matrix", `<feColorMatrix values="${"0 ".repeat(19)}1"/>`],
    ["other colours", '<feComponentTransfer><feFuncR type="linear" slope=".5"/></feComponentTransfer>'],
    ["a blend with itself", '<feBlend in="SourceGraphic" in2="SourceAlpha" mode="multiply"/>'],
    ["a thicker outline", '<feMorphology operator="dilate" radius=".5"/>'],
    ["what programs leave there", `<e:x xmlns:e="http://www.inkscape.org/namespaces/inkscape"/>${blur}`],
  ])("%s is known", (_, steps) => {
    expect(rulesOf(filtered(steps, "", 'x="-10%" height="1.4" color-interpolation-filters="sRGB"'))).toEqual([
      "(svg/effect)",
    ]);
  });

  test.each([
    ["noise", '<feTurbulence baseFrequency="1"/>', "", ""],
    ["light", '<feSpecularLighting><fePointLight x="1" y="1" z="1"/></feSpecularLighting>', "", ""],
    ["a kernel", '<feConvolveMatrix order="3" kernelMatrix="0 0 0 0 1 0 0 0 0"/>', "", ""],
    ["tiles", "<feTile/>", "", ""],
    ["no steps", "", "", ""],
    ["21 steps", blur.repeat(21), "", ""],
    ["what lies below", '<feBlend in2="BackgroundImage"/>', "", ""],
    ["the paint", '<feOffset in="FillPaint" dx="1"/>', "", ""],
    ["a step that is not there", '<feOffset in="a" dx="1"/>', "", ""],
    ["a step that comes later", `<feOffset in="a" dx="1"/><feOffset dx="1" result="a"/>`, "", ""],
    ["a blur of its own region", '<feGaussianBlur stdDeviation="1" x="0"/>', "", ""],
    ["a blur that is negative", '<feGaussianBlur stdDeviation="-1"/>', "", ""],
    ["a blur without end", '<feGaussianBlur stdDeviation="1e9"/>', "", ""],
    ["a blur that is repeated at edges", '<feGaussianBlur stdDeviation="1" edgeMode="wrap"/>', "", ""],
    ["a thickening of the whole flag", '<feMorphology operator="dilate" radius="9"/>', "", ""],
    ["a colour matrix that breaks off", '<feColorMatrix values="0 1 0"/>', "", ""],
    ["a colour matrix of nothing", "<feColorMatrix/>", "", ""],
    [
      "an animation",
      `<feGaussianBlur stdDeviation="1"><animate attributeName="stdDeviation"/></feGaussianBlur>`,
      "",
      "",
    ],
    ["units of boxes", blur, "", 'primitiveUnits="objectBoundingBox"'],
    ["a region far out", blur, "", 'width="2000000%"'],
    ["a resolution", blur, "", 'filterRes="9"'],
    ["another filter", blur, '<filter id="g"/>', 'href="#g"'],
    [
      "a colour that nobody knows",
      '<feFlood flood-color="var(--a)"/><feMerge><feMergeNode/></feMerge>',
      "",
      "",
    ],
    ["a colour from a sheet", "<feFlood/>", "<style>feFlood{flood-color:lab(1 2 3)}</style>", ""],
    ["a space that nobody knows", blur, "", 'color-interpolation-filters="auto"'],
  ])("%s is not", (_, steps, more, attributes) => {
    expect(rulesOf(filtered(steps, more, attributes))).toContain("svg/unsupported");
  });

  test("a sheet, and what is around a filter, count", () => {
    const text = draw(
      `<style>.s{flood-color:#00f}</style><g color-interpolation-filters="sRGB"><filter id="f"><feDropShadow class="s" flood-color="#f00"/></filter></g><rect width="9" height="9" filter="url(#f)"/>`,
    );
    const drawing = read(text);
    const shown = writeDrawing({ ...drawing, root: drawing.effects?.root ?? drawing.root });
    expect(shown).toMatch(/<filter id="effect-1" color-interpolation-filters="sRGB">/);
    expect(shown).toContain('flood-color="#0000ff"');
  });

  test("a filter that nothing has is not looked at", () => {
    expect(rulesOf(draw('<filter id="f"><feImage href="http://example.org/"/></filter><rect/>'))).toEqual([]);
  });
});
