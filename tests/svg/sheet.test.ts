import { describe, expect, test } from "vitest";
import { draw, rulesOf, written } from "./drawing.ts";

const kept = (css: string): string =>
  /<style>([\s\S]*)<\/style>/.exec(written(draw(`<style>${css}</style><rect/>`)))?.[1] ?? "";

describe("cleanSheet", () => {
  test("what is allowed stays letter for letter", () => {
    const css = "\n .a { fill : #F00 ;\n stroke:blue }\n";
    expect(kept(css)).toBe(css);
    expect(rulesOf(draw(`<style>${css}</style>`))).toEqual([]);
  });

  test.each([
    ["@import url(a.css);", ""],
    ["@media print{rect{fill:red}}", ""],
    ["@font-face{font-family:a;src:url(http://example.org/a)}", ""],
    ["rect{position:fixed;fill:red}", "rect{fill:red}"],
    ["rect{fill:expression(1)}", "rect{}"],
  ])("%s leaves %j, with a warning", (css, left) => {
    expect(kept(css)).toBe(left);
    expect(rulesOf(draw(`<style>${css}</style>`))).toEqual(["(svg/removed)"]);
  });

  test("comments go in silence", () => {
    expect(kept("/* a */rect{/* b */fill:red}")).toBe("rect{fill:red}");
  });

  test.each([
    ["a backslash", "rect{fi\\6c l:red}", "svg/css"],
    ["markup", "rect{fill:red}&lt;/style>", "svg/css"],
    ["more than 128 KB", `rect{fill:${"r".repeat(131_073)}}`, "svg/css"],
    ["an address", "rect{fill:url(http://example.org/#a)}", "svg/reference"],
    ["blending", "rect{mix-blend-mode:multiply}", "svg/unsupported"],
    ["a filter", "rect{filter:blur(3px)}", "svg/unsupported"],
    ["a width that is none", "rect{stroke-width:NaN}", "svg/number"],
  ])("refuses %s", (_, css, rule) => {
    expect(rulesOf(draw(`<style>${css}</style>`))).toContain(rule);
  });
});
