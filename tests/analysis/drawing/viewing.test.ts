// What a viewing asks for is what a drawing is inspected for.
import { describe, expect, test } from "vitest";
import { inspectDrawing } from "../../../src/analysis/drawing/inspect.ts";
import type { Part } from "../../../src/analysis/drawing/viewing.ts";
import { selectInstances } from "../../../src/svg/limitedchange.ts";
import { box, disc, field, red, resolve, stripe, white, yellow } from "../sight.ts";

describe("a viewing", () => {
  test("tells the parts of the work in their order, each once", async () => {
    const parts: Part[] = [];
    await inspectDrawing(resolve(field(white) + disc(150, 100, 50, red)), {
      distance: 40,
      lap: (part) => parts.push(part),
    });
    expect(parts).toEqual([
      "labels",
      "colours",
      "check",
      "distance view",
      "focus",
      "lines",
      "distance steps",
      "colours along lines",
      "near limit",
    ]);
  });

  test("names the focus, or leaves it to be found", async () => {
    const resolved = resolve(field(white) + disc(150, 100, 50, red) + stripe(180, 20, red));
    const sourceOf = async (viewing: Parameters<typeof inspectDrawing>[1]) =>
      (await inspectDrawing(resolved, viewing)).table.focus.source;
    const selected = selectInstances(resolved, "#d");
    if (typeof selected === "string") throw new Error(selected);
    expect(await sourceOf({ distance: 40 })).toBe("found");
    expect(await sourceOf({ distance: 40, focus: { colour: red } })).toBe("named");
    expect(await sourceOf({ distance: 40, focus: { select: selected } })).toBe("named");
  });
});

test("a survey follows the focus as far, and says nothing of the limit of sight", async () => {
  // A stripe of 0.0117 heights is half a percent over what is told apart from 40 heights, 0.01164.
  const body = field(white) + disc(150, 100, 50, yellow) + stripe(180, 2.34, red);
  const all = await inspectDrawing(resolve(body), { distance: 40 });
  expect(all.table.focus.steps).toHaveLength(6);
  expect(all.warnings).toEqual([{ about: "nearLimit", names: ["red"] }]);
  const brief = await inspectDrawing(resolve(body), { distance: 40, isBrief: true });
  expect(brief.table.focus).toEqual(all.table.focus);
  expect(brief.warnings).toEqual([]);
  expect(brief.table.edges).toEqual(all.table.edges);
});

// #777777 and #818181 are 3.9 apart (ΔL 4.0 over S_L 1.01).
describe("a change that a viewing announces", () => {
  const [dark, middle] = ["#777777", "#818181"] as const;
  const shaded = field(white) + stripe(100, 50, dark) + stripe(150, 50, middle);

  test("keeps near-equal paints apart where it treats them differently", async () => {
    const without = await inspectDrawing(resolve(shaded), { distance: 40 });
    expect(without.table.edges).toHaveLength(1);
    const { table } = await inspectDrawing(resolve(shaded), { distance: 40, change: { replace: middle } });
    expect(table.edges).toHaveLength(2);
    // They are still one paint in the original.
    const greys = table.paints.filter(({ share }) => share < 0.3);
    expect(new Set(greys.map(({ group }) => group)).size).toBe(1);
  });

  test("makes each of two near-equal slices as thin as it is: apart, 0.8 % is too thin", async () => {
    const slices = field(white) + stripe(100, 1.6, dark) + stripe(101.6, 1.6, middle);
    const { table } = await inspectDrawing(resolve(slices), { distance: 40, change: { replace: middle } });
    expect(table.paints.map(({ vanishes }) => vanishes)).toEqual([false, true, true]);
    expect(table.edges).toEqual([]);
    // As one they are 1.6 %, and stay.
    expect((await inspectDrawing(resolve(slices), { distance: 40 })).table.edges).toHaveLength(1);
  });

  test("sets the selected part apart, and nothing moves but that", async () => {
    const resolved = resolve(field(white) + disc(80, 100, 40, red, "one") + box(180, 60, 80, 80, red));
    const only = selectInstances(resolved, "#one");
    if (typeof only === "string") throw new Error(only);
    const { table } = await inspectDrawing(resolved, { distance: 40, change: { replace: red, only } });
    expect(table.paints.map(({ id }) => id)).toEqual(["p1", "p2", "p2s"]);
    const lengths = table.edges.map(({ length, focusLength }) => [length, focusLength]);
    // A square of 80 and a circle of radius 40, all of both the focus.
    expect(Math.abs((lengths[0]?.[0] ?? 0) - 1.6)).toBeLessThan(0.01);
    expect(Math.abs((lengths[1]?.[0] ?? 0) - 0.4 * Math.PI)).toBeLessThan(0.013);
    for (const [length, focusLength] of lengths) expect(focusLength).toBeCloseTo(length ?? 0, 9);
  });
});
