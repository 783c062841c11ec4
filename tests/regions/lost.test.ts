// Pixels that show a paint where the map has another, counted by hand.
import { expect, test } from "vitest";
import { countLost } from "../../src/regions/lost.ts";
import { readMap, readPicture } from "./picture.ts";

const red = "ff0000ff";
const blue = "0000ffff";
const [redCode, blueCode] = [0xff0000, 0x0000ff];

test("only exact, opaque colours of paints count, and only where the map has another colour or none", () => {
  const picture = readPicture(
    `${red} ${red} ${red} ${red}`,
    `${blue} ${blue} ${red} ff000080`,
    `fe0000ff 00ff00ff ${blue} ${red}`,
  );
  // Row 1: two reds where blue is mapped. Row 2: one red where nothing is; a translucent one is none. Row 3: a red that
  // is not exact and a green that no paint has; blue on the gradient, and red on red.
  const map = readMap("1122", "2200", "2231");
  expect(countLost(picture, map, [redCode, blueCode, undefined])).toEqual(new Map([[redCode, 3]]));
});

test("two paints of one colour are not told apart", () => {
  expect(countLost(readPicture(`${red} ${red}`), readMap("12"), [redCode, redCode]).size).toBe(0);
});

test("each colour is counted on its own, from row to row", () => {
  const picture = readPicture(`${red} ${blue}`, `${red} ${blue}`);
  expect(countLost(picture, readMap("21", "21"), [redCode, blueCode])).toEqual(
    new Map([
      [redCode, 2],
      [blueCode, 2],
    ]),
  );
});
