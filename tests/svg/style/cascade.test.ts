// One drawing, one issue: where the fill of #x comes from. What we resolve is typed in by hand, and two renderers that
// know nothing of this project have to show it.
import { describe, expect, test } from "vitest";
import { readCascade } from "../../../src/svg/style/cascade.ts";
import { readXml } from "../../../src/svg/xml/readxml.ts";
import { bytesOf, draw, paintsOfX, pixelAt, read, render, renderOther } from "../drawing.ts";

const box = 'id="x" width="30" height="20"';

/** Title, drawing, fill of #x. */
const cases: readonly (readonly [string, string, string])[] = [
  ["an attribute", `<rect ${box} fill="#00ff00"/>`, "#00ff00"],
  ["a name of CSS", `<rect ${box} fill="red"/>`, "#ff0000"],
  ["a name in capitals", `<rect ${box} fill="RED"/>`, "#ff0000"],
  ["three digits", `<rect ${box} fill="#0F0"/>`, "#00ff00"],
  ["rgb()", `<rect ${box} fill="rgb(0, 0, 255)"/>`, "#0000ff"],
  ["hsl()", `<rect ${box} fill="hsl(120, 100%, 50%)"/>`, "#00ff00"],
  ["nothing declared: black", `<rect ${box}/>`, "#000000"],
  ["style over attribute", `<rect ${box} fill="red" style="fill:#00ff00"/>`, "#00ff00"],
  ["the last of two in one style", `<rect ${box} style="fill:red;fill:#00ff00"/>`, "#00ff00"],
  ["a type over an attribute", `<style>rect{fill:#00ff00}</style><rect ${box} fill="red"/>`, "#00ff00"],
  ["style over an id", `<style>#x{fill:red}</style><rect ${box} style="fill:#00ff00"/>`, "#00ff00"],
  [
    "a class over a type, in either order",
    `<style>.a{fill:#00ff00} rect{fill:red}</style><rect ${box} class="a"/>`,
    "#00ff00",
  ],
  [
    "an id over two classes",
    `<style>#x{fill:#00ff00} .a.b{fill:red}</style><rect ${box} class="a b"/>`,
    "#00ff00",
  ],
  [
    "an attribute selector over a type",
    `<style>[class="a"]{fill:#00ff00} rect{fill:red}</style><rect ${box} class="a"/>`,
    "#00ff00",
  ],
  [
    "an attribute selector with a value",
    `<style>[class="a"]{fill:#00ff00}</style><rect ${box} class="a"/>`,
    "#00ff00",
  ],
  [
    "two classes over one",
    `<style>.a.b{fill:#00ff00} .b{fill:red}</style><rect ${box} class="a b"/>`,
    "#00ff00",
  ],
  [
    "the later of equals",
    `<style>.a{fill:red} .b{fill:#00ff00}</style><rect ${box} class="b a"/>`,
    "#00ff00",
  ],
  [
    "the later sheet of equals",
    `<style>.a{fill:red}</style><style>.a{fill:#00ff00}</style><rect ${box} class="a"/>`,
    "#00ff00",
  ],
  ["a sheet behind the shape", `<rect ${box} class="a"/><style>.a{fill:#00ff00}</style>`, "#00ff00"],
  ["one of a list", `<style>circle, .a, path{fill:#00ff00}</style><rect ${box} class="a"/>`, "#00ff00"],
  [
    "each of a list counts for itself",
    `<style>#y, rect{fill:red} .a{fill:#00ff00}</style><rect ${box} class="a"/>`,
    "#00ff00",
  ],
  [
    "a descendant",
    `<style>g rect{fill:#00ff00} rect{fill:red}</style><g><g><rect ${box}/></g></g>`,
    "#00ff00",
  ],
  [
    "a child, and no grandchild",
    `<style>#g>rect{fill:red}</style><g id="g"><g><rect ${box} fill="#00ff00"/></g></g>`,
    "#00ff00",
  ],
  [
    "the universal selector over an attribute",
    `<style>*{fill:#00ff00}</style><rect ${box} fill="red"/>`,
    "#00ff00",
  ],
  [
    "important in a sheet over style",
    `<style>rect{fill:#00ff00!important}</style><rect ${box} style="fill:red"/>`,
    "#00ff00",
  ],
  [
    "important over an id",
    `<style>rect{fill:#00ff00 !important} #x{fill:red}</style><rect ${box}/>`,
    "#00ff00",
  ],
  [
    "a more specific important",
    `<style>#x{fill:#00ff00!important} rect{fill:red!important}</style><rect ${box}/>`,
    "#00ff00",
  ],
  [
    "a comment in a sheet",
    `<style>/* fill:red */ .a{/*fill:red;*/fill:#00ff00}</style><rect ${box} class="a"/>`,
    "#00ff00",
  ],
  ["CDATA", `<style><![CDATA[g > .a{fill:#00ff00}]]></style><g><rect ${box} class="a"/></g>`, "#00ff00"],
  ["a group", `<g fill="#00ff00"><rect ${box}/></g>`, "#00ff00"],
  ["the nearest group", `<g fill="red"><g fill="#00ff00"><rect ${box}/></g></g>`, "#00ff00"],
  [
    "an attribute of its own over a rule for its group",
    `<style>#g{fill:red!important}</style><g id="g"><rect ${box} fill="#00ff00"/></g>`,
    "#00ff00",
  ],
  [
    "inherit",
    `<style>rect{fill:red}</style><g fill="#00ff00"><rect ${box} style="fill:inherit"/></g>`,
    "#00ff00",
  ],
  ["the root", `<g><rect ${box}/></g>`, "#00ff00"],
  ["currentColor of its own", `<rect ${box} color="#00ff00" fill="currentColor"/>`, "#00ff00"],
  ["currentColor of a group", `<g color="#00ff00"><rect ${box} fill="currentColor"/></g>`, "#00ff00"],
  [
    "currentColor from a sheet",
    `<style>g{color:#00ff00} rect{fill:currentcolor}</style><g color="red"><rect ${box}/></g>`,
    "#00ff00",
  ],
  [
    "a gradient of one colour",
    `<linearGradient id="l"><stop stop-color="#00ff00"/><stop offset="1" stop-color="lime"/></linearGradient><rect ${box} fill="url(#l)"/>`,
    "#00ff00",
  ],
  [
    "a gradient that has its stops from another",
    `<linearGradient id="k"><stop stop-color="#00ff00"/></linearGradient><linearGradient id="l" href="#k"/><rect ${box} fill="url(#l)"/>`,
    "#00ff00",
  ],
];

/** Titles of what the second renderer (resvg-js 2.6) does not do: !important, and keywords in small letters. */
const unknownToOther = /^(?:important|a more specific important|currentColor from a sheet)/;

const text = (title: string, body: string): string =>
  draw(body, `viewBox="0 0 30 20"${title === "the root" ? ' fill="#00ff00"' : ""}`);

describe("the fill of #x comes from", () => {
  test.each(cases)("%s", async (title, body, fill) => {
    expect(paintsOfX(text(title, body))).toEqual([`fill ${fill}`]);
    expect(pixelAt(await render(read(text(title, body))), 15, 10)).toBe(fill);
    if (!unknownToOther.test(title)) expect(pixelAt(renderOther(text(title, body)), 15, 10)).toBe(fill);
  });

  test("currentColor as it stands where it is inherited to (CSS Color 4, section 9.2: it is inherited as the keyword)", async () => {
    const drawing = draw(`<g color="red" fill="currentColor"><rect ${box} color="#00ff00"/></g>`);
    expect(paintsOfX(drawing)).toEqual([`fill ${pixelAt(await render(read(drawing)), 15, 10)}`]);
  });

  test("a property in capitals, as CSS Syntax 3, section 2.2 has it; neither renderer does", () => {
    expect(paintsOfX(draw(`<rect ${box} style="FILL:#00ff00"/>`))).toEqual(["fill #00ff00"]);
  });

  // Selectors 4, sections 4 and 15; the second renderer knows no functional pseudo-classes.
  test.each([
    ["rect:not(.b)", "rect", "#00ff00"],
    ["rect:not(#y)", ".a", "#00ff00"],
    ["*:not(.b)", "#x", "#ff0000"],
  ])("%s against %s", (selector, other, fill) => {
    const drawing = draw(
      `<style>${selector}{fill:#00ff00} ${other}{fill:red}</style><rect ${box} class="a"/>`,
    );
    expect(paintsOfX(drawing)).toEqual([`fill ${fill}`]);
  });

  test("none: not painted", () => {
    expect(paintsOfX(draw(`<rect ${box} fill="none"/>`))).toEqual([]);
    expect(paintsOfX(draw(`<g fill="none"><rect ${box} stroke="red"/></g>`))).toEqual(["stroke #ff0000"]);
  });
});

describe("readCascade", () => {
  const ask = (body: string) => {
    const { root, reporter } = readXml("a.svg", bytesOf(draw(body)));
    if (root === undefined) throw new Error(body);
    const cascade = readCascade(root, reporter);
    const rect = root.children.find((child) => child.kind === "element" && child.local === "rect");
    if (rect?.kind !== "element") throw new Error(body);
    const found = cascade({ author: rect, parent: { author: root, parent: null } });
    return { found, problems: reporter.problems };
  };

  test("says where the winning value stands", () => {
    const { found } = ask(
      '<style>\n  .a { stroke : red ;\n    fill: #0f0 }</style><rect class="a" color="blue" style="opacity:1"/>',
    );
    expect(found.get("fill")).toMatchObject({ value: "#00ff00", place: { line: 3, column: 5 } });
    expect(found.get("stroke")).toMatchObject({ value: "#ff0000", place: { line: 2, column: 8 } });
    expect(found.get("color")).toMatchObject({ value: "#0000ff", place: { line: 3 } });
    expect(found.get("opacity")).toMatchObject({ value: "1", place: { line: 3 } });
  });

  test("a shorthand is its three properties, in the order of the cascade", () => {
    const { found } = ask(
      '<rect style="marker-end:url(#a);marker:none;marker-mid:url(#b)" marker-start="url(#c)"/>',
    );
    expect([...found].map(([name, { value }]) => `${name} ${value}`).sort()).toEqual([
      "marker-end none",
      "marker-mid url(#b)",
      "marker-start none",
    ]);
  });

  test("nothing is declared on an element without declarations", () => {
    expect(ask('<rect width="3"/>').found.size).toBe(0);
  });

  test("a value that every browser passes over leaves the one before", () => {
    const { found, problems } = ask('<style>rect{fill:#0f0}</style><rect style="fill:#12345"/>');
    expect(found.get("fill")?.value).toBe("#00ff00");
    expect(problems.map(({ rule }) => rule)).toEqual(["svg/colour"]);
  });

  // SVG 2, section 5.6.2: selectors are matched inside what a use shows.
  test.each([
    ["#d rect", ["svg/selector"]],
    ["defs > rect", ["svg/selector"]],
    ["rect:nth-child(2)", ["svg/selector"]],
    ["rect:not(defs rect)", ["svg/selector"]],
    ["rect", []],
    ["rect.k", []],
  ])("%s over what a use shows", (selector, rules) => {
    const body = `<style>${selector.replace(">", "&gt;")}{fill:red}</style><defs id="d"><g/><rect id="r" class="k"/></defs><use href="#r"/><rect/>`;
    expect(ask(body).problems.map(({ rule }) => rule)).toEqual(rules);
  });
});
