// What grows on its way to a site stays within the budgets of a study, and what a trial passes is made: one verdict for both.
// #security: these tests stay, however old they look.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { hasError } from "../../src/problem/problem.ts";
import { listDrawn } from "../../src/publish/pictures/drawingrecipe.ts";
import type { Recipe } from "../../src/publish/pictures/recipe.ts";
import { makeFiles, mostBytes } from "../../src/publish/pictures/makefiles.ts";
import { mostEdgePages } from "../../src/views/edge/edgeaddress.ts";
import { presentSite } from "../../src/views/siteview.ts";
import { measureStudy } from "../../src/analysis/jobs/studyjob.ts";
import { mostColours } from "../../src/analysis/drawing/smallcolour.ts";
import type { StudyResult } from "../../src/analysis/result.ts";
import { here } from "../analysis/here.ts";
import { gallery, study } from "../publish/sample.ts";
import { isWhole, sample } from "../sample.ts";
import { growing } from "./budget.ts";

vi.setConfig({ testTimeout: 240_000 });

/** Most files: drawings and strips, and for each edge two drawings and a picture. */
const mostFiles = 40 + 3 * mostEdgePages;

/** Analyses a study of a drawing. */
async function analyse(svg: string, replace: string) {
  const { focus: _focus, names: _names, ...rest } = study;
  const asked = { ...rest, options: [], change: { replace, with: "#f4c430" } };
  return measureStudy(here, asked, Buffer.from(svg), gallery);
}

/** Characters of a drawing of which one file of each kind is made; of smaller ones all, and of all by `npm run whole`. */
const large = 40_000;

/** Makes files of a study, two of each kind and a share of the others, and tries the two. Link pictures of edges differ in their words alone: two are enough. */
async function tryAndMake(result: StudyResult) {
  const files = listDrawn(result, gallery);
  const isLarge = result.drawings.original.length > large && !isWhole;
  const most = isLarge ? 1 : 2;
  const isTried = files.map(
    ({ recipe }, index) => files.slice(0, index).filter((one) => one.recipe.kind === recipe.kind).length < most,
  );
  const others = sample(
    files.filter(({ recipe }, index) => !isTried[index] && recipe.kind !== "link" && !isLarge),
    4,
  );
  const made = files.filter((file, index) => isTried[index] || others.includes(file));
  const tried = files.filter((_, index) => isTried[index]);
  return {
    files,
    tried: await judge(tried.map(({ recipe }) => recipe), true),
    made: await judge(made.map(({ recipe }) => recipe), false),
  };
}

const judge = (recipes: readonly Recipe[], isTrial: boolean) =>
  makeFiles({ file: "a.md", bytes: Buffer.from(""), recipes, isTrial });

/** Every drawing of a study, and one recipe of each other kind for each drawing: those of a kind differ in how far away it is seen. */
function sampleRecipes(result: StudyResult): readonly Recipe[] {
  const found = listDrawn(result, gallery).map(({ recipe }) => recipe);
  const ways = found.map((recipe) => `${recipe.kind} ${"drawing" in recipe ? recipe.drawing : ""}`);
  return found.filter((recipe, index) => recipe.kind === "drawing" || ways.indexOf(ways[index] ?? "") === index);
}

describe("drawings that grow", () => {
  test("each is in the list of attacks, and none is left out", () => {
    const manifest: readonly { readonly file: string; readonly attack: string; readonly expected: string }[] = JSON.parse(
      readFileSync(join(import.meta.dirname, "manifest.json"), "utf8"),
    );
    const listed = manifest.flatMap(({ file, attack, expected }) => (file === "budget.ts" ? [[attack, expected]] : []));
    expect(listed).toEqual(
      growing.map(({ attack, expected }) => [attack, expected === "published" ? "accept" : "reject"]),
    );
  });

  test.each(growing)("$attack", async ({ svg, replace, expected }) => {
    const { value, problems } = await analyse(svg, replace);
    if (value === undefined) {
      expect(problems.find(({ severity }) => severity === "error")?.rule).toMatch(expected);
      return;
    }
    const { files, tried, made } = await tryAndMake(value);
    expect(made.problems).toEqual(tried.problems);
    expect(made.value === undefined).toBe(tried.value === undefined);
    if (made.value === undefined) {
      expect(made.problems[0]?.rule).toMatch(expected);
      return;
    }
    expect(expected).toBe("published");
    expect(value.comparison.before.colours.length).toBeLessThanOrEqual(mostColours + 1);
    expect(files.length).toBeLessThanOrEqual(mostFiles);
    const bytes = made.value.reduce((sum, one) => sum + one.length, 0);
    expect(bytes).toBeLessThanOrEqual(mostBytes);
    const view = presentSite({ gallery, studies: [value], problems: [] }, "/");
    const { length } = value.comparison.edges;
    expect(view.edges).toHaveLength(Math.min(length, mostEdgePages));
    expect(view.studies[0]?.edgePages === undefined).toBe(length <= mostEdgePages);
  });
});

describe("what a trial passes is made", () => {
  const manifest: readonly { readonly file: string; readonly expected: string }[] = JSON.parse(
    readFileSync(join(import.meta.dirname, "manifest.json"), "utf8"),
  );
  const stored = manifest.filter(({ file, expected }) => file.startsWith("svg/") && expected !== "reject");

  test.each(sample(stored, 3))("$file", async ({ file }) => {
    const svg = readFileSync(join(import.meta.dirname, file), "utf8");
    const colour = /#[0-9a-f]{6}\b/i.exec(svg)?.[0] ?? "#cc0000";
    const { value, problems } = await analyse(svg, colour.toLowerCase());
    if (value === undefined) return expect(hasError(problems)).toBe(true);
    const recipes = sampleRecipes(value);
    const [tried, made] = [await judge(recipes, true), await judge(recipes, false)];
    expect(made.problems).toEqual(tried.problems);
    expect(made.value?.length).toBe(tried.value?.length);
  });
});
