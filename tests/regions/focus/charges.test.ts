import { describe, expect, test } from "vitest";
import { findRegions } from "../../../src/regions/component.ts";
import { countMask, findCharges, maskLabels, maskRegions } from "../../../src/regions/focus/charges.ts";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { findRuns } from "../../../src/regions/runs.ts";
import { listed } from "../../../src/svg/paintnumber.ts";
import { drawMap, readMap } from "../picture.ts";

/** Labels of the charges with their pixels, in reading order. */
function chargesOf(map: LabelMap): readonly (readonly [number, number])[] {
  const regions = findRegions(findRuns(map));
  return [...findCharges(regions, map.labels.filter((label) => label !== 0).length)]
    .sort((a, b) => a - b)
    .map((index) => [regions.regions[index]?.label ?? 0, regions.regions[index]?.pixels ?? 0]);
}

const disc = (x: number, y: number, radius: number): boolean => Math.hypot(x - 45, y - 30) < radius;

describe("findCharges", () => {
  test("a charge in the middle of a field", () => {
    expect(chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 12) ? 2 : 1))).map(([label]) => label)).toEqual([
      2,
    ]);
  });

  test("stripes and cantons are none: they reach the border", () => {
    expect(chargesOf(drawMap(90, 60, (x, y) => (x < 30 && y < 30 ? 3 : y < 30 ? 1 : 2)))).toEqual([]);
  });

  test("a charge in two colours is a charge in both", () => {
    expect(
      chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 6) ? 3 : disc(x, y, 12) ? 2 : 1))).map(
        ([label]) => label,
      ),
    ).toEqual([2, 3]);
  });

  test("the hole of a ring, in the paint of the field, is no charge", () => {
    expect(
      chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 6) ? 1 : disc(x, y, 12) ? 2 : 1))).map(
        ([label]) => label,
      ),
    ).toEqual([2]);
  });

  test("a field within a bordure, over 35 % of the flag, is no charge; what lies on it is", () => {
    // 50 by 50 … 70 by 40 of 90 by 60 is 52 %.
    const bordure = drawMap(90, 60, (x, y) =>
      disc(x, y, 10) ? 3 : x > 10 && x < 80 && y > 10 && y < 50 ? 2 : 1,
    );
    expect(chargesOf(bordure).map(([label]) => label)).toEqual([3]);
  });

  test("35 % of the flag is the most a charge may have", () => {
    // 7 by 5 of 10 by 10, and one pixel more.
    const field = [
      "1111111111",
      "1222222211",
      "1222222211",
      "1222222211",
      "1222222211",
      "1222222211",
      "1111111111",
      "1111111111",
      "1111111111",
      "1111111111",
    ];
    expect(chargesOf(readMap(...field))).toEqual([[2, 35]]);
    expect(chargesOf(readMap(...field.with(6, "1211111111")))).toEqual([]);
  });

  test("a charge that meets a transparent part is at the border", () => {
    expect(chargesOf(readMap("11111", "12011", "11111"))).toEqual([]);
  });

  test("a counterchanged disc is a charge in both its halves: each lies on the other paint, none is a hole", () => {
    const counterchanged = drawMap(90, 60, (x, y) => (disc(x, y, 12) === x < 45 ? 2 : 1));
    expect(chargesOf(counterchanged).map(([label]) => label)).toEqual([2, 1]);
  });

  test("a ring over two fields: the ring is a charge, the fields within it are not", () => {
    const ring = drawMap(90, 60, (x, y) => (disc(x, y, 16) && !disc(x, y, 8) ? 3 : x < 45 ? 1 : 2));
    expect(chargesOf(ring).map(([label]) => label)).toEqual([3]);
  });

  test("a charge within the hole of a ring is a charge, the hole is not", () => {
    const target = drawMap(90, 60, (x, y) =>
      disc(x, y, 5) ? 3 : disc(x, y, 11) ? 1 : disc(x, y, 18) ? 2 : 1,
    );
    expect(chargesOf(target).map(([label]) => label)).toEqual([2, 3]);
  });

  test("a disc over two fields in a paint of its own", () => {
    expect(
      chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 12) ? 3 : x < 45 ? 1 : 2))).map(([l]) => l),
    ).toEqual([3]);
  });

  test("a charge on a stripe, in the paint of a field that the stripe parts it from, is a charge", () => {
    // White disc on a red stripe between white fields: white is not around it, red is.
    const map = drawMap(90, 60, (x, y) => (disc(x, y, 8) ? 1 : y > 20 && y < 40 ? 2 : 1));
    expect(chargesOf(map).map(([label]) => label)).toEqual([1]);
  });

  test("a charge that runs into a stripe of its own paint reaches the border with it", () => {
    expect(chargesOf(drawMap(90, 60, (x, y) => (disc(x, y, 12) || y > 38 ? 2 : 1)))).toEqual([]);
  });

  test("a charge that touches the border is none", () => {
    expect(chargesOf(drawMap(90, 60, (x, y) => (Math.hypot(x, y - 30) < 12 ? 2 : 1)))).toEqual([]);
  });

  /** A star of `points` around the middle of 90 × 60, its inner radius 0.4 of the outer. */
  const star =
    (points: number, radius: number) =>
    (x: number, y: number): boolean => {
      const turn = (((Math.atan2(y - 30, x - 45) * points) / Math.PI + 2 * points) % 2) - 1;
      return Math.hypot(x - 45, y - 30) < radius * (0.4 + 0.6 * Math.abs(turn));
    };

  test("a star on a disc, in the paint of the field around the disc, is the charge's own and no hole", () => {
    const map = drawMap(90, 60, (x, y) => (star(5, 12)(x, y) ? 1 : disc(x, y, 16) ? 2 : 1));
    expect(chargesOf(map).map(([label]) => label)).toEqual([2, 1]);
  });

  test("a thin frame is seen through, though its opening lies aside", () => {
    const map = drawMap(90, 60, (x, y) =>
      Math.hypot(x - 50, y - 30) < 19 ? 1 : Math.hypot(x - 45, y - 30) < 26 ? 2 : 1,
    );
    expect(chargesOf(map).map(([label]) => label)).toEqual([2]);
  });

  test("panels within a bordure are fields; an animal in the paint of the bordure is the charge", () => {
    const animal = (x: number, y: number): boolean =>
      x > 50 && x < 74 && y > 22 && y < 40 && (x < 56 || y < 30);
    const panels = drawMap(90, 60, (x, y) =>
      y < 5 || y > 55 || x < 5 || x > 85 || (x > 33 && x < 38) || animal(x, y)
        ? 1
        : x < 19
          ? 2
          : x < 34
            ? 3
            : 4,
    );
    // 23 × 18 less 18 × 10, by the pixels' centres: 6 × 18 + 18 × 8.
    expect(chargesOf(panels)).toEqual([[1, 252]]);
  });

  test("pieces of a canton that its arms cut off from the border are none; the charge in the fly is", () => {
    // A cross over the whole canton, so that the quarter at its lower right touches neither border.
    const canton = (x: number, y: number): number => (Math.abs(x - 20) < 4 || Math.abs(y - 15) < 4 ? 2 : 3);
    const map = drawMap(90, 60, (x, y) =>
      x < 40 && y < 30 ? canton(x, y) : Math.hypot(x - 65, y - 35) < 8 ? 4 : 1,
    );
    expect(chargesOf(map).map(([label]) => label)).toEqual([4]);
  });

  test("a chequered field has no charge", () => {
    const chequered = drawMap(90, 60, (x, y) => 1 + ((Math.floor(x / 15) + Math.floor(y / 12)) % 2));
    expect(chargesOf(chequered)).toEqual([]);
  });

  test("a band that runs behind its neighbours without reaching the border is none; the sun that rises over it is", () => {
    // Between the sides of a V: sky, a band, and the ground that reaches the foot.
    const map = drawMap(540, 360, (x, y) => {
      if (Math.abs(x - 270) > 240 - 0.62 * y) return 1;
      if (y > 144 && y < 234) return 2;
      if (y >= 234) return 3;
      return Math.hypot(x - 270, y - 144) < 84 ? 5 : 4;
    });
    expect(chargesOf(map).map(([label]) => label)).toEqual([5]);
  });

  test("a wedge whose points end beside the border is a field, and a star on the triangle before it is a charge", () => {
    const map = drawMap(180, 120, (x, y) => {
      const fromMiddle = Math.abs(y - 60);
      if (Math.hypot(x - 25, y - 60) < 9) return 4;
      if (fromMiddle < 60 - 0.9 * x) return 3;
      return fromMiddle < 60 - 0.6 * x && x > 4 ? 2 : 1;
    });
    expect(chargesOf(map).map(([label]) => label)).toEqual([4]);
  });

  test("a shield in the paints of the stripes it lies on is a charge; a piece of stripe that it cuts off is none", () => {
    // Three stripes 1, 2, 3; a shield lies over all: 3 over the line of 1 and 2, 1 over that of 2 and 3, a bar of 4 inside.
    const shield = drawMap(180, 120, (x, y) => {
      const inside = Math.abs(x - 60) < 24 && y > 16 && y < 104;
      if (inside) return Math.abs(x - 60) < 16 && Math.abs(y - 60) < 4 ? 4 : y < 60 ? 3 : 1;
      return y < 40 ? 1 : y < 80 ? 2 : 3;
    });
    expect(chargesOf(shield).map(([label]) => label)).toEqual([3, 4, 1]);
    // A gate of 4 over the line of two stripes: what of the upper stripe stands in its opening lies behind.
    const cut = drawMap(180, 120, (x, y) => {
      const isGate = Math.abs(x - 90) < 40 && y > 24 && y < 96 && (Math.abs(x - 90) > 24 || y < 36);
      return isGate ? 4 : y < 60 ? 1 : 2;
    });
    expect(chargesOf(cut).map(([label]) => label)).toEqual([4]);
  });

  test("a speck far smaller than the rest is none, a small star beside a large charge is", () => {
    const beside = (radius: number) =>
      drawMap(900, 600, (x, y) =>
        Math.hypot(x - 450, y - 300) < 200 ? 2 : Math.hypot(x - 100, y - 100) < radius ? 3 : 1,
      );
    // 0.05 % of the flag is 270 pixels: discs of radius 5 and 12.
    expect(chargesOf(beside(5)).map(([label]) => label)).toEqual([2]);
    expect(chargesOf(beside(12)).map(([label]) => label)).toEqual([3, 2]);
  });

  test("two charges side by side", () => {
    expect(chargesOf(readMap("1111111", "1211131", "1111111"))).toEqual([
      [2, 1],
      [3, 1],
    ]);
  });
});

test("maskRegions, maskLabels and countMask", () => {
  const map = readMap("111", "121", "111");
  const regions = findRegions(findRuns(map));
  const mask = maskRegions(regions, findCharges(regions, 9));
  expect([...mask]).toEqual([0, 0, 0, 0, 1, 0, 0, 0, 0]);
  expect([...maskLabels(map.labels, listed([false, true]))]).toEqual([...mask]);
  expect(countMask(mask)).toBe(1);
});
