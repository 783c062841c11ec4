import { expect, test } from "vitest";
import { presentEdge } from "../../../src/views/edge/edgerow.ts";
import { presentVisions } from "../../../src/views/edge/edgevision.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison } from "../../publish/sample.ts";

const format = createFormat("en");
const edge = comparison.edges[1];
if (edge === undefined) throw new Error("the sample has two edges");
const rows = presentVisions(edge, presentEdge(edge, comparison, format), comparison, format);

test("four kinds of vision, each with the figures of both sides as they were measured", () => {
  expect(rows.map(({ heading }) => heading)).toEqual(["Protan", "Deutan", "Tritan", "Grey"]);
  // As typed in the sample: 24.6 weak and 67.2 strong, 30 apart under each; two greys 14 and 55 apart.
  expect(rows[1]).toMatchObject({
    before: { contrast: "25%", grade: "weak", difference: "30" },
    after: { contrast: "67%", grade: "strong", difference: "30" },
  });
  expect([rows[3]?.before?.difference, rows[3]?.after?.difference]).toEqual(["14", "55"]);
});

test("grey has three equal parts, and its contrast, which is that of the edge, is not said again", () => {
  expect([rows[3]?.before?.contrast, rows[3]?.before?.grade]).toEqual([undefined, undefined]);
  for (const hex of [...(rows[3]?.before?.hexes ?? []), ...(rows[3]?.after?.hexes ?? [])])
    expect(hex).toMatch(/^#(..)\1\1$/);
});

test("an edge that there was not before has nothing before", () => {
  const parted = { ...edge, contrast: [null, 67.2] as const, outcome: "parted" as const };
  const none = { ...comparison, before: { ...comparison.before, edges: [] } };
  const [row] = presentVisions(parted, presentEdge(parted, none, format), none, format);
  expect(row?.before).toBeUndefined();
  expect(row?.after?.contrast).toBe("67%");
});
