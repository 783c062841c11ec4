import { expect, test } from "vitest";
import { describeRanking } from "../../src/cli/ranking.ts";
import type { OptionsReport } from "../../src/study/options.ts";

const pair = (a: string, b: string, names: readonly [string, string]) => ({ a, b, names });
const option = {
  id: "p2",
  replace: "#701c2b",
  with: "#e6b436",
  name: "yellow",
  kind: "palette",
  clarity: 97.6,
  clearEdgeShare: 1,
  deltaE00: 40.04,
  gained: [pair("p1", "p2", ["dark blue", "dark red"]), pair("p2", "p3", ["dark red", "green"])],
  lost: [pair("p2", "p4", ["dark red", "white"])],
  merged: [],
  vanishes: false,
  confusable: [],
  confusions: [],
} as const;

const report: OptionsReport = {
  file: "a.svg",
  clarity: 14,
  changeFirst: [{ id: "p2", hex: "#701c2b", name: "dark red" }],
  reason: "Change dark red first: it says why.",
  options: [
    { ...option, place: 1 },
    { ...option, place: 1, with: "#ffffff", name: "white", kind: "own", gained: [], lost: [] },
    { ...option, place: 3, with: "#903040", name: "red", kind: "shade", clarity: 50, lost: [] },
  ],
  vanishing: [
    {
      ...option,
      with: "#15244a",
      name: "dark blue",
      vanishes: true,
      gained: [],
      lost: [],
      merged: [option.gained[0]],
    },
  ],
  shades: [
    {
      id: "p2",
      hex: "#701c2b",
      name: "dark red",
      isClear: false,
      lighter: null,
      darker: null,
      reason: "No shade of red does.",
    },
  ],
  notes: ["Green is not flat."],
};
const style = { distance: "the full drawing", hasColour: false };

test("equals share a place; each says what happens beside which neighbour", () => {
  expect(describeRanking(report, style)).toBe(`\
a.svg: clarity 14.0 %, the full drawing

  Change dark red first: it says why.

  place  change                             from      clarity  departure  edges with
     1=  dark red #701c2b → yellow #e6b436  palette      98 %       40.0  gains dark blue, green; loses white
     1=  dark red #701c2b → white #ffffff   the flag     98 %       40.0
      3  dark red #701c2b → red #903040     shade        50 %       40.0  gains dark blue, green

  Not ranked, because they make the charge vanish:

  change                                edges with
  dark red #701c2b → dark blue #15244a  merges dark blue

  Note: No shade of red does.
  Note: Green is not flat.`);
});

test("a long ranking is cut, and says how much", () => {
  const options = Array.from({ length: 40 }, (_, index) => ({ ...option, place: index + 1 }));
  const vanishing = Array.from({ length: 9 }, () => option);
  const text = describeRanking({ ...report, options, vanishing }, style);
  expect(text).toContain("… and 25 more: --json lists them all.");
  expect(text).toContain("… and 1 more: --json lists them all.");
});

test("nothing to rank is no table", () => {
  const none = {
    ...report,
    clarity: null,
    changeFirst: null,
    options: [],
    vanishing: [],
    shades: [],
    notes: [],
  };
  expect(describeRanking({ ...none, reason: "One colour." }, style)).toBe(`\
a.svg: clarity none, the full drawing

  One colour.`);
});

test("a block of both colours before each row, where they show", () => {
  const text = describeRanking(report, { ...style, hasColour: true });
  expect(text.split("\u001b[48;2;")).toHaveLength(9);
});
