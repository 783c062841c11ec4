import fc from "fast-check";
import { expect, test } from "vitest";
import { spreadApart } from "../../../src/views/study/labelspacing.ts";

test("positions with room stay where they are", () => {
  expect(spreadApart([10, 40, 90], 17, 0, 100)).toEqual([10, 40, 90]);
});

test("two that are too near give way by the same amount", () => {
  const [first, second] = spreadApart([50, 54], 10, 0, 100);
  expect(first).toBeCloseTo(47, 1);
  expect(second).toBeCloseTo(57, 1);
});

test("in order, apart and inside, for any positions", () => {
  const positions = fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 15 });
  fc.assert(
    fc.property(positions, (unsorted) => {
      const sorted = [...unsorted].sort((a, b) => a - b);
      const spread = spreadApart(sorted, 17, 0, 300);
      for (const [index, value] of spread.entries()) {
        expect(value).toBeGreaterThanOrEqual(-0.001);
        expect(value).toBeLessThanOrEqual(300.001);
        if (index > 0) expect(value - (spread[index - 1] ?? 0)).toBeGreaterThan(16.5);
      }
    }),
  );
});

test("where they cannot all fit, they share the room", () => {
  const spread = spreadApart([0, 0, 0, 0, 0], 17, 0, 40);
  expect(spread.map((value) => Math.round(value))).toEqual([0, 10, 20, 30, 40]);
});
