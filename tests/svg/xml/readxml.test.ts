import { describe, expect, test } from "vitest";
import { readXml } from "../../../src/svg/xml/readxml.ts";
import { bytesOf, draw } from "../drawing.ts";

const readText = (text: string) => readXml("a.svg", bytesOf(text));
const rules = (bytes: Uint8Array): readonly string[] =>
  readXml("a.svg", bytes).reporter.problems.map(({ rule }) => rule);

describe("readXml", () => {
  test("gives elements with namespaces, attributes and places from 1", () => {
    const { root } = readText('<svg xmlns="urn:s">\n  <a:g xmlns:a="urn:a" a:x="1"/>\n</svg>');
    expect(root).toMatchObject({
      kind: "element",
      uri: "urn:s",
      local: "svg",
      place: { line: 1, column: 1 },
    });
    expect(root?.children[1]).toMatchObject({
      uri: "urn:a",
      prefix: "a",
      local: "g",
      place: { line: 2, column: 3 },
    });
    expect(root?.children[1]).toMatchObject({
      attributes: expect.arrayContaining([expect.objectContaining({ uri: "urn:a", local: "x", value: "1" })]),
    });
  });

  test("text, CDATA and character references", () => {
    expect(
      readText("<a>b&amp;<![CDATA[<c>]]>&#x41;</a>").root?.children.map((node) =>
        node.kind === "text" ? node.text : "",
      ),
    ).toEqual(["b&", "<c>", "A"]);
  });

  test("every kind of line end is one line", () => {
    expect(readText("<a>\r\n\r<b/></a>").root?.children.at(-1)).toMatchObject({
      place: { line: 3, column: 1 },
    });
  });

  test.each([
    ["not closed", "<svg><g></svg>"],
    ["cut off", "<svg><g>"],
    ["an unknown prefix", '<svg><use xlink:href="#a"/></svg>'],
    ["an attribute twice", '<svg a="1" a="2"/>'],
    ["no quotes", "<svg a=1/>"],
    ["an unknown entity", "<svg>&nbsp;</svg>"],
    ["two roots", "<svg/><svg/>"],
  ])("refuses %s", (_, text) => {
    expect(rules(bytesOf(text))).toEqual(["svg/not-well-formed"]);
    expect(readText(text).root).toBeUndefined();
  });

  test.each([
    ["nothing", new Uint8Array(), "svg/empty"],
    ["only spaces", bytesOf(" \n "), "svg/empty"],
    ["bytes that are no UTF-8", Uint8Array.from([0x3c, 0xff, 0x3e]), "svg/encoding"],
    ["a compressed file", Uint8Array.from([0x1f, 0x8b, 8, 0, 0xff]), "svg/encoding"],
    ["another encoding", bytesOf('<?xml version="1.0" encoding="ISO-8859-1"?><svg/>'), "svg/encoding"],
    ["a file over 512 KB", bytesOf(draw(" ".repeat(512 * 1024))), "svg/too-big"],
    ["65 levels", bytesOf("<g>".repeat(65) + "</g>".repeat(65)), "svg/cap"],
    [
      "201 attributes",
      bytesOf(`<g ${Array.from({ length: 201 }, (_, n) => `a${n}=""`).join(" ")}/>`),
      "svg/cap",
    ],
    ["20,001 elements", bytesOf(`<g>${"<g/>".repeat(20_000)}</g>`), "svg/cap"],
  ])("refuses %s", (_, bytes, rule) => {
    expect(rules(bytes)).toEqual([rule]);
  });

  test("what is just within the limits is read", () => {
    expect(rules(bytesOf("<g>".repeat(64) + "</g>".repeat(64)))).toEqual([]);
    expect(rules(bytesOf(`<g>${"<g/>".repeat(19_999)}</g>`))).toEqual([]);
  });

  test("entities of text are put in, and no more than 256 times", () => {
    const text = (count: number): string =>
      `<!DOCTYPE svg [<!ENTITY r "red">]><svg fill="${"&r;".repeat(count)}"/>`;
    expect(readText(text(1)).root?.attributes[0]?.value).toBe("red");
    expect(rules(bytesOf(text(257)))).toEqual(["svg/entity"]);
  });

  test("one file's entities are not known in the next", () => {
    readText('<!DOCTYPE svg [<!ENTITY r "red">]><svg/>');
    expect(rules(bytesOf('<svg fill="&r;"/>'))).toEqual(["svg/not-well-formed"]);
  });

  test("a processing instruction is named where it begins", () => {
    const { reporter } = readText('<?xml version="1.0"?>\n  <?wheel-in-foam href="a.css"?><svg/>');
    expect(reporter.problems).toMatchObject([
      { rule: "svg/instruction", place: { line: 2, column: 3, length: 15 } },
    ]);
  });
});
