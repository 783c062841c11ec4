import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cropMap } from "../../src/regions/mapcrop.ts";
import {
  cropRuns,
  eachContact,
  eachShortColumn,
  findRuns,
  type Runs,
  relabelRuns,
} from "../../src/regions/runs.ts";
import { smallMaps } from "./naive.ts";
import { readMap } from "./picture.ts";

describe("findRuns", () => {
  test("stretches of one label, row by row; a run ends with its row", () => {
    const runs = findRuns(readMap("1122", "2233"));
    expect(runs.count).toBe(4);
    expect([...runs.rowStart]).toEqual([0, 2, 4]);
    expect([...runs.start.slice(0, 5)]).toEqual([0, 2, 4, 6, 8]);
    expect([...runs.label]).toEqual([1, 2, 2, 3]);
  });

  test("has room for a map in which every pixel is a run", () => {
    const width = 3000;
    const row = Array.from({ length: width }, (_, x) => 1 + (x % 2)).join("");
    expect(findRuns(readMap(...Array<string>(9).fill(row))).count).toBe(9 * width);
  });

  test("written out again they are the map", () => {
    const maps = fc.integer({ min: 1, max: 9 }).chain((width) =>
      fc.array(
        fc.string({
          unit: fc.constantFrom("0", "1", "2"),
          minLength: width,
          maxLength: width,
        }),
        {
          minLength: 1,
          maxLength: 9,
        },
      ),
    );
    fc.assert(
      fc.property(maps, (rows) => {
        const { count, start, label } = findRuns(readMap(...rows));
        let text = "";
        for (let run = 0; run < count; run += 1)
          text += String(label[run]).repeat((start[run + 1] ?? 0) - (start[run] ?? 0));
        expect(text).toBe(rows.join(""));
      }),
    );
  });
});

test("eachContact: which runs of two rows touch, and over which pixels", () => {
  const contacts: (readonly number[])[] = [];
  // Runs: 0 is 11, 1 is 22 above; 2 is 1, 3 is 333 below.
  eachContact(findRuns(readMap("1122", "1333")), 1, (...contact) => contacts.push(contact));
  expect(contacts).toEqual([
    [0, 2, 4, 5],
    [0, 3, 5, 6],
    [1, 3, 6, 8],
  ]);
});

test("eachContact visits every pair of pixels above each other once, with the runs they are in", () => {
  fc.assert(
    fc.property(smallMaps(0), (map) => {
      const runs = findRuns(map);
      const runAt = (at: number): number =>
        [...runs.start.slice(0, runs.count)].findLastIndex((start) => start <= at);
      for (let y = 1; y < map.height; y += 1) {
        const seen: number[] = [];
        eachContact(runs, y, (above, below, from, to) => {
          expect(to).toBeGreaterThan(from);
          for (let at = from; at < to; at += 1) {
            seen.push(at);
            expect([above, below]).toEqual([runAt(at - map.width), runAt(at)]);
          }
        });
        expect(seen).toEqual(Array.from({ length: map.width }, (_, x) => y * map.width + x));
      }
    }),
    { numRuns: 50 },
  );
});

test("no run is empty, none has the label of the one before it in its row", () => {
  fc.assert(
    fc.property(smallMaps(0), (map) => {
      const { rowStart, start, label, count } = findRuns(map);
      expect([rowStart[0], rowStart[map.height], start[count]]).toEqual([0, count, map.labels.length]);
      for (let y = 0; y < map.height; y += 1) {
        for (let run = rowStart[y] ?? 0; run < (rowStart[y + 1] ?? 0); run += 1) {
          expect((start[run + 1] ?? 0) - (start[run] ?? 0)).toBeGreaterThan(0);
          if (run > (rowStart[y] ?? 0)) expect(label[run]).not.toBe(label[run - 1]);
        }
      }
    }),
  );
});

test("stretches of a column up to a length, but for transparent ones, from the first row to the last", () => {
  const found: number[][] = [];
  const map = readMap("110", "120", "110", "113");
  eachShortColumn(findRuns(map), 2, (x, top, bottom) => found.push([x, top, bottom]));
  expect(found.sort()).toEqual([
    [1, 0, 1],
    [1, 1, 2],
    [1, 2, 4],
    [2, 3, 4],
  ]);
});

/** Runs without what is beyond the last of them. */
const trim = ({ start, ...runs }: Runs) => ({ ...runs, start: start.subarray(0, runs.count + 1) });

test("relabelRuns: those of the map in which each label is another, joined where two became one", () => {
  fc.assert(
    fc.property(smallMaps(0), fc.array(fc.nat(2), { minLength: 10, maxLength: 10 }), (map, table) => {
      const to = (label: number): number => table[label] as number;
      const runs = findRuns(map);
      const changed = findRuns({ ...map, labels: map.labels.map(to) });
      expect(trim(relabelRuns(runs, (run) => to(runs.label[run] as number)))).toEqual(trim(changed));
    }),
  );
});

test("cropRuns: those of the part of the map inside the box", () => {
  fc.assert(
    fc.property(smallMaps(0), fc.array(fc.nat(), { minLength: 4, maxLength: 4 }), (map, sides) => {
      const [a = 0, b = 0, c = 0, d = 0] = sides;
      const [left, top] = [a % map.width, b % map.height];
      const right = left + 1 + (c % (map.width - left));
      const bottom = top + 1 + (d % (map.height - top));
      const box = { left, top, right, bottom };
      expect(trim(cropRuns(findRuns(map), box))).toEqual(trim(findRuns(cropMap(map, box))));
    }),
  );
});
