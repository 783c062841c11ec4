import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { LabelMap } from "../../../src/regions/labelmap.ts";
import { fillVanished } from "../../../src/regions/view/fillvanished.ts";
import { smallMaps, xOf, yOf } from "../naive.ts";
import { drawMap, readMap } from "../picture.ts";

/** The map after everything with `label` has vanished, as rows. */
function without(label: number, ...rows: readonly string[]): readonly string[] {
  const map = readMap(...rows);
  const vanished = Int32Array.from([...map.labels.keys()].filter((at) => map.labels[at] === label));
  const text = [...fillVanished(map, vanished).labels].join("");
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

/** A map with the pixels that vanish: some at random, or everything of one label. */
const vanishing = (least: 0 | 1) =>
  smallMaps(least).chain((map) =>
    fc
      .oneof(
        fc.array(fc.boolean(), {
          minLength: map.labels.length,
          maxLength: map.labels.length,
        }),
        fc.integer({ min: 1, max: 3 }).map((label) => [...map.labels].map((other) => other === label)),
      )
      .map((goes) => ({
        map,
        vanished: [...map.labels.keys()].filter((at) => goes[at] === true && map.labels[at] !== 0),
      })),
  );

const away = (map: LabelMap, one: number, other: number): number =>
  Math.hypot(xOf(map, one) - xOf(map, other), yOf(map, one) - yOf(map, other));

describe("fillVanished on any map", () => {
  test("a vanished pixel takes the paint of the nearest that remains, searched among all", () => {
    fc.assert(
      fc.property(vanishing(1), ({ map, vanished }) => {
        const goes = new Set(vanished);
        const remaining = [...map.labels.keys()].filter((at) => !goes.has(at));
        const { labels: filled } = fillVanished(map, Int32Array.from(vanished));
        for (const at of vanished) {
          if (remaining.length === 0) {
            expect(filled[at]).toBe(map.labels[at]);
            continue;
          }
          const nearest = Math.min(...remaining.map((other) => away(map, at, other)));
          const taken = remaining.filter((other) => map.labels[other] === filled[at]);
          // Waves that hand a source on from pixel to pixel may miss the nearest by a hair: a tenth of a pixel.
          expect(Math.min(...taken.map((other) => away(map, at, other)))).toBeLessThan(nearest + 0.1);
        }
      }),
      { numRuns: 400 },
    );
  });

  test("what remains and what is transparent keeps its label; the map itself is not touched", () => {
    fc.assert(
      fc.property(vanishing(0), ({ map, vanished }) => {
        const before = [...map.labels];
        const { labels: filled } = fillVanished(map, Int32Array.from(vanished));
        const goes = new Set(vanished);
        expect([...map.labels]).toEqual(before);
        for (const [at, label] of before.entries()) if (!goes.has(at)) expect(filled[at]).toBe(label);
        for (const at of vanished) expect(filled[at]).not.toBe(0);
      }),
    );
  });

  test("each pixel that was given away says to which, one that remains, and as near as any of its paint", () => {
    fc.assert(
      fc.property(vanishing(0), ({ map, vanished }) => {
        const goes = new Set(vanished);
        const { labels, pixels, sources } = fillVanished(map, Int32Array.from(vanished));
        expect(sources).toHaveLength(pixels.length);
        expect(new Set(pixels).size).toBe(pixels.length);
        for (const [index, at] of pixels.entries()) {
          const source = sources[index] ?? -1;
          expect(goes.has(at)).toBe(true);
          expect(goes.has(source)).toBe(false);
          expect(map.labels[source]).not.toBe(0);
          expect(labels[at]).toBe(map.labels[source]);
        }
        const given = new Set(pixels);
        for (const at of vanished) if (!given.has(at)) expect(labels[at]).toBe(map.labels[at]);
      }),
    );
  });

  test("the order in which pixels vanish changes nothing where no two paints are equally near", () => {
    const map = drawMap(40, 40, (x, y) => (Math.hypot(x - 20.3, y - 19.6) < 8 ? 2 : x < 18.2 ? 1 : 3));
    const vanished = [...map.labels.keys()].filter((at) => map.labels[at] === 2);
    const forward = fillVanished(map, Int32Array.from(vanished)).labels;
    expect(fillVanished(map, Int32Array.from(vanished.reverse())).labels).toEqual(forward);
  });
});

test("a disc between two fields is parted along the continued line between them", () => {
  const map = drawMap(60, 40, (x, y) => (Math.hypot(x - 30, y - 20) < 9 ? 3 : x < 30 ? 1 : 2));
  const vanished = Int32Array.from([...map.labels.keys()].filter((at) => map.labels[at] === 3));
  expect([...fillVanished(map, vanished).labels]).toEqual([
    ...drawMap(60, 40, (x) => (x < 30 ? 1 : 2)).labels,
  ]);
});
