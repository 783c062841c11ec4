// Numbers of paints are worked out from each other one way, and mixing them up is an error of the compiler, not of a run.
import { expect, test } from "vitest";
import {
  type Label,
  type List,
  labelOf,
  listed,
  type PaintIndex,
  paintOf,
  type Rank,
  transparent,
} from "../../src/svg/paintnumber.ts";
import { nth } from "../numbered.ts";

test("labels begin at 1 for the first paint, and what is transparent is no paint", () => {
  const names: List<PaintIndex, string> = listed(["red", "white"]);
  expect(names.map((_, paint) => labelOf(paint))).toEqual([1, 2]);
  expect(names.map((_, paint) => paintOf(labelOf(paint)))).toEqual([0, 1]);
  expect(names[paintOf(transparent)]).toBeUndefined();
});

test("a number of one kind is none of another, and reads no list of another", () => {
  const [paint, label, rank] = [nth<PaintIndex>(1), nth<Label>(1), nth<Rank>(1)];
  const names: List<PaintIndex, string> = listed(["red", "white"]);
  const byArea: List<Rank, string> = listed(["white", "red"]);
  expect([names[paint], byArea[rank]]).toEqual(["white", "red"]);
  // Types are checked by `npm run types`, which also fails where one of these lines is no error any more.
  // @ts-expect-error A label reads no list of paints.
  expect(names[label]).toBeDefined();
  // @ts-expect-error Nor does a rank.
  expect(names[rank]).toBeDefined();
  // @ts-expect-error Nor a number that says nothing of itself, as one that was shifted by hand.
  expect(names[label - 1]).toBeDefined();
  // @ts-expect-error A list by rank is none by paint.
  const mixed: typeof names = byArea;
  // @ts-expect-error A label has no label.
  expect([mixed.length, labelOf(label)]).toEqual([2, 2]);
  // @ts-expect-error The places of a list by rank are ranks.
  expect(byArea.map((_, at) => labelOf(at))).toHaveLength(2);
});
