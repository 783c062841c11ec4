import { describe, expect, test } from "vitest";
import { fillVanished } from "../../src/regions/fill.ts";
import { readMap } from "./picture.ts";

/** The map after everything with `label` has vanished, as rows. */
function without(label: number, ...rows: readonly string[]): readonly string[] {
  const map = readMap(...rows);
  const vanished = [...map.labels.keys()].filter((at) => map.labels[at] === label);
  const text = [...fillVanished(map, vanished)].join("");
  return rows.map((row, y) => text.slice(y * row.length, (y + 1) * row.length));
}

describe("fillVanished", () => {
  test("a line between two fields is halved", () => {
    expect(without(3, "1133 22".replace(" ", ""))).toEqual(["111222"]);
    expect(without(3, "11", "33", "33", "22")).toEqual(["11", "11", "22", "22"]);
  });

  test("a speck goes to the field around it", () => {
    expect(without(3, "1111", "1331", "1111")).toEqual(["1111", "1111", "1111"]);
  });

  test("transparent pixels neither give nor take", () => {
    expect(without(3, "0331")).toEqual(["0111"]);
    expect(without(3, "1301")).toEqual(["1101"]);
  });

  test("what no paint reaches keeps its label", () => {
    expect(without(3, "330011")).toEqual(["330011"]);
  });

  test("nothing vanished, nothing changed", () => {
    expect(without(9, "1122")).toEqual(["1122"]);
  });

  test("the nearest counts, not the first: a wedge between 1 above and 2 at the side", () => {
    // (2, 2) is two rows from 1 and one column from 2.
    expect(without(3, "1111", "3332", "3332")[2]?.[2]).toBe("2");
  });
});
