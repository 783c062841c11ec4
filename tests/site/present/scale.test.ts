import { expect, test } from "vitest";
import { createFormat } from "../../../src/site/present/format.ts";
import { presentScale } from "../../../src/site/present/scale.ts";
import { comparison } from "../sample.ts";

const scale = presentScale(comparison, { black: 5, white: 85 }, createFormat("en"));
const [original, redesign] = scale.panels;
const middle = (chip: { y: number; height: number } | undefined) =>
  chip ? chip.y + chip.height / 2 : Number.NaN;

test("heights are proportional to reflectance between the blackest cloth and the whitest", () => {
  const [white, red, blue] = original.chips;
  const black = original.ticks.find((tick) => tick.text === "5")?.y ?? Number.NaN;
  const whitest = original.ticks.find((tick) => tick.text === "85")?.y ?? Number.NaN;
  expect(middle(white)).toBeCloseTo(whitest, 0);
  // (85 − 15.8) / 80 and (85 − 6.5) / 80 of the way down, from the sample's own figures.
  expect((middle(red) - whitest) / (black - whitest)).toBeCloseTo(0.865, 2);
  expect((middle(blue) - whitest) / (black - whitest)).toBeCloseTo(0.981, 2);
});

test("a clear edge is solid, one that is not is broken, and the longer one is thicker", () => {
  const weak = original.arcs.find((arc) => arc.text === "25");
  const strong = original.arcs.find((arc) => arc.text === "84");
  expect(weak?.dash).toMatch(/^[\d.]+ [\d.]+$/);
  expect(strong?.dash).toBeUndefined();
  expect(weak?.width).toBeGreaterThan(strong?.width ?? Number.POSITIVE_INFINITY);
  expect(redesign.arcs.every((arc) => arc.dash === undefined)).toBe(true);
});

test("the redesign is the mirror of the original", () => {
  const [first, second] = [original.chips[0], redesign.chips[0]];
  expect((first?.x ?? 0) + (first?.width ?? 0) + (second?.x ?? 0)).toBeCloseTo(scale.width, 5);
  expect([original.labelAnchor, redesign.labelAnchor]).toEqual(["start", "end"]);
});

test("two edges that get the same two colours are one line", () => {
  const edges = comparison.edges.map((edge) => ({ ...edge, a: "p1", b: "p2" }));
  const [panel] = presentScale({ ...comparison, edges }, { black: 5, white: 85 }, createFormat("en")).panels;
  expect(panel.arcs.length).toBe(1);
});

test("paints that reflect alike stand side by side and their labels apart", () => {
  const colours = comparison.before.colours.map((colour) => ({ ...colour, reflectance: 40 }));
  const before = { ...comparison.before, colours };
  const [panel] = presentScale({ ...comparison, before }, { black: 5, white: 85 }, createFormat("en")).panels;
  expect(new Set(panel.chips.map((chip) => chip.x)).size).toBe(3);
  const labels = panel.chips.map((chip) => chip.labelY).sort((a, b) => a - b);
  for (const [index, y] of labels.slice(1).entries()) expect(y - (labels[index] ?? 0)).toBeGreaterThan(16);
});

test("says in words what it shows", () => {
  expect(original.description).toBe(
    "Reflectance in percent, lightest first: white at 85, red at 16, and dark blue at 7. Lines: dark blue to white 84, strong, solid; dark blue to red 25, weak, broken.",
  );
});

test("a flag of one colour has one chip and no line", () => {
  const before = { ...comparison.before, colours: comparison.before.colours.slice(0, 1) };
  const [panel] = presentScale(
    { ...comparison, before, edges: [] },
    { black: 5, white: 85 },
    createFormat("en"),
  ).panels;
  expect([panel.chips.length, panel.arcs.length]).toEqual([1, 0]);
});
