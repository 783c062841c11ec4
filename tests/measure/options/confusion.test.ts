import { describe, expect, test } from "vitest";
import { SwatchBook } from "../../../src/measure/colourcache.ts";
import { areaLimits } from "../../../src/measure/limit.ts";
import { findConfusable, findConfusions } from "../../../src/measure/options/confusion.ts";
import type { Rank } from "../../../src/svg/paintnumber.ts";
import { nth } from "../../numbered.ts";
import { looksOf, tableOf } from "../build.ts";
import { difference } from "../oracle.ts";

const book = new SwatchBook({ black: 5, white: 85 });
const table = tableOf(
  [["p1"], ["p2"], ["p3"]],
  [
    [0, 1, 2],
    [0, 2, 0.01],
  ],
);
const [blue, red, green] = ["#1f56a8", "#c8202f", "#0b7a3b"] as const;
const subject = { table, looks: looksOf(blue, red, green), paint: nth<Rank>(0) };

describe("findConfusable", () => {
  test("a colour of the flag that the new one is near to, though it does not meet it", () => {
    const near = "#12804a";
    expect(difference(near, green)).toBeLessThan(10);
    expect(findConfusable(subject, near, book)).toEqual([{ a: "p1", b: "p3", names: [blue, green] }]);
  });

  test("near means under 10", () => {
    const [within, beyond] = ["#279350", "#2d9a55"] as const;
    expect(difference(within, green)).toBeGreaterThan(9);
    expect(difference(within, green)).toBeLessThan(10);
    expect(difference(beyond, green)).toBeGreaterThan(10);
    expect(findConfusable(subject, within, book)).toHaveLength(1);
    expect(findConfusable(subject, beyond, book)).toEqual([]);
  });

  test("the very same colour is one colour used twice", () =>
    expect(findConfusable(subject, green, book)).toEqual([]));

  test("what was confusable before is nothing new", () => {
    const looks = looksOf("#0f7d42", red, green);
    expect(findConfusable({ ...subject, looks }, "#12804a", book)).toEqual([]);
  });

  test("a paint too small to be one of the flag's colours does not count", () => {
    const paints = table.paints.map((paint, index) =>
      index === 2 ? { ...paint, share: areaLimits.counts } : paint,
    );
    expect(findConfusable({ ...subject, table: { ...table, paints } }, "#12804a", book)).toEqual([]);
  });
});

describe("findConfusions", () => {
  // A brownish orange and an olive green of like luminance: far apart, save for eyes without the long or middle cones.
  const orange = "#b06a1c";
  const olive = "#6f7f1c";
  const seen = { ...subject, looks: looksOf(blue, orange, green) };

  test("a pair that meets and that a colour-blind eye takes for one", () => {
    expect(difference(orange, olive)).toBeGreaterThan(10);
    const found = findConfusions(seen, olive, book);
    expect(found.map(({ sight }) => sight)).toContain("deutan");
    for (const confusion of found) {
      expect(confusion).toMatchObject({ a: "p1", b: "p2", names: [blue, orange] });
      expect(book.differenceOf(olive, orange, confusion.sight)).toBeLessThan(10);
    }
  });

  test("not one that was so before", () => {
    expect(findConfusions({ ...seen, looks: looksOf("#71801d", orange, green) }, olive, book)).toEqual([]);
  });

  test("not one that anyone takes for one", () => expect(findConfusions(seen, "#ae691d", book)).toEqual([]));

  test("not along less than 1 % of all edge length", () => {
    expect(findConfusions({ ...seen, looks: looksOf(blue, "#ffffff", orange) }, olive, book)).toEqual([]);
  });
});
