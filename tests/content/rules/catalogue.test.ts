// The catalogue of rules is whole and true: it has every rule that the code can raise and no other, each wrong example
// raises its rule and nothing else, and each right one raises nothing.
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { Pool } from "../../../src/analysis/jobs/pool.ts";
import { anchorOf, ruleChapters } from "../../../src/content/rules/catalogue.ts";
import type { Rule } from "../../../src/content/rules/rule.ts";
import { openKept } from "../../kept.ts";
import { readSources } from "../../structure/source.ts";
import { rightGallery } from "../mistakes.ts";
import { act, acted } from "./acted.ts";
import { type Files, filesOf, rulesBySlug, rulesIn, type Side } from "./making.ts";
import { told } from "./told.ts";

/** One pool measures all examples: most are alike, and found in the store. */
let pool: Pool;
beforeAll(async () => {
  pool = new Pool({}, await openKept());
});
afterAll(() => pool.close());

const rules = ruleChapters.flatMap((chapter) => chapter.rules);
const ids = rules.map(({ id }) => id);

/** Raised by `serve` alone: tests/preview/startserving.test.ts breaks a template, hears of it, and mends it. */
const served = ["site/template"];

/** Rule ids that stand in the code, but for the catalogue itself. */
function findRaised(): readonly string[] {
  const files = readSources(["src"], [".ts"]).filter(({ path }) => !path.includes("/rules/"));
  const found = files.flatMap(
    ({ text }) =>
      text.match(/(?<=")(?:address|page|series|vote|nomination|study|svg|site|words)\/[a-z0-9-]+(?=")/g) ??
      [],
  );
  return [...new Set(found)].sort();
}

test("every rule that the code names is in the catalogue, and every one of the catalogue in the code", () => {
  expect([...ids].sort()).toEqual(findRaised());
});

test("each rule once, with an anchor of its own", () => {
  expect(new Set(ids).size).toBe(ids.length);
  expect(new Set([...ids.map(anchorOf), ...ruleChapters.map(({ id }) => id)]).size).toBe(
    ids.length + ruleChapters.length,
  );
});

test.each(rules)("$id says what and why in sentences", ({ means, why }) => {
  for (const sentence of [means, why]) {
    expect(sentence).toMatch(/^[\p{Lu}“0-9a-z].*\.$/u);
    expect(sentence).not.toMatch(/[!…]/);
  }
});

const runnable = rules.filter(({ id }) => !acted.includes(id) && !served.includes(id));
const isStudyAlone = (rule: Rule): boolean =>
  (["wrong", "right"] as const).every((side) =>
    Object.keys(filesOf(rule, side)).every(
      (path) => path.startsWith("studies/ferry/") || path === "gallery.yaml",
    ),
  ) &&
  !/^study\/(?:gallery-missing|studies-missing|likeness)$/.test(rule.id) &&
  rule.example.file !== "gallery.yaml";

const alone = runnable.filter(isStudyAlone);
const whole = runnable.filter((rule) => !isStudyAlone(rule));

describe("examples in a study", () => {
  const slugOf = ({ id }: Rule): string => `${anchorOf(id)}-example`;
  const found: Partial<Record<Side, ReadonlyMap<string, readonly string[]>>> = {};

  beforeAll(async () => {
    for (const side of ["wrong", "right"] as const) {
      const files: Record<string, string | Uint8Array> = {};
      for (const rule of alone) {
        for (const [path, text] of Object.entries(filesOf(rule, side)))
          files[path.replace("studies/ferry/", `studies/${slugOf(rule)}/`)] = readdress(rule, text);
      }
      found[side] = await rulesBySlug(files, alone.map(slugOf), pool);
    }
  });

  /** The studies lie side by side under names of their own, and so do their addresses. */
  const readdress = (rule: Rule, text: string | Uint8Array): string | Uint8Array =>
    typeof text === "string" && /^study\/formerly-/.test(rule.id)
      ? text.replaceAll("ferry-wheel", `${slugOf(rule)}-before`).replace("[ferry]", `[${slugOf(rule)}]`)
      : text;

  test.each(alone)("$id", (rule) => {
    expect(found.wrong?.get(slugOf(rule))).toEqual([rule.id]);
    expect(found.right?.get(slugOf(rule))).toEqual([]);
  });
});

describe("examples in a content folder", () => {
  const withSettings = (rule: Rule, files: Files): Files =>
    /^study\/(?:gallery-missing|studies-missing)$/.test(rule.id)
      ? files
      : { "gallery.yaml": rightGallery, ...files };

  test.each(whole)("$id", async (rule) => {
    expect(await rulesIn(withSettings(rule, filesOf(rule, "wrong")), pool)).toEqual([rule.id]);
    expect(await rulesIn(withSettings(rule, filesOf(rule, "right")), pool)).toEqual([]);
  });
});

describe("examples that are acted out", () => {
  // Children that work are counted in these.
  beforeAll(() => pool.close());

  test.each(acted)("%s", { timeout: 60_000 }, async (id) => {
    expect(ids).toContain(id);
    expect([...new Set(await act(id, "wrong"))]).toEqual([id]);
    expect(await act(id, "right")).toEqual([]);
  });
});

test("everything told in words is made, acted out or served, and nothing else is", () => {
  const inWords = rules.filter(({ example }) => example.file === "told").map(({ id }) => id);
  expect([...Object.keys(told), ...acted, ...served].sort()).toEqual([...inWords].sort());
});
