// Pixels that show another colour than is measured there, counted by hand.
import { expect, test } from "vitest";
import { countLost, type IsOther, nothing } from "../../src/regions/lostcolour.ts";
import { listed } from "../../src/svg/paintnumber.ts";
import { drawMap, drawPicture, readMap, readPicture } from "./picture.ts";

const red = "ff0000ff";
const blue = "0000ffff";
const [redCode, blueCode, greenCode] = [0xff0000, 0x0000ff, 0x00ff00];

const never: IsOther = () => false;
const always: IsOther = () => true;

/** Label, colour and number of what is lost. */
const lost = (
  picture: Parameters<typeof countLost>[0],
  map: Parameters<typeof countLost>[1],
  codes: readonly number[],
  isOther: IsOther = always,
): readonly (readonly number[])[] =>
  [...countLost(picture, map, listed(codes), isOther)].flatMap(([label, counts]) =>
    [...counts].map(([colour, pixels]) => [label, colour, pixels]),
  );

test("at borders only exact, opaque colours of paints count, and only where the map has another colour or none", () => {
  const picture = readPicture(
    `${red} ${red} ${red} ${red}`,
    `${blue} ${blue} ${red} ff000080`,
    `fe0000ff 00ff00ff ${blue} ${red}`,
  );
  // Row 1: two reds where blue is measured. Row 2: one red where nothing is; a translucent one is none. Row 3: a red that is not
  // exact and a green that no paint has; blue on blue, and red on red.
  const map = readMap("1122", "2200", "2221");
  expect(lost(picture, map, [redCode, blueCode])).toEqual([
    [2, redCode, 2],
    [0, redCode, 1],
  ]);
  expect(lost(picture, map, [redCode, blueCode], never)).toEqual([[0, redCode, 1]]);
});

test("two paints of one colour are not told apart", () => {
  expect(lost(readPicture(`${red} ${red}`), readMap("12"), [redCode, redCode])).toEqual([]);
});

test("what a border mixes of the paints around it is not lost, be it exactly the colour of a third", () => {
  const mixed = readPicture(`${red} 800080ff ${blue}`);
  expect(lost(mixed, readMap("112"), [redCode, blueCode, 0x800080])).toEqual([]);
  const beyond = readPicture(`${red} 00ff00ff ${blue}`);
  expect(lost(beyond, readMap("112"), [redCode, blueCode, greenCode])).toEqual([[1, greenCode, 1]]);
});

test("each label and each colour is counted on its own, from row to row", () => {
  const picture = readPicture(`${red} ${blue}`, `${red} ${blue}`);
  expect(lost(picture, readMap("21", "21"), [redCode, blueCode])).toEqual([
    [2, redCode, 2],
    [1, blueCode, 2],
  ]);
});

// A map of 9 by 9 with one paint, whose inside, two pixels from each side, is 5 by 5.
test("inside an area any colour counts that is told from the one that is measured, at its border none does", () => {
  const map = drawMap(9, 9, () => 1);
  const green = drawPicture(9, 9, () => "#00ff00");
  expect(lost(green, map, [redCode])).toEqual([[1, greenCode, 25]]);
  expect(lost(green, map, [redCode], never)).toEqual([]);
  // By its own paint: the second is none of this map.
  expect(lost(green, map, [redCode, blueCode], (_, paint) => paint === 1)).toEqual([]);
});

test("inside an area nothing counts where a paint should be, a colour where nothing should be", () => {
  const clear = { width: 9, height: 9, rgba: new Uint8Array(9 * 9 * 4) };
  const all = drawMap(9, 9, () => 1);
  const none = drawMap(9, 9, () => 0);
  expect(lost(clear, all, [redCode], never)).toEqual([[1, nothing, 25]]);
  expect(
    lost(
      drawPicture(9, 9, () => "#00ff00"),
      none,
      [redCode],
      never,
    ),
  ).toEqual([[0, greenCode, 25]]);
  expect(lost(clear, none, [redCode])).toEqual([]);
});
