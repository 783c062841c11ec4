import { describe, expect, test } from "vitest";
import { createFormat } from "../../src/words/format.ts";
import {
  describeEquals,
  describePlace,
  describePrice,
  describeStanding,
  describeUnranked,
  describeWorse,
} from "../../src/words/optionwords.ts";
import { makeOption } from "../measure/ranked.ts";
import { ranked } from "../publish/ranked.ts";

const format = createFormat("en");
const pair = (a: string, b: string, names: readonly [string, string]) => ({ a, b, names });

describe("describeEquals", () => {
  test.each([
    [[], undefined],
    [["yellow"], "yellow does as well"],
    [["yellow", "grey"], "yellow and grey do as well"],
    [["white"], "another white does as well"],
    [["yellow", "yellow"], "yellow does as well"],
    [["a", "b", "c", "d"], "a, b, c, and d do as well"],
    [["a", "b", "c", "d", "e"], "a, b, c, and 2 others do as well"],
  ])("beside white: %j", (names, says) => {
    const equals = names.map((name) => ({ name }));
    expect(describeEquals({ name: "white" }, equals, format)).toBe(says);
  });
});

describe("describeWorse", () => {
  test("names the neighbour on whichever side it stands", () => {
    const option = makeOption({
      id: "p2",
      lost: [pair("p1", "p2", ["blue", "red"]), pair("p2", "p3", ["red", "white"])],
      worse: [pair("p2", "p4", ["red", "gold"])],
      merged: [pair("p2", "p5", ["red", "black"])],
      mergedOutline: 0.08,
    });
    expect(describeWorse(option, format)).toEqual([
      "Harder to see beside blue and white.",
      "Less clear beside gold.",
      "One colour with black.",
      "8% of the outline merges.",
    ]);
  });

  test("says what the new colour can be taken for, and by whose eyes", () => {
    const green = pair("p2", "p3", ["red", "green"]);
    const option = makeOption({
      id: "p2",
      confusable: [pair("p1", "p2", ["gold", "red"])],
      confusions: [
        { ...green, sight: "protan" },
        { ...green, sight: "deutan" },
        { ...pair("p2", "p4", ["red", "grey"]), sight: "tritan" },
      ],
    });
    expect(describeWorse(option, format)).toEqual([
      "Can be taken for the flag’s gold.",
      "Protan and deutan eyes take it for green.",
      "Tritan eyes take it for grey.",
    ]);
  });

  test("nothing worse, nothing said", () => {
    expect(describeWorse(makeOption({}), format)).toEqual([]);
  });
});

test("a price names each edge with its contrast before and after; beyond three edges the rest is counted", () => {
  const edge = (
    a: string,
    contrast: readonly [number | null, number],
    outcome: "lost" | "merged" | "parted",
  ) => ({
    names: [
      [a, "red"],
      [a, "grey"],
    ] as const,
    contrast,
    outcome,
  });
  const lost = edge("white", [62.4, 20.2], "lost");
  expect(describePrice([], format)).toBe("");
  expect(
    describePrice([lost, edge("black", [50, 0], "merged"), edge("blue", [null, 12], "parted")], format),
  ).toBe(
    "grey on white has contrast 20% (weak), where red on white had 62% (strong); red and black merge into one colour; grey and blue part, and the edge between them is weak (12%)",
  );
  expect(describePrice([lost, lost, lost, lost, lost], format)).toMatch(/; 2 more$/);
});

test("what is not ranked is named once each, six at the most", () => {
  const unranked = (names: readonly string[]) => {
    const vanishing = names.map((name) => makeOption({ name }));
    const shades = [
      {
        id: "p2",
        hex: "#c8202f",
        name: "red",
        isClear: false,
        least: null,
        lighter: null,
        darker: null,
        demands: [],
      },
    ] as const;
    const { ranking } = ranked({}, { vanishing, shades });
    return ranking && describeUnranked(ranking.report, format);
  };
  expect(unranked([])).toBeUndefined();
  expect(unranked(["a"])).toBe("Not ranked: red to a; it would merge a third of a charge’s outline or more.");
  expect(unranked(["a", "b", "c", "d", "e", "f", "g", "h", "a"])).toBe(
    "Not ranked: red to a, red to b, red to c, red to d, red to e, red to f, and 2 others; each would merge a third of a charge’s outline or more.",
  );
});

test("a place on a page is a short sentence", () => {
  const standing = { place: 8, total: 33 };
  expect(describePlace(standing, format)).toBe("7 of 33 changes of one colour are clearer.");
  expect(describePlace({ ...standing, place: 1 }, format)).toBe(
    "None of 33 changes of one colour is clearer.",
  );
});

describe("describeStanding", () => {
  test.each([
    [
      { place: 3, total: 58, level: 0, behindBest: 2 },
      0,
      "3rd of 58 in clarity, within 2 points of the best; no edge is lost or merged.",
    ],
    [
      { place: 1, total: 58, level: 6, behindBest: 0 },
      1,
      "1st of 58 in clarity, level with 6 others; 1 edge is lost or merged.",
    ],
    [
      { place: 2, total: 2, level: 1, behindBest: 1 },
      4,
      "2nd of 2 in clarity, level with 1 other, within 1 point of the best; 4 edges are lost or merged.",
    ],
    [
      { place: 11, total: 90, level: 0, behindBest: 9 },
      0,
      "11th of 90 in clarity, within 9 points of the best; no edge is lost or merged.",
    ],
    [
      { place: 22, total: 90, level: 0, behindBest: 9 },
      0,
      "22nd of 90 in clarity, within 9 points of the best; no edge is lost or merged.",
    ],
    [
      { place: 113, total: 190, level: 0, behindBest: 9 },
      0,
      "113th of 190 in clarity, within 9 points of the best; no edge is lost or merged.",
    ],
  ])("%j", (standing, lost, sentence) => expect(describeStanding({ ...standing, lost })).toBe(sentence));
});
