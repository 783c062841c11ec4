// The messages of the mistakes in mistakes.ts, whole. mistakes.txt is a record of review: somebody read each of these as an
// author who knows no YAML would, and let it stand. A message changed on purpose changes the record (vitest -u writes it),
// and is read again.
import { beforeAll, describe, expect, test } from "vitest";
import { galleryMistakes, studyMistakes } from "./mistakes.ts";
import { formatMade, type Made, makeMistakes } from "./record.ts";

let made: readonly Made[];

beforeAll(async () => {
  made = await makeMistakes();
});

const names = [...studyMistakes, ...galleryMistakes].map(({ what }) => what);

describe("mistakes that authors make", () => {
  test("the record has every message", async () => {
    await expect(formatMade(made)).toMatchFileSnapshot("mistakes.txt");
  });

  test("there are at least forty, none twice", () => {
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThanOrEqual(40);
  });

  test.each(names)("%s: something is said, in a sentence or two, with what to do", (what) => {
    const problems = made.find((one) => one.what === what)?.problems ?? [];
    expect(problems).not.toEqual([]);
    for (const { reason, hint } of problems) {
      expect(reason).toMatch(/^[\p{Lu}“<\d].*\.$|^[a-z-]+[= :.].*\.$|^gallery\.yaml .*\.$/su);
      expect(reason.length).toBeLessThan(220);
      expect(hint).toBeTruthy();
    }
  });

  test("no message speaks of what only the program knows", () => {
    const text = made
      .flatMap(({ problems }) => problems.map(({ reason, hint }) => `${reason} ${hint}`))
      .join("\n");
    expect(text).not.toMatch(/undefined|null|NaN|\[object|Error:|zod|saxes|counterchange-mistake/);
  });

  test("no line to type is the line that stands there", () => {
    const said = made.flatMap(({ problems }) => problems).filter(({ rule }) => rule.startsWith("study/yaml"));
    expect(said.length).toBeGreaterThan(20);
    for (const { hint = "", sourceLine = "" } of said)
      for (const line of hint.split("\n"))
        expect(/^(?:Type|Close it|.* quotes): (.*)$/.exec(line)?.[1]).not.toBe(sourceLine.replace(/^ +/, ""));
  });

  test("one mistake of a study is one message, but for two that are two each", () => {
    const several = made
      .filter(({ what, problems }) => problems.length > 1 && studyMistakes.some((one) => one.what === what))
      .map(({ what, problems }) => [what, problems.map(({ rule }) => rule)]);
    expect(several).toEqual([
      ["a drawing in other letter case", ["study/drawing-name", "study/drawing-missing"]],
      ["a picture in pixels", ["study/unexpected-file", "study/original-path"]],
    ]);
  });
});
