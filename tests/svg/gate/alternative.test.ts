import { describe, expect, test } from "vitest";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { bytesOf, draw, rulesOf, written } from "../drawing.ts";

const box = '<rect width="9" height="9"/>';
const adobe = 'requiredExtensions="http://ns.adobe.com/AdobeIllustrator/10.0/"';

describe("chooseChild", () => {
  test("the first child that asks for nothing shows, as a group with what stands on the switch", () => {
    const text = draw(
      `<switch transform="translate(2 1)" fill="#c00"><foreignObject ${adobe} width="1" height="1"/><g>${box}</g><g><circle r="3"/></g></switch>`,
    );
    expect(rulesOf(text)).toEqual([]);
    expect(written(text)).toContain(
      '<g transform="translate(2 1)" fill="#cc0000"><g><rect width="9" height="9"/></g></g>',
    );
  });

  test("a switch in a switch", () => {
    expect(written(draw(`<switch><switch>${box}<g/></switch><g/></switch>`))).toContain(
      '<g><g><rect width="9" height="9"/></g></g>',
    );
  });

  test("selectors and styles see the file as it was written", () => {
    const text = draw(
      `<style>switch > :nth-child(2) rect{fill:#00c}</style><switch><g ${adobe}><style>rect{fill:#c00;stroke:#0c0}</style></g><g>${box}</g></switch>`,
    );
    expect(written(text)).toContain('fill="#0000cc" stroke="#00cc00"');
  });

  test.each([
    ["asks for a language", `<switch>\n<g systemLanguage="en">${box}</g><g/></switch>`, 2, 4],
    ["asks for no language", `<switch>\n<g systemLanguage="">${box}</g><g/></switch>`, 2, 4],
    ["asks for a feature", `<switch>\n<g requiredFeatures="a">${box}</g><g/></switch>`, 2, 4],
    [
      "asks for what browsers have",
      `<switch>\n<g requiredExtensions="http://www.w3.org/1999/xhtml"/><g/></switch>`,
      2,
      4,
    ],
    ["asks for an empty extension", `<switch>\n<g requiredExtensions="" /><g/></switch>`, 2, 4],
    ["is a title", `<switch>\n<title>a</title><g>${box}</g></switch>`, 2, 1],
    ["is of another language", `<switch>\n<e:g xmlns:e="http://example.org/"/><g>${box}</g></switch>`, 2, 1],
    ["is not there", `\n<switch> </switch>`, 2, 1],
    ["is text", `<switch>\n<text>a</text><g/></switch>`, 2, 1],
  ])("refused where the child that would show %s", (_, body, line, column) => {
    const { value, problems } = readDrawing("a.svg", bytesOf(draw(body)));
    expect(value).toBeUndefined();
    expect(problems.filter(({ severity }) => severity === "error")).toMatchObject([
      { rule: "svg/unsupported", place: { line, column }, hint: expect.stringMatching(/^Keep one/) },
    ]);
  });

  test.each([
    [
      `<switch><g ${adobe}><linearGradient id="a"/></g><g>${box.replace("/>", ' fill="url(#a) red"/>')}</g></switch>`,
      "fill",
    ],
    [`<switch><g>${box}</g><g id="a"/></switch><use href="#a"/>`, "href"],
  ])("refused where something points into what does not show", (body, name) => {
    const { value, problems } = readDrawing("a.svg", bytesOf(draw(body)));
    expect(value).toBeUndefined();
    expect(problems).toMatchObject([
      { rule: "svg/unsupported", reason: expect.stringContaining(`and ${name} in line 1 points at it`) },
    ]);
  });

  test("what does not show is not looked at, but for its styles", () => {
    expect(
      rulesOf(draw(`<switch><g>${box}</g><image href="http://example.org/"/><script/></switch>`)),
    ).toEqual([]);
  });
});
