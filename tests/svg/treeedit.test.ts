import { expect, test } from "vitest";
import { EditList } from "../../src/svg/treeedit.ts";
import { writeDrawing } from "../../src/svg/writesvg.ts";
import { draw, elementOf, read } from "./drawing.ts";

const drawing = read(draw('<g id="g"><rect id="r" color="blue"/></g>'));
const rect = elementOf(drawing, "r");

function edited(change: (edits: EditList) => void): string {
  const edits = new EditList();
  change(edits);
  return writeDrawing({ ...drawing, root: edits.apply(drawing.root) }).replace(/^<svg[^>]*>|<\/svg>\n$/g, "");
}

test("nothing to do leaves the very same tree", () => {
  const edits = new EditList();
  expect(edits.isEmpty).toBe(true);
  expect(edits.apply(drawing.root)).toBe(drawing.root);
});

test("attributes are set, where they are and where they are not", () => {
  expect(
    edited((edits) => {
      edits.set(rect, "color", "lime");
      edits.set(rect, "fill", "#00ff00");
    }),
  ).toBe('<g id="g"><rect id="r" fill="#00ff00" color="lime"/></g>');
});

test("the first edit of a place stays", () => {
  expect(
    edited((edits) => {
      for (const value of ["first", "second"]) edits.set(rect, "color", value);
    }),
  ).toContain('color="first"');
});

test("what is replaced takes no other edit", () => {
  expect(
    edited((edits) => {
      edits.set(rect, "color", "lime");
      edits.replace(elementOf(drawing, "g"), { ...rect, attributes: { id: "other" } });
    }),
  ).toBe('<rect id="other"/>');
});
