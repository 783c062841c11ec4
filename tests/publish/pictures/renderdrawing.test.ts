import { expect, test } from "vitest";
import { Easel, RefusedError } from "../../../src/publish/pictures/renderdrawing.ts";

const drawing =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="#c8202f" d="M0 0h3v2H0z"/></svg>';
const size = { width: 3, height: 2 };

test("a drawing is read once and rendered once for a size, however often it is asked for", async () => {
  const easel = new Easel();
  expect(easel.read(drawing)).toBe(easel.read(drawing));
  const picture = await easel.render(drawing, size);
  expect(await easel.render(drawing, { ...size })).toBe(picture);
  expect((await easel.render(drawing, { width: 6, height: 4 })).rgba).toHaveLength(96);
});

test("what may not be published is refused with the reason and what to do", () => {
  const read = () => new Easel().read(drawing.replace("<path", "<image href='a.png'/><path"));
  expect(read).toThrow(RefusedError);
  expect(read).toThrow(/as it would be published, was refused\. .*<image>/);
});
