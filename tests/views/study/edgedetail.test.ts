import { expect, test } from "vitest";
import { findPlace, presentDetails } from "../../../src/views/study/edgedetail.ts";
import { studyResult } from "../../publish/sample.ts";

const [edge] = studyResult.comparison.edges;
if (edge === undefined) throw new Error("the sample has an edge");
// A level line through the middle of the flag.
const line = { a: edge.a, b: edge.b, points: [0, 0.5, 1.5, 0.5], focusShare: 0 };
const traced = { ...studyResult, edgeLines: [line] };
const link = (path: string): string => `/base${path}`;

test("the same part of both drawings, with the line in its middle, in thousandths of the flag's height", () => {
  const details = presentDetails(traced, { ...edge }, link);
  expect(details?.map(({ src }) => src)).toEqual([
    "/base/studies/a-square/original.svg",
    "/base/studies/a-square/redesign.svg",
  ]);
  const [before, after] = details?.map(({ viewBox }) => viewBox.split(" ").map(Number)) ?? [];
  expect(after).toEqual(before);
  const [, y = 0, width = 0, height = 0] = before ?? [];
  expect(y + height / 2).toBe(500);
  expect(width / height).toBeCloseTo(1.5, 2);
});

test("of another kind of drawing where that is asked for", () => {
  const details = presentDetails(traced, { ...edge }, link, "seen-grey-");
  expect(details?.[1].src).toBe("/base/studies/a-square/seen-grey-redesign.svg");
});

test("none where no line of the edge is traced; an edge is searched for once, and another by itself", () => {
  const [untraced, other] = [{ ...edge }, { ...edge }];
  const bare = { ...studyResult, edgeLines: [] };
  expect(presentDetails(bare, untraced, link)).toBeUndefined();
  expect(findPlace(traced, untraced)).toBeUndefined();
  expect(findPlace(traced, other)).toBe(findPlace(bare, other));
  expect(findPlace(traced, other)).toBeDefined();
});
