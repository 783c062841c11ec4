import { expect, test } from "vitest";
import { cssNames } from "../../src/colour/cssname.ts";

// CSS Color Module Level 4, section 6.1: 148 names, `grey` and `gray` counted apart.
test("all names of CSS, each once", () => {
  expect(cssNames).toHaveLength(148);
  expect(new Set(cssNames).size).toBe(148);
  expect(cssNames).toEqual(expect.arrayContaining(["aliceblue", "gold", "grey", "gray", "rebeccapurple"]));
  expect(cssNames.every((name) => /^[a-z]+$/.test(name))).toBe(true);
});
