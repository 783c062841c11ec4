import { expect, test } from "vitest";
import { openDrawing } from "../../../src/analysis/drawing/opendrawing.ts";
import { isUnseen } from "../../../src/analysis/drawing/unseenchange.ts";

const flag = (shapes: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20"><rect width="30" height="20" fill="#1b2a5c"/>${shapes}<circle cx="15" cy="10" r="5" fill="#ffffff"/></svg>`;

async function seen(shapes: string): Promise<boolean> {
  const { value } = await openDrawing("a.svg", Buffer.from(flag(shapes)), { distance: 40 });
  if (value === undefined) throw new Error("the drawing can be read");
  return !isUnseen(value.inspection, "#3b3f46", false);
}

test.each([
  ["a shape that shows", '<rect width="8" height="8" fill="#3b3f46"/>', true],
  ["a shape without area", '<path d="M4 4L8 4" fill="#3b3f46"/>', false],
  ["a shape that another covers", '<circle cx="15" cy="10" r="2" fill="#3b3f46"/>', false],
  ["one of each", '<path d="M4 4L8 4" fill="#3b3f46"/><rect width="8" height="8" fill="#3b3f46"/>', true],
  [
    "a gradient, of which nothing is said",
    '<linearGradient id="g"><stop stop-color="#3b3f46"/><stop offset="1" stop-color="#3d4148"/></linearGradient><rect width="8" height="8" fill="url(#g)"/><path d="M4 4L8 4" fill="#3b3f46"/>',
    true,
  ],
])("%s", async (_, shapes, isSeen) => {
  expect(await seen(shapes)).toBe(isSeen);
});
