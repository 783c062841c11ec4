import { expect, test } from "vitest";
import { resolveCascade } from "../../src/svg/cascade.ts";
import { EditList } from "../../src/svg/edit.ts";
import { writeDrawing } from "../../src/svg/write.ts";
import { draw, elementOf, read } from "./drawing.ts";

const drawing = read(
  draw(
    '<style>rect { fill: red; stroke: red }</style><rect id="r" color="blue" style="opacity: 1 ; stroke-width:2"/>',
  ),
);
const rect = elementOf(drawing, "r");

function edited(change: (edits: EditList) => void): string {
  const edits = new EditList();
  change(edits);
  return writeDrawing({ ...drawing, root: edits.apply(drawing.root) }).replace(/^<svg[^>]*>|<\/svg>\n$/g, "");
}

const siteOf = (property: string) => {
  const site = resolveCascade(drawing.root).get(rect)?.get(property)?.site;
  if (site === undefined) throw new Error(`${property} is not declared`);
  return site;
};

test("nothing to do leaves the very same tree", () => {
  const edits = new EditList();
  expect(edits.isEmpty).toBe(true);
  expect(edits.apply(drawing.root)).toBe(drawing.root);
});

test("a value changes where it is declared: attribute, inline, sheet", () => {
  expect(
    edited((edits) => {
      edits.set(siteOf("color"), "lime");
      edits.set(siteOf("opacity"), "0.75");
      edits.set(siteOf("fill"), "#00ff00");
      edits.set(siteOf("stroke"), "#0000ff");
    }),
  ).toBe(
    '<style>rect { fill: #00ff00; stroke: #0000ff }</style><rect id="r" color="lime" style="opacity: 0.75 ; stroke-width:2"/>',
  );
});

test("attributes and declarations are added behind what is there", () => {
  expect(
    edited((edits) => {
      edits.add(rect, "fill", "lime");
      edits.addStyle(rect, "stroke:lime");
    }),
  ).toContain('<rect id="r" color="blue" style="opacity: 1 ; stroke-width:2;stroke:lime" fill="lime"/>');
});

test("the first edit of a place stays", () => {
  expect(
    edited((edits) => {
      for (const value of ["first", "second"]) {
        edits.add(rect, "color", value);
        edits.set(siteOf("fill"), value);
      }
    }),
  ).toBe(
    '<style>rect { fill: first; stroke: red }</style><rect id="r" color="first" style="opacity: 1 ; stroke-width:2"/>',
  );
});
