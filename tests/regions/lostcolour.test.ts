// Pixels that show a paint where the map has another, counted by hand.
import { expect, test } from "vitest";
import type { LabelMap } from "../../src/regions/labelmap.ts";
import { countLost, type IsOther, measureSteps, nothing } from "../../src/regions/lostcolour.ts";
import { type Label, listed } from "../../src/svg/paintnumber.ts";
import { nth } from "../numbered.ts";
import { drawMap, drawPicture, readMap, readPicture } from "./picture.ts";

const red = "ff0000ff";
const blue = "0000ffff";
const [redCode, blueCode] = [0xff0000, 0x0000ff];

const labels = (...numbers: readonly number[]) => new Set(numbers.map((number) => nth<Label>(number)));
const never: IsOther = () => false;
const always: IsOther = () => true;

test("only exact, opaque colours of paints count, and only where the map has another colour or none", () => {
  const picture = readPicture(
    `${red} ${red} ${red} ${red}`,
    `${blue} ${blue} ${red} ff000080`,
    `fe0000ff 00ff00ff ${blue} ${red}`,
  );
  // Row 1: two reds where blue is mapped. Row 2: one red where nothing is; a translucent one is none. Row 3: a red that
  // is not exact and a green that no paint has; blue on the gradient, and red on red.
  const map = readMap("1122", "2200", "2231");
  expect(countLost(picture, map, listed([redCode, blueCode, undefined]), never)).toEqual(
    new Map([[redCode, 3]]),
  );
});

test("two paints of one colour are not told apart", () => {
  expect(countLost(readPicture(`${red} ${red}`), readMap("12"), listed([redCode, redCode]), never).size).toBe(
    0,
  );
});

test("what a border mixes of the paints around it is not lost, be it exactly the colour of a third", () => {
  const mixed = readPicture(`${red} 800080ff ${blue}`);
  expect(countLost(mixed, readMap("112"), listed([redCode, blueCode, 0x800080]), never).size).toBe(0);
  const beyond = readPicture(`${red} 00ff00ff ${blue}`);
  expect(countLost(beyond, readMap("112"), listed([redCode, blueCode, 0x00ff00]), never)).toEqual(
    new Map([[0x00ff00, 1]]),
  );
});

test("each colour is counted on its own, from row to row", () => {
  const picture = readPicture(`${red} ${blue}`, `${red} ${blue}`);
  expect(countLost(picture, readMap("21", "21"), listed([redCode, blueCode]), never)).toEqual(
    new Map([
      [redCode, 2],
      [blueCode, 2],
    ]),
  );
});

// A map of 9 by 9 with one paint, whose inside, two pixels from each side, is 5 by 5.
test("inside an area any colour counts that is told apart, at its border none does", () => {
  const map = drawMap(9, 9, () => 1);
  const green = drawPicture(9, 9, () => "#00ff00");
  expect(countLost(green, map, listed([redCode]), always)).toEqual(new Map([[0x00ff00, 25]]));
  expect(countLost(green, map, listed([redCode]), never).size).toBe(0);
  expect(countLost(green, map, listed([undefined]), always).size).toBe(0);
});

test("inside an area nothing counts where a paint should be, a colour where nothing should be", () => {
  const clear = { width: 9, height: 9, rgba: new Uint8Array(9 * 9 * 4) };
  for (const colours of [[redCode], [undefined]])
    expect(
      countLost(
        clear,
        drawMap(9, 9, () => 1),
        listed(colours),
        never,
      ),
    ).toEqual(new Map([[nothing, 25]]));
  const green = drawPicture(9, 9, () => "#00ff00");
  expect(
    countLost(
      green,
      drawMap(9, 9, () => 0),
      listed([redCode]),
      never,
    ),
  ).toEqual(new Map([[0x00ff00, 25]]));
  expect(
    countLost(
      clear,
      drawMap(9, 9, () => 0),
      listed([redCode]),
      always,
    ).size,
  ).toBe(0);
});

// 60 by 40 of one paint: its inside has 36 rows of 56 columns. A border upright at 30 is crossed in each of these rows, by as
// many pairs as `reach`, each of which counts one part of it.
test("a border inside a paint is as long as the rows that cross it", () => {
  const map = drawMap(60, 40, () => 1);
  const halves = drawPicture(60, 40, (x) => (x < 30 ? "#ff0000" : "#0000ff"));
  const differ: IsOther = (a, b) => a !== b;
  const lengthOf = (shown: LabelMap, of: ReturnType<typeof labels>, isOther: IsOther) =>
    measureSteps(halves, shown, of, [{ reach: 4, isOther }]);
  expect(lengthOf(map, labels(1), differ).get(nth(1))).toBeCloseTo(36, 6);
  expect(lengthOf(map, labels(2), always).size).toBe(0);
  expect(lengthOf(map, labels(1), never).size).toBe(0);
  const parted = drawMap(60, 40, (x) => (x < 30 ? 1 : 2));
  expect(lengthOf(parted, labels(1, 2), differ).size).toBe(0);
});

// 90 by 40, black to white over the columns that `from` and `to` say, each a shade lighter than the one before.
test("a soft border is one where the colour stays as it is on both sides of it, and a shading that goes on is none", () => {
  const map = drawMap(90, 40, () => 1);
  const lengthOf = (from: number, to: number, reach: number) => {
    const grey = (x: number) => Math.round((255 * Math.min(Math.max(x - from, 0), to - from)) / (to - from));
    const picture = drawPicture(90, 40, (x) => `#${grey(x).toString(16).padStart(2, "0").repeat(3)}`);
    const isOther: IsOther = (a, b) => Math.abs((a & 255) - (b & 255)) > 100;
    const isSame: IsOther = (a, b) => Math.abs((a & 255) - (b & 255)) < 10;
    return measureSteps(picture, map, labels(1), [{ reach, isOther, isSame }]).get(nth(1)) ?? 0;
  };
  // Of the twenty pairs of a row that span it, those whose ends both lie beyond its ten columns.
  expect(lengthOf(40, 50, 20)).toBeGreaterThan(36 / 2);
  expect(lengthOf(40, 50, 20)).toBeLessThanOrEqual(36);
  expect(lengthOf(0, 90, 20)).toBe(0);
  expect(lengthOf(20, 70, 20)).toBe(0);
});
