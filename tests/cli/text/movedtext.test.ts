import { expect, test } from "vitest";
import { describeFormer, formatMoved } from "../../../src/cli/text/movedtext.ts";

const marks = { verdict: "mixed", clarity: [42, null] };
const moved = {
  studies: [
    {
      study: "a",
      was: marks,
      is: { verdict: "clearer", clarity: [42, 100] },
      isLeftOut: false,
      pictures: [],
    },
    { study: "b", was: null, is: marks, isLeftOut: false, pictures: [] },
    { study: "c", was: marks, is: null, isLeftOut: false, pictures: [] },
    { study: "d", was: marks, is: null, isLeftOut: true, pictures: [] },
    { study: "e", was: marks, is: marks, isLeftOut: false, pictures: ["original", "redesign"] },
  ],
  gone: [
    { address: "/studies/a/edges/000000-ffffff/", to: "/studies/a/" },
    { address: "/studies/c/", to: null },
  ],
};

test("a line for each thing that moves", () => {
  expect(formatMoved(moved, "published").join("\n")).toBe(`\
What moves against published:
  a: clarity 42 % → 100 %, clearer; was clarity 42 % → no edges, mixed
  b: is new, clarity 42 % → no edges, mixed
  c: is not shown any more
  d: cannot be built
  e: another picture of the original and of the redesign
  /studies/a/edges/000000-ffffff/ goes and leads to /studies/a/
  /studies/c/ goes and will say so`);
  expect(moved.studies.map(describeFormer)).toEqual([
    "was clarity 42 % → no edges, mixed",
    "is new",
    "",
    "",
    "another picture of the original and of the redesign",
  ]);
});

test("quiet where nothing does", () => {
  const still = { studies: [], gone: [] };
  expect(formatMoved(still, "published")).toEqual([]);
});
