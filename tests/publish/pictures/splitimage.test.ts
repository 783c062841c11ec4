import { expect, test } from "vitest";
import { drawDivision, joinHalves } from "../../../src/publish/pictures/splitimage.ts";
import type { Picture } from "../../../src/regions/eyeblur.ts";

/** A picture of one value in all channels. */
function plain(width: number, height: number, value: number): Picture {
  return { width, height, rgba: new Uint8Array(4 * width * height).fill(value) };
}

/** The first channel of every pixel, a row a line: 1 the original, 2 the redesign. */
function read({ width, rgba }: Picture): readonly string[] {
  const values = [...rgba].filter((_value, index) => index % 4 === 0);
  return Array.from({ length: values.length / width }, (_row, y) =>
    values.slice(y * width, (y + 1) * width).join(""),
  );
}

const pair = [plain(6, 3, 1), plain(6, 3, 2)] as const;

// Drawn by hand on squared paper: the bend from the upper left corner to the lower right, the bend sinister the other way.
test.each([
  ["per pale", ["111222", "111222", "111222"]],
  ["per bend", ["122222", "111222", "111112"]],
  ["per bend sinister", ["111112", "111222", "122222"]],
  ["per fess", ["111111", "222222", "222222"]],
] as const)("%s: the original on the left or above, the redesign on the right or below", (split, rows) => {
  const joined = read(joinHalves(pair, { split, direction: "ltr" }));
  // A pixel whose middle is on the line may be either's.
  const [, middle] = joined;
  expect([joined[0], joined[2]]).toEqual([rows[0], rows[2]]);
  expect(middle).toMatch(
    split === "per pale" || split === "per fess" ? new RegExp(`^${rows[1]}$`) : /^1+2+$/,
  );
});

test("from right to left the sides change places, above and below do not", () => {
  const joined = (split: "per pale" | "per fess") =>
    read(joinHalves(pair, { split, direction: "rtl" })).join(" ");
  expect(joined("per pale")).toBe("222111 222111 222111");
  expect(joined("per fess")).toBe("111111 222222 222222");
});

test("neither picture is written to, and two sizes are refused", () => {
  joinHalves(pair, { split: "per pale", direction: "ltr" });
  expect(pair.map(({ rgba }) => new Set(rgba))).toEqual([new Set([1]), new Set([2])]);
  expect(() => joinHalves([plain(6, 3, 1), plain(6, 4, 1)], { split: "per pale", direction: "ltr" })).toThrow(
    RangeError,
  );
});

test("the ends of the division are marked outside the flag, in line with it", () => {
  const flag = { picture: { width: 40, height: 30 }, x: 100, y: 50 };
  expect(drawDivision(flag, "per pale")).toContain('d="M120 46L120 36M120 84L120 94"');
  // The diagonal of 40 and 30 is 50 long: four fifths across, three fifths down.
  expect(drawDivision(flag, "per bend")).toContain('d="M96.8 47.6L88.8 41.6M143.2 82.4L151.2 88.4"');
});
