import { expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { presentGain, rankGains } from "../../../src/views/front/gainchart.ts";
import { createFormat } from "../../../src/words/format.ts";
import { studyResult } from "../../publish/sample.ts";

const format = createFormat("en");

const chart = (results: readonly StudyResult[], from = "/", own?: string) =>
  presentGain(rankGains(results, format), linkFrom(from), format, own);

function moved(slug: string, clarity: readonly [number | null, number | null]): StudyResult {
  const { study, comparison } = studyResult;
  return {
    ...studyResult,
    study: { ...study, slug, title: slug },
    comparison: { ...comparison, clarity },
  };
}

test("one line a study, most gained first, with both ends where clarity stands", () => {
  const gain = chart(
    [moved("down", [100, 25]), moved("level", [50, 50]), moved("up", [10, 90]), moved("none", [null, null])],
    "/",
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
  const many = Array.from({ length: 30 }, (_, index) => moved(`s${index}`, [0, (100 * index) / 30]));
  const gain = chart(many);
  expect([gain?.rows.length, gain?.rest.length, gain?.restLabel]).toEqual([24, 6, "6 more"]);
});

test("beyond two hundred studies the chart leads to the list of all; in prose beyond three", () => {
  const many = Array.from({ length: 203 }, (_, index) => moved(`s${index}`, [0, (100 * index) / 203]));
  const gain = chart(many);
  expect([gain?.rows.length, gain?.rest.length]).toEqual([24, 176]);
  expect(gain?.others).toEqual({ text: "The other 3 studies are in the list of all", address: "list/" });
  expect(chart(many.slice(3))?.others).toBeUndefined();
  const inProse = chart(many, "/studies/s0/", "s0");
  expect([inProse?.rows.length, inProse?.rest.length]).toEqual([3, 0]);
  expect(inProse?.others?.text).toBe("The other 200 studies are in the list of all");
  const fewer = chart(many.slice(0, 60), "/studies/s0/", "s0");
  expect(fewer?.others).toEqual({ text: "The other 57 studies are on the front page", address: "../../" });
});

test("without an edge there is nothing to draw", () => {
  expect(chart([moved("none", [null, null])])).toBeUndefined();
});

test("says what it shows: how many rise, fall and stay, and which rises most", () => {
  const told = (results: readonly StudyResult[], own?: string) => chart(results, "/", own)?.description;
  const results = [moved("down", [100, 25]), moved("level", [50, 50]), moved("up", [10, 90])];
  expect(told(results)).toBe(
    "3 studies: clarity rises in 1, falls in 1, and stays in 1. It rises most in “up”, from 10% to 90%.",
  );
  expect(told(results, "down")).toMatch(/ It rises most in “up”.* In this study it goes from 100% to 25%\.$/);
  expect(told(results, "up")).not.toContain("In this study");
  expect(told([moved("down", [100, 25])])).toBe("1 study: clarity falls in 1.");
});

test("in the prose of a study its own row stands between its neighbours, without a way to itself", () => {
  const many = Array.from({ length: 30 }, (_, index) => moved(`s${index}`, [0, (100 * index) / 30]));
  const shown = (own: string) => chart(many, "/studies/x/", own)?.rows;
  const slugs = (own: string) => shown(own)?.map(({ slug }) => slug);
  expect(slugs("s3")).toEqual(["s4", "s3", "s2"]);
  expect(slugs("s29")).toEqual(["s29", "s28", "s27"]);
  expect(slugs("s0")).toEqual(["s2", "s1", "s0"]);
  expect(shown("s27")?.map(({ address }) => address)[0]).toBe("../s28/");
  expect(
    shown("s27")
      ?.filter(({ address }) => address === undefined)
      .map(({ slug }) => slug),
  ).toEqual(["s27"]);
  // A study without an edge is not in the chart; the others still are.
  const none = chart([...many, moved("none", [null, null])], "/", "none");
  expect([none?.rows.length, none?.rest.length]).toEqual([3, 0]);
});

test("rises and falls are those of the two numbers that are printed", () => {
  const [row] = chart([moved("hardly", [58.1, 58.4])])?.rows ?? [];
  expect(row).toMatchObject({ before: "58%", after: "58%", way: "level" });
});
