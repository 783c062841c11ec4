import { expect, test } from "vitest";
import { readXml } from "../../../src/svg/xml/readxml.ts";
import { walkXml } from "../../../src/svg/xml/xmlnode.ts";
import { bytesOf } from "../drawing.ts";

test("walkXml visits all elements, foreign ones too, each with its number among its siblings", () => {
  const { root } = readXml(
    "a.svg",
    bytesOf('<svg>a<g><x:a xmlns:x="urn:x"/>b<rect/></g><!-- --><path/></svg>'),
  );
  if (root === undefined) throw new Error("it was not read");
  expect([...walkXml(root)].map(({ local, index }) => `${local} ${index}`)).toEqual([
    "svg 1",
    "g 1",
    "a 1",
    "rect 2",
    "path 2",
  ]);
});
