// #777777 and #818181 are 3.9 apart (ΔL 4.0 over S_L 1.01), #818181 and #8b8b8b 3.8, the outer two 7.8.
import { describe, expect, test } from "vitest";
import { findWhole, groupPaints, splitGroups } from "../../../src/analysis/drawing/paintgroup.ts";
import { renderScene } from "../../../src/analysis/drawing/scene.ts";
import { selectInstances } from "../../../src/svg/limitedchange.ts";
import { disc, field, red, resolve, stripe, white } from "../sight.ts";

const greys = ["#777777", "#818181", "#8b8b8b"] as const;
const shaded = (heights: readonly [number, number, number]) =>
  resolve(
    field(white) + greys.map((grey, index) => stripe(10 + 60 * index, heights[index] ?? 0, grey)).join(""),
  );

async function groupsOf(resolved: ReturnType<typeof resolve>, distance: number) {
  const { shapes, areas, looks } = await renderScene(resolved, { distance });
  return { shapes, groups: groupPaints(shapes.paints, areas, looks, { distance }) };
}

describe("groupPaints", () => {
  // Paints in the order of the drawing: white, then the greys.
  test("a paint is joined to a larger one of nearly its colour, and no chain is made", async () => {
    expect((await groupsOf(shaded([50, 40, 30]), 40)).groups).toEqual([0, 1, 1, 3]);
    expect((await groupsOf(shaded([30, 50, 40]), 40)).groups).toEqual([0, 2, 2, 2]);
  });

  test("in the full drawing every paint is itself", async () => {
    expect((await groupsOf(shaded([50, 40, 30]), 0)).groups).toEqual([0, 1, 2, 3]);
  });

  test("but for a pattern that paints nothing: it is one with the field that shows there", async () => {
    const pattern =
      '<pattern id="p" patternUnits="userSpaceOnUse" width="9" height="9"><title>a</title></pattern>';
    const resolved = resolve(`${field(white)}${pattern}${disc(150, 60, 40, "url(#p)")}`);
    for (const distance of [0, 40]) expect((await groupsOf(resolved, distance)).groups).toEqual([0, 0]);
  });
});

describe("splitGroups", () => {
  test("what is changed stands apart from what is not; without a change nothing does", async () => {
    const { shapes, groups } = await groupsOf(shaded([30, 50, 40]), 40);
    expect(splitGroups(shapes.paints, groups, { distance: 40 })).toBe(groups);
    expect(splitGroups(shapes.paints, groups, { distance: 40, change: { replace: greys[0] } })).toEqual([
      0, 1, 2, 2,
    ]);
    // The head itself is changed: the other two stay one, under the first of them.
    expect(splitGroups(shapes.paints, groups, { distance: 40, change: { replace: greys[1] } })).toEqual([
      0, 1, 2, 1,
    ]);
  });
});

describe("findWhole", () => {
  test("a selected part belongs to its paint, and is one with it from any distance", async () => {
    const resolved = resolve(field(white) + stripe(150, 20, red) + disc(150, 60, 40, red));
    const only = selectInstances(resolved, "#d");
    if (typeof only === "string") throw new Error(only);
    const { shapes, areas, looks } = await renderScene(resolved, {
      distance: 40,
      change: { replace: red, only },
    });
    expect(shapes.paints.map((paint) => findWhole(shapes.paints, paint))).toEqual([undefined, undefined, 1]);
    for (const distance of [0, 40])
      expect([...groupPaints(shapes.paints, areas, looks, { distance })][2]).toBe(1);
  });
});
