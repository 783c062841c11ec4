import { expect, test } from "vitest";
import { linkFrom } from "../../../src/site/address.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { presentGain } from "../../../src/site/present/gain.ts";
import type { StudyResult } from "../../../src/study/result.ts";
import { studyResult } from "../sample.ts";

const format = createFormat("en");

function moved(slug: string, clearEdgeShare: readonly [number | null, number | null]): StudyResult {
  const { study, comparison } = studyResult;
  return {
    ...studyResult,
    study: { ...study, slug, title: slug },
    comparison: { ...comparison, clearEdgeShare },
  };
}

test("one line a study, most gained first, with both ends where the shares stand", () => {
  const gain = presentGain(
    [
      moved("down", [1, 0.25]),
      moved("level", [0.5, 0.5]),
      moved("up", [0.1, 0.9]),
      moved("none", [null, null]),
    ],
    linkFrom("/"),
    format,
  );
  expect(gain?.rows.map(({ title, x, way }) => [title, x, way])).toEqual([
    ["up", [10, 90], "up"],
    ["level", [50, 50], "level"],
    ["down", [100, 25], "down"],
  ]);
  expect(gain?.rows[0]).toMatchObject({ address: "studies/up/", before: "10%", after: "90%" });
  expect(gain?.ticks.map(({ x, text }) => [x, text])).toEqual([
    [0, "0%"],
    [50, "50%"],
    [100, "100%"],
  ]);
});

test("a long list opens on demand, and nothing of it is lost", () => {
  const many = Array.from({ length: 30 }, (_, index) => moved(`s${index}`, [0, index / 30]));
  const gain = presentGain(many, linkFrom("/"), format);
  expect([gain?.rows.length, gain?.rest.length, gain?.restLabel]).toEqual([24, 6, "6 more"]);
});

test("without an edge there is nothing to draw", () => {
  expect(presentGain([moved("none", [null, null])], linkFrom("/"), format)).toBeUndefined();
});
