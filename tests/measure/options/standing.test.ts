import { describe, expect, test } from "vitest";
import { rankOptions } from "../../../src/measure/options/rank.ts";
import { findStanding } from "../../../src/measure/options/standing.ts";
import { optionsOf, shades } from "../subject.ts";

const { black, red, white, yellow } = shades;
const ranked = rankOptions(
  optionsOf({ paints: [black, red], edges: [[0, 1, 2, 2]], charges: [[[0, 1, 2]]] }),
).options;

describe("findStanding", () => {
  test("a change that is an option is counted once, and stands where the ranking has it", () => {
    for (const option of ranked) {
      const standing = findStanding(
        { replace: option.replace, with: option.with, isPart: false, clarity: option.clarity },
        ranked,
      );
      // By clarity alone: strength orders options that stand equal.
      const ahead = ranked.filter(({ clarity }) => Math.round(clarity) > Math.round(option.clarity)).length;
      expect(standing).toMatchObject({ place: 1 + ahead, total: ranked.length });
    }
  });

  test("a change that is none, or of a part only, is counted with the options", () => {
    expect(findStanding({ replace: red, with: "#123456", isPart: false, clarity: 0 }, ranked)).toEqual({
      place: ranked.length + 1,
      total: ranked.length + 1,
      level: 0,
      behindBest: 100,
    });
    expect(findStanding({ replace: black, with: white, isPart: true, clarity: 100 }, ranked)).toMatchObject({
      place: 1,
      total: ranked.length + 1,
      behindBest: 0,
    });
    expect(
      findStanding({ replace: black, with: yellow, isPart: false, clarity: 99.4 }, ranked),
    ).toMatchObject({ behindBest: 1 });
  });

  test("better than every option is first, and behind nobody", () => {
    expect(findStanding({ replace: red, with: "#123456", isPart: false, clarity: 40 }, [])).toEqual({
      place: 1,
      total: 1,
      level: 0,
      behindBest: 0,
    });
  });
});
