import { expect, test } from "vitest";
import { remember } from "../../../src/svg/gate/remember.ts";

/** A function that counts how often it is called, with a memory. */
function count() {
  const asked: string[] = [];
  const find = remember((text) => {
    asked.push(text.slice(0, 3));
    return { length: text.length };
  });
  return { asked, find };
}

test("what was asked before is not found again", () => {
  const { asked, find } = count();
  expect(find("one")).toEqual({ length: 3 });
  expect(find("two!")).toEqual({ length: 4 });
  expect(find("one")).toBe(find("one"));
  expect(asked).toEqual(["one", "two"]);
});

test("texts of more than a million characters in all are forgotten", () => {
  const { asked, find } = count();
  find("one");
  for (let index = 0; index < 3; index += 1) find(String(index).padEnd(2 ** 19, "."));
  find("one");
  expect(asked).toEqual(["one", "0..", "1..", "2..", "one"]);
});
