import { describe, expect, test } from "vitest";
import { createFormat } from "../../src/words/format.ts";
import {
  describeEquals,
  describePrice,
  describeUnranked,
  describeWorse,
  inWords,
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
      "Not clear any more beside blue and white.",
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

test("a price names each edge with its contrast before and after; beyond four edges the rest is counted", () => {
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
  expect(describePrice([], format)).toBeUndefined();
  expect(
    describePrice([lost, edge("black", [50, 0], "merged"), edge("blue", [null, 12], "parted")], format),
  ).toBe("white / red (62%) becomes white / grey (20%), black / red merged, and blue / grey parted at 12%");
  expect(describePrice([lost, lost, lost, lost, lost], format)).toMatch(/, and 2 others$/);
});

test("what is not ranked is named once each, six at the most", () => {
  const unranked = (names: readonly string[]) => {
    const vanishing = names.map((name) => makeOption({ name }));
    const shades = [
      { id: "p2", hex: "#c8202f", name: "red", isClear: false, lighter: null, darker: null },
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

test("percent are set as the language of the page has them", () => {
  const sentence = "It rises from 14 % to 100 %, further from today's colour.";
  expect(inWords(sentence, createFormat("en"))).toBe(
    "It rises from 14% to 100%, further from today’s colour.",
  );
  expect(inWords(sentence, createFormat("de"))).toBe(
    "It rises from 14\u00a0% to 100\u00a0%, further from today’s colour.",
  );
});

test("decimals of a sentence stay, and are written as the language has them", () => {
  const sentence = "It would have to reflect 24.7 % or more, at a contrast of 44.96 %.";
  expect(inWords(sentence, createFormat("en"))).toBe(
    "It would have to reflect 24.7% or more, at a contrast of 44.96%.",
  );
  expect(inWords(sentence, createFormat("de"))).toBe(
    "It would have to reflect 24,7\u00a0% or more, at a contrast of 44,96\u00a0%.",
  );
});
