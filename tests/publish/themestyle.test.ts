import { expect, test } from "vitest";
import { formatTheme } from "../../src/publish/themestyle.ts";

test("a theme that says nothing changes nothing", () => {
  expect(formatTheme({})).toBe("");
  expect(formatTheme({ density: "calm" })).toBe("");
});

test("each key is a property of base.css, headings a rule as well", () => {
  expect(formatTheme({ mat: 55 })).toBe(":root {\n--mat: lab(55% 0 0);\n}\n");
  expect(formatTheme({ measure: 60 })).toBe(":root {\n--measure: calc(60 * 0.463 * var(--text));\n}\n");
  expect(formatTheme({ headings: "Source Sans 3" })).toContain("--headings: var(--sans);\n}\n:is(h1");
  expect(formatTheme({ text: "Source Sans 3" })).toBe(":root {\n--reading: var(--sans);\n}\n");
});

test("close pages have less room at each step, and every step more than the one before", () => {
  const steps = [...formatTheme({ density: "close" }).matchAll(/--space-(\d): ([\d.]+)rem;/g)];
  const usual = { 4: 1, 5: 1.5, 6: 2.25, 7: 3.5, 8: 5.5, 9: 8 };
  expect(steps.map(([, step]) => step)).toEqual(Object.keys(usual));
  const rooms = steps.map(([, , rem]) => Number(rem));
  for (const [index, most] of Object.values(usual).entries()) expect(rooms[index]).toBeLessThan(most);
  expect(rooms).toEqual(rooms.toSorted((a, b) => a - b));
});
