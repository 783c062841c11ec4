import { describe, expect, test } from "vitest";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { bytesOf, draw, rulesOf, written } from "../drawing.ts";

const fillOf = (css: string): string | undefined =>
  / fill="([^"]*)"/.exec(written(draw(`<style>${css}</style><rect/>`)))?.[1];

describe("readSheets", () => {
  test("nothing of a sheet is left but what it declares", () => {
    const text = written(draw('<style>\n .a { fill : #F00 ;\n stroke:blue }\n</style><rect class="a"/>'));
    expect(text).toContain('<rect fill="#ff0000" stroke="#0000ff"/>');
    expect(text).not.toMatch(/style|class/);
  });

  test.each([
    ["@import url(a.css);rect{fill:red}"],
    ["@font-face{font-family:a;src:url(http://example.org/a)}rect{fill:red}"],
    ["rect{position:fixed;fill:red}"],
    ["rect{behavior:x;fill:red}"],
  ])("%s: what is left out has a warning", (css) => {
    expect(fillOf(css)).toBe("#ff0000");
    expect(rulesOf(draw(`<style>${css}</style><rect/>`))).toEqual(["(svg/removed)"]);
  });

  test("comments go in silence", () => {
    expect(fillOf("/* a */rect{/* b */fill:red}")).toBe("#ff0000");
    expect(rulesOf(draw("<style>/* a */rect{/* b */fill:red}</style>"))).toEqual([]);
  });

  test.each([
    ["a backslash", "rect{fi\\6c l:red}", "svg/css"],
    ["markup", "rect{fill:red}&lt;/style>", "svg/css"],
    ["more than 128 KB", `rect{fill:${"r".repeat(131_073)}}`, "svg/css"],
    ["rules for some screens", "@media print{rect{fill:red}}", "svg/css"],
    ["an address", "rect{fill:url(http://example.org/#a)}", "svg/reference"],
    ["blending in a way that nobody knows", "rect{mix-blend-mode:plus-darker}", "svg/unsupported"],
    ["a filter", "rect{filter:blur(3px)}", "svg/unsupported"],
    ["an expression", "rect{fill:expression(1)}", "svg/value"],
    ["a width that is none", "rect{stroke-width:NaN}", "svg/number"],
    ["a state", "rect:hover{fill:red}", "svg/selector"],
  ])("refuses %s", (_, css, rule) => {
    expect(rulesOf(draw(`<style>${css}</style>`))).toContain(rule);
  });

  test.each(['type="text/less"', 'media="print"', 'title="a"'])("refuses a sheet with %s", (attribute) => {
    expect(rulesOf(draw(`<style ${attribute}>rect{fill:red}</style>`))).toEqual(["svg/css"]);
  });

  test("says what is wrong where it stands, also in CDATA and behind comments", () => {
    const css = "/* a\n b */\n.a{fill:red}\n  .b:hover{fill:red}\n.c{fill:lab(1 2 3)}";
    for (const text of [css, `<![CDATA[${css}]]>`]) {
      const { problems } = readDrawing("a.svg", bytesOf(draw(`\n<style>${text}</style>`)));
      expect(problems.map(({ rule, place }) => [rule, place])).toEqual([
        ["svg/selector", { line: 5, column: 3 }],
        ["svg/value", { line: 6, column: 4 }],
      ]);
    }
  });

  test("names the sheet where entities have moved its text", () => {
    const text = `<!DOCTYPE svg [<!ENTITY r "red;stroke:red">]>${draw("\n<style>.a{fill:&r;;fill:lab(1 2 3)}</style>")}`;
    expect(readDrawing("a.svg", bytesOf(text)).problems).toMatchObject([
      { rule: "svg/value", place: { line: 2, column: 1 } },
    ]);
  });
});
