import { expect, test } from "vitest";
import type { ComparedEdge } from "../../../src/measure/comparison.ts";
import { presentEdge } from "../../../src/views/edge/edgerow.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison } from "../../publish/sample.ts";

const format = createFormat("en");

const edge = comparison.edges[1] as ComparedEdge;
const same = comparison.edges[0] as ComparedEdge;

test("both readings, and the new names only where they changed", () => {
  expect(presentEdge(edge, comparison, format)).toEqual({
    key: "p1-p2",
    names: "dark blue / red",
    renamed: "dark blue / yellow",
    sides: [["dark blue"], ["red", "yellow"]],
    extent: "2.00 flag heights",
    length: "2.00 flag heights",
    before: {
      hexes: ["#12235c", "#c8202f"],
      names: "dark blue / red",
      contrast: "25%",
      grade: "weak",
      clear: false,
    },
    after: {
      hexes: ["#12235c", "#f4c430"],
      names: "dark blue / yellow",
      contrast: "67%",
      grade: "strong",
      clear: true,
    },
    outcome: "gained",
    isSame: false,
    grades: "weak to strong",
    marks: [],
    isHueAlone: false,
  });
  expect(presentEdge(same, comparison, format)).toMatchObject({
    renamed: undefined,
    sides: [["dark blue"], ["white"]],
    grades: "strong",
  });
});

test("an edge of the part that the author names is called by it", () => {
  const paint = (id: string) => comparison.before.colours.find((colour) => colour.id === id);
  const named = { ...paint("p2"), name: "the square", part: { of: "red", called: "the square" } };
  const colours = comparison.before.colours.map((colour) => (colour.id === "p2" ? named : colour));
  const before = { ...comparison.before, colours: colours as typeof comparison.before.colours };
  const names = [["dark blue", "the square"], edge.names[1]] as const;
  expect(presentEdge({ ...edge, names }, { ...comparison, before }, format)).toMatchObject({
    called: "the square on dark blue",
    renamed: "yellow on dark blue",
  });
  expect(presentEdge(same, { ...comparison, before }, format).called).toBeUndefined();
});

test("what makes a grade doubtful is marked, and on which side", () => {
  const marks = (was: object, is: object) =>
    presentEdge(
      edge,
      {
        ...comparison,
        before: { ...comparison.before, edges: comparison.before.edges.map((one) => ({ ...one, ...was })) },
        after: { ...comparison.after, edges: comparison.after.edges.map((one) => ({ ...one, ...is })) },
      },
      format,
    ).marks;
  expect(marks({ nearLine: true }, {})).toEqual(["near the line before"]);
  expect(marks({ nearLine: true }, { nearLine: true, hueOnly: true })).toEqual([
    "near the line",
    "by hue alone now",
  ]);
});

test("a merged edge says so in place of a grade, also where the paint is gone from the redesign", () => {
  const after = { ...comparison.after, colours: comparison.after.colours.filter(({ id }) => id !== "p2") };
  const row = presentEdge(
    { ...edge, contrast: [24.6, 0], outcome: "merged" },
    { ...comparison, after },
    format,
  );
  expect(row.after).toMatchObject({
    hexes: ["#12235c", "#12235c"],
    contrast: "0%",
    grade: "merged",
    clear: false,
  });
});

test("a parted edge has no reading before", () => {
  expect(
    presentEdge({ ...edge, contrast: [null, 67.2], outcome: "parted" }, comparison, format).before,
  ).toBeUndefined();
});

test.each([
  [1.2, 0, "1.50 flag heights, 1.20 of it whole outline"],
  [1.2, 0.4, "1.50 flag heights, 1.20 of it 75% of outline"],
  [998, 2, "1.50 flag heights, 99.8% of outline"],
  [0, 2, "1.50 flag heights"],
])("with %s of the outline of what has to be seen, and %s elsewhere: %s", (own, other, extent) => {
  const edges = comparison.after.edges.map((one) => ({ ...one, focusLength: one.b === "p3" ? own : other }));
  expect(presentEdge(same, { ...comparison, after: { ...comparison.after, edges } }, format).extent).toBe(
    extent,
  );
});

test("an edge of paints that are in no drawing is our own fault and throws", () => {
  expect(() => presentEdge({ ...edge, a: "p8", b: "p9" }, comparison, format)).toThrow(RangeError);
});

test.each([
  ["de", 2, "2,00 Flaggenhöhen"],
  ["es", 1, "1,00 altura de bandera"],
  ["es", 1.004, "1,00 altura de bandera"],
  ["es", 2.5, "2,50 alturas de bandera"],
  ["ar", 3, "3.00 أضعاف ارتفاع العلم"],
  ["ar", 2.5, "2.50 ضعف ارتفاع العلم"],
])("a length in %s of %f flag heights", (language, length, said) => {
  expect(presentEdge({ ...edge, length }, comparison, createFormat(language)).length).toBe(said);
});
