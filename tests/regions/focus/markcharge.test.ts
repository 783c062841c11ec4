import { describe, expect, test } from "vitest";
import { markCharges } from "../../../src/regions/focus/markcharge.ts";
import { findPieces } from "../../../src/regions/focus/piece.ts";
import { firstCharge } from "../../../src/regions/traceline.ts";
import { drawMap, readMap } from "../picture.ts";

/** Marks of a mask drawn in rows of 0 and 1, in rows again. */
function marksOf(...rows: readonly string[]) {
  const { width, height, labels } = readMap(...rows);
  const { marks, ...rest } = markCharges(findPieces(Uint8Array.from(labels), width, height));
  return {
    rows: rows.map((_, y) => [...marks.slice(y * width, (y + 1) * width)].join("")),
    ...rest,
  };
}

describe("markCharges", () => {
  test("pieces of a tenth or more are charges, each with its mark, smaller ones are only focus", () => {
    // 16, 3 and 1 of 20: a tenth is 2.
    expect(marksOf("1111000000", "1111011100", "1111000000", "1111000001")).toEqual({
      rows: ["2222000000", "2222033300", "2222000000", "2222000001"],
      chargeCount: 2,
    });
    expect(firstCharge).toBe(2);
  });

  test("exactly a tenth is one", () => {
    // 9 and 1 of 10; 10 and 1 of 11.
    expect(marksOf("111000", "111010", "111000").chargeCount).toBe(2);
    expect(marksOf("111100", "111001", "111000").chargeCount).toBe(1);
  });

  test("what touches at a corner only is two", () => {
    expect(marksOf("1100", "1100", "0011", "0011")).toMatchObject({ chargeCount: 2 });
  });

  test("where no piece has a tenth the focus as a whole is the charge: a ring of stars", () => {
    // Twelve squares of 9 pixels each: 8.3 % of all.
    const map = drawMap(120, 120, (x, y) => {
      const turn = Math.round((Math.atan2(y - 60, x - 60) / Math.PI) * 6);
      const [u, v] = [60 + 40 * Math.cos((turn * Math.PI) / 6), 60 + 40 * Math.sin((turn * Math.PI) / 6)];
      return Math.abs(x - Math.round(u) - 0.5) < 1.1 && Math.abs(y - Math.round(v) - 0.5) < 1.1 ? 1 : 0;
    });
    const { marks, chargeCount } = markCharges(findPieces(Uint8Array.from(map.labels), 120, 120));
    expect(chargeCount).toBe(1);
    expect([...marks].filter((mark) => mark === firstCharge)).toHaveLength(12 * 9);
    expect([...marks].filter((mark) => mark === 1)).toHaveLength(0);
  });

  test("an empty mask has none", () => {
    expect(marksOf("000", "000")).toEqual({ rows: ["000", "000"], chargeCount: 0 });
  });
});
