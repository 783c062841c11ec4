import { describe, expect, test } from "vitest";
import { SwatchBook } from "../../src/measure/colourcache.ts";
import { contrastOf, endsOf } from "../../src/measure/edgefigure.ts";
import { pairOf } from "../../src/measure/options/candidate.ts";
import { nth } from "../numbered.ts";
import { looksOf, tableOf } from "./build.ts";
import { contrast } from "./oracle.ts";

const flat = { hex: "#c8202f", name: "red", uneven: null } as const;
const uneven = { hex: "#445566", name: "sky", uneven: { lightest: "#8899aa", darkest: "#112233" } } as const;

describe("a pair of paints", () => {
  test("has the ids and the names of the table", () => {
    const table = tableOf([["p1"], ["p2"], ["p3s"]], []);
    expect(
      pairOf({ table, looks: looksOf("#111111", "#222222", "#333333") }, { a: nth(0), b: nth(2) }),
    ).toEqual({
      a: "p1",
      b: "p3s",
      names: ["#111111", "#333333"],
    });
  });

  test("an uneven paint has three colours, a flat one has one", () => {
    expect(endsOf(flat)).toEqual(["#c8202f"]);
    expect(endsOf(uneven)).toEqual(["#445566", "#8899aa", "#112233"]);
  });

  test("an uneven paint counts with the end that is nearer", () => {
    const book = new SwatchBook({ black: 5, white: 85 });
    const lowest = Math.min(...["#445566", "#8899aa", "#112233"].map((end) => contrast("#c8202f", end)));
    expect(contrastOf(flat, uneven, book).contrast).toBeCloseTo(lowest, 6);
    expect(contrastOf(uneven, flat, book).contrast).toBeCloseTo(lowest, 6);
  });
});
