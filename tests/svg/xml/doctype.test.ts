import { describe, expect, test } from "vitest";
import { readEntities } from "../../../src/svg/xml/doctype.ts";

describe("readEntities", () => {
  test.each([
    ["nothing", " svg", []],
    [
      "the DTD of SVG",
      ' svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd"',
      [],
    ],
    [
      "entities of text",
      " svg [ <!ENTITY a \"b\"> <!-- c --> <!ENTITY d 'e'> ]",
      [
        ["a", "b"],
        ["d", "e"],
      ],
    ],
    ["the longest there may be", ` svg [<!ENTITY a "${"x".repeat(255)}">]`, [["a", "x".repeat(255)]]],
  ])("reads %s", (_, content, entities) => {
    expect(readEntities(content)).toEqual(new Map(entities as [string, string][]));
  });

  test.each([
    ["another document", " html"],
    ["another DTD", ' svg SYSTEM "http://example.org/a.dtd"'],
    ["a file", ' svg SYSTEM "file:///etc/passwd"'],
    ["an external entity", ' svg [<!ENTITY a SYSTEM "file:///etc/passwd">]'],
    ["a parameter entity", ' svg [<!ENTITY % a "b">]'],
    ["an entity of entities", ' svg [<!ENTITY a "&b;">]'],
    ["an entity with markup", ' svg [<!ENTITY a "<script/>">]'],
    ["a longer entity", ` svg [<!ENTITY a "${"x".repeat(256)}">]`],
    ["an attribute list", ' svg [<!ATTLIST svg onload CDATA "x">]'],
  ])("refuses %s", (_, content) => {
    expect(readEntities(content)).toEqual(expect.any(String));
  });
});
