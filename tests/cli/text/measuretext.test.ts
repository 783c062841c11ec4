import { expect, test } from "vitest";
import { describeMeasure } from "../../../src/cli/text/measuretext.ts";
import { measure } from "../measured.ts";

test("everything that there is to say about a drawing, clarity first", () => {
  const [head = "", row = ""] = describeMeasure(measure).split("\n").slice(-4);
  expect(head.slice(0, 79)).toBe(
    "  edge              length  contrast  grade                contrast ratio  ΔE00",
  );
  expect(row).toMatch(
    /^ {2}dark red \/ green {4}1\.23 {4}12\.3 % {2}weak, near the line {12}1\.20 {2}60\.0 .*hue only, both colours$/,
  );
  expect(describeMeasure(measure)).toContain(
    "\n  Clarity 27.4 %, strength 20.6 %, weakest edge 12.3 % (dark red / green)\n",
  );
  expect(describeMeasure({ ...measure, edges: [] })).toBe(`\
a.svg: 1:1.618, seen from 320 flag heights away (a model of sight)

  One colour: no edges to measure.
  Focus (named): 10.0 % of the flag, clarity 27.4 %, lasts to 320 or more flag heights
  Left of it: 99.99 % from 20 (clarity 27 %), 60 % from 80 (no edge), nothing from 320

  id  colour                                        hex       share  reflectance  tincture
  p1  dark red                                      #800000  50.0 %       10.0 %  colour
  p2  green (vanishes, uneven, #009000 to #007000)  #008000  50.0 %       10.0 %  colour
  p3  grey                                          #777777   0.0 %       10.0 %

  Note: Near the limit of sight: parts in green.`);
});

test("a focus that lasts to no step is told from no focus", () => {
  const focus = { source: "found", share: 0.1, clarity: null, from: [], lastsTo: null } as const;
  expect(describeMeasure({ ...measure, focus })).toContain(
    "  Focus (found): 10.0 % of the flag, clarity none, lasts to under 10 flag heights\n\n",
  );
  expect(describeMeasure({ ...measure, focus: { ...focus, source: "none" } })).toContain(
    "\n  No emblem found: nothing has to be seen before the rest.\n\n",
  );
});

test("no edge has no marks and no table", () => {
  const text = describeMeasure({ ...measure, edges: [], clarity: null, strength: null, weakestEdge: null });
  expect(text).toContain("\n\n  One colour: no edges to measure.\n");
  expect(text).not.toMatch(/Clarity|weakest|ratio/);
});

test("a contrast is printed with the grade that stands beside it", () => {
  const [edge] = measure.edges;
  if (edge === undefined) throw new Error("the sample has an edge");
  const soft = { ...measure, edges: [{ ...edge, contrast: 44.96, grade: "soft" as const }] };
  expect(describeMeasure(soft)).toMatch(/dark red \/ green +1\.23 +44\.96 % +soft/);
  expect(describeMeasure({ ...measure, clarity: 99.96 })).toContain("Clarity 99.96 %,");
});
