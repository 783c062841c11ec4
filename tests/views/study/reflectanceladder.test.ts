import { expect, test } from "vitest";
import { presentLadder } from "../../../src/views/study/reflectanceladder.ts";
import { createFormat } from "../../../src/words/format.ts";
import { comparison, studyResult } from "../../publish/sample.ts";

const cloth = { black: 5, white: 85 };
const ladder = presentLadder(studyResult, cloth, createFormat("en"));
const middle = (box: { y: number; height: number }) => box.y + box.height / 2;
const [zero = Number.NaN, , full = Number.NaN] = ladder.ticks.map(({ y }) => y);

test("each colour of both flags once, at its reflectance between 0 and 100 percent", () => {
  expect(ladder.rungs.map(({ hex }) => hex)).toEqual(["#ffffff", "#f4c430", "#c8202f", "#12235c"]);
  // Reflectances as typed in the sample.
  for (const [index, reflectance] of [85, 50.7, 15.8, 6.5].entries()) {
    const { tick } = ladder.rungs[index] ?? { tick: { y: Number.NaN, height: 0 } };
    expect((zero - middle(tick)) / (zero - full)).toBeCloseTo(reflectance / 100, 2);
  }
  expect(ladder.rungs.map(({ label }) => label?.text)).toEqual([
    "white 85%",
    "yellow 51%",
    "red 16%",
    "dark blue 7%",
  ]);
});

test("an arrow from the colour that is replaced to the new one, none where both reflect alike", () => {
  const heights = [...(ladder.move?.matchAll(/^M\S+ (\S+)H\S+V(\S+)H/g) ?? [])].map(([, from, to]) => [
    Number(from),
    Number(to),
  ]);
  const [, yellow, red] = ladder.rungs.map(({ tick }) => middle(tick));
  expect(heights).toEqual([[red, yellow]]);
  const level = comparison.after.colours.map((colour) => ({ ...colour, reflectance: 15.8 }));
  const result = {
    ...studyResult,
    comparison: { ...comparison, after: { ...comparison.after, colours: level } },
  };
  expect(presentLadder(result, cloth, createFormat("en")).move).toBeUndefined();
});

test("labels keep apart; of many colours the largest are named and all are shown", () => {
  const colours = Array.from({ length: 20 }, (_, at) => ({
    ...(comparison.before.colours[0] as (typeof comparison.before.colours)[number]),
    id: `p${at + 1}`,
    hex: `#0000${10 + at}` as const,
    share: 0.05 - at / 1000,
    reflectance: 40,
  }));
  const measure = { ...comparison.before, colours };
  const many = presentLadder(
    { ...studyResult, comparison: { ...comparison, before: measure, after: measure } },
    cloth,
    createFormat("en"),
  );
  expect(many.rungs.length).toBe(20);
  const heights = many.rungs
    .flatMap(({ label }) => (label ? [label.y] : []))
    .sort((one, other) => one - other);
  expect(heights.length).toBe(8);
  for (const [index, y] of heights.slice(1).entries()) expect(y - (heights[index] ?? 0)).toBeGreaterThan(16);
});

test("says in words what it shows", () => {
  expect(ladder.description).toBe(
    "Lightest first: white 85%, yellow 51%, red 16%, and dark blue 7%. Red becomes yellow.",
  );
});
