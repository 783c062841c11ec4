import { expect, test } from "vitest";
import { linkFrom } from "../../../src/views/address.ts";
import { describeRuler, presentChosen, presentRuler } from "../../../src/views/study/contrastruler.ts";
import { createFormat } from "../../../src/words/format.ts";
import { compared, type Edge } from "../../publish/compared.ts";
import { studyResult } from "../../publish/sample.ts";

const format = createFormat("en-GB");
const link = linkFrom("/studies/a-square/");
const names = ["white", "blue", "red", "green", "gold", "black"];
const paints = names.map((name, index) => ({ name, hex: `#00000${index}` as const }));
const edge = (
  at: number,
  outcome: Edge["outcome"],
  contrast: Edge["contrast"],
  more: Partial<Edge> = {},
): Edge => {
  // Fifteen pairs of six paints.
  const pairs = names.flatMap((_, a) => names.flatMap((__, b) => (a < b ? [[a, b] as const] : [])));
  const [a = 0, b = 0] = pairs[at] ?? [];
  return { between: [`p${a + 1}`, `p${b + 1}`], outcome, contrast, length: 2, ...more };
};
const ruler = (...edges: readonly Edge[]) => {
  const focus = edges.some((one) => one.focus) ? ({ lastsTo: 80, clarity: [50, 60] } as const) : undefined;
  const result = { ...studyResult, comparison: compared(paints, edges, focus), edgeLines: [] };
  const found = presentRuler(result, link, format);
  if (found === undefined) throw new Error("no ruler");
  return found;
};

test("bands and ticks at the published steps, each band named in its middle", () => {
  const { bands, ticks } = ruler(edge(0, "same", [80, 80]));
  expect(bands).toEqual([
    { name: "weak", middle: 15 },
    { name: "soft", middle: 37.5 },
    { name: "clear", middle: 52.5 },
    { name: "strong", middle: 80 },
  ]);
  expect(ticks.map(({ x, text }) => [x, text])).toEqual([
    [0, "0"],
    [30, "30"],
    [45, "45"],
    [60, "60"],
    [100, "100%"],
  ]);
  expect(ticks.filter(({ isClear }) => isClear).map(({ x }) => x)).toEqual([45]);
});

test("ring and dot stand at the contrast itself, and the line of a falling edge is hollow", () => {
  const [up, down] = ruler(edge(0, "gained", [5.21, 63.48]), edge(1, "lost", [84.2, 27])).rows;
  expect([up?.ring, up?.dot, up?.hollow]).toEqual([5.21, 63.48, undefined]);
  expect([down?.ring, down?.dot]).toEqual([84.2, 27]);
  expect(down?.hollow).toBeGreaterThan(1);
  expect(down?.hollow).toBeLessThan(down?.thickness ?? 0);
});

test("what gained and lost are is told where an edge becomes clear, or is so no longer", () => {
  const crosses = (...contrast: [number, number]) => ruler(edge(0, "same", contrast)).notes.crosses;
  expect([crosses(44, 46), crosses(46, 44), crosses(45, 60), crosses(20, 44)]).toEqual([
    true,
    true,
    false,
    false,
  ]);
});

test("merged has no dot, parted no ring, and what stays has its ring round its dot", () => {
  const { rows, notes } = ruler(
    edge(0, "merged", [40, 0]),
    edge(1, "parted", [null, 52]),
    edge(2, "same", [70, 70.4]),
  );
  const [merged, parted, same] = rows;
  expect([merged?.ring, merged?.dot]).toEqual([40, undefined]);
  expect([parted?.ring, parted?.dot]).toEqual([undefined, 52]);
  expect(same?.radius.ring).toBeGreaterThan((same?.radius.dot ?? Number.NaN) + 2);
  expect(notes).toMatchObject({ merged: true, falls: true, crosses: false, near: false, hue: false });
});

test("the longer an edge the thicker, and the shortest is thick enough to be seen", () => {
  const lengths = [0.001, 0.2, 1, 1.1, 4];
  const { rows } = ruler(...lengths.map((length, at) => edge(at, "gained", [20, 70], { length })));
  const thick = rows.map(({ thickness }) => thickness);
  expect(rows.map((row) => row.edge.extent)).toEqual(
    ["4.00", "1.10", "1.00", "0.20", "0.00"].map((length) => `${length} flag heights`),
  );
  expect([...thick].sort((one, other) => other - one)).toEqual(thick);
  expect(new Set(thick).size).toBe(lengths.length);
  expect(Math.min(...thick)).toBeGreaterThanOrEqual(2);
});

test("what changes first, of that what has to be seen, then the longest", () => {
  const { rows, notes } = ruler(
    edge(0, "same", [80, 80], { length: 9, focus: 9 }),
    edge(1, "better", [46, 50], { length: 5 }),
    edge(2, "gained", [20, 50], { length: 1, focus: 1 }),
    edge(3, "worse", [50, 46], { length: 6 }),
  );
  expect(rows.map(({ edge: { outcome } }) => outcome)).toEqual(["gained", "worse", "better", "same"]);
  expect(notes.outline).toBe(true);
});

test("up to eight edges stand open; of more those that stay open on demand, with their count", () => {
  const same = (count: number) => Array.from({ length: count }, (_, at) => edge(at + 1, "same", [80, 80]));
  expect(ruler(edge(0, "gained", [20, 70]), ...same(7)).rest).toBeUndefined();
  const { rows, rest } = ruler(edge(0, "gained", [20, 70]), ...same(8));
  expect(rows.length).toBe(1);
  expect(rest?.label).toBe("8 edges that stay as they were");
  expect(rest?.rows.length).toBe(8);
});

test("of very many that change twelve stand open, and what is left is counted", () => {
  const edges = Array.from({ length: 14 }, (_, at) => edge(at, "gained", [20, 70]));
  const { rows, rest } = ruler(...edges, edge(14, "same", [80, 80]));
  expect(rows.length).toBe(12);
  expect(rest?.label).toBe("2 more edges that change, and 1 edge that stays as it was");
});

test("one colour has no ruler; one edge has one of its own", () => {
  const result = { ...studyResult, comparison: compared(paints, []), edgeLines: [] };
  expect(presentRuler(result, link, format)).toBeUndefined();
  const [first] = studyResult.comparison.edges;
  const own = first && presentChosen([{ result: studyResult, edge: first }], link, format);
  expect(own?.rows.map(({ ring, dot }) => [ring, dot])).toEqual([[84.2, 84.2]]);
});

test("says in words what it shows, those on demand included", () => {
  expect(describeRuler(ruler(edge(0, "lost", [70, 20]), edge(1, "parted", [null, 50])), format)).toBe(
    "Contrast ruler. white / blue, 2.00 flag heights: contrast 70% to 20%, strong to weak; lost; white / red, 2.00 flag heights: contrast 50%, now clear; parted.",
  );
});
