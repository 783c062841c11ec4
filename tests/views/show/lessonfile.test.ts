import { expect, test } from "vitest";
import { lessonFiles, nameStill, stillsFolder } from "../../../src/views/show/lessonfile.ts";

test("stills stand in their order under any sorting by name", () => {
  const names = Array.from({ length: 12 }, (_, index) => nameStill(index, "x"));
  expect(names[0]).toBe("01-x.png");
  expect([...names].sort()).toEqual(names);
});

test("no name leads out of the folder, and none stands twice", () => {
  const names = Object.values(lessonFiles);
  for (const name of [...names, stillsFolder.slice(0, -1)]) expect(name).toMatch(/^[a-z-]+(?:\.[a-z]+)?$/);
  expect(new Set(names).size).toBe(names.length);
});
