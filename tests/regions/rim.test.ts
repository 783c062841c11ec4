import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../src/regions/label.ts";
import { findRim } from "../../src/regions/rim.ts";
import { findRuns } from "../../src/regions/runs.ts";
import { sidesOf, smallMaps } from "./naive.ts";
import { readMap } from "./picture.ts";

const rimOf = (map: LabelMap): readonly number[] => [...findRim(map, findRuns(map))].sort((a, b) => a - b);

describe("findRim", () => {
  test("the pixels on either side of a line, and none else", () => {
    expect(rimOf(readMap("1111", "1111", "2222", "2222"))).toEqual([4, 5, 6, 7, 8, 9, 10, 11]);
    expect(rimOf(readMap("11122", "11122"))).toEqual([2, 3, 7, 8]);
  });

  test("the border is no line; a transparent part is one", () => {
    expect(rimOf(readMap("111", "111"))).toEqual([]);
    expect(rimOf(readMap("1110"))).toEqual([2, 3]);
  });

  test("pixels that meet at a corner only are not beside each other, but their neighbours are", () => {
    expect(rimOf(readMap("1112", "1111", "1111"))).toEqual([2, 3, 7]);
  });

  test("each once: the pixels with a neighbour of another label, on any map", () => {
    fc.assert(
      fc.property(smallMaps(0), (map) => {
        const naive = [...map.labels.keys()].filter((at) =>
          sidesOf(map, at).some((next) => next >= 0 && map.labels[next] !== map.labels[at]),
        );
        expect(rimOf(map)).toEqual(naive);
      }),
    );
  });
});
