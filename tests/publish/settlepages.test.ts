// A wall taken down on purpose: a view or a template that throws for one study costs that study and no other.
import { h } from "preact";
import { expect, test } from "vitest";
import type { GalleryResult } from "../../src/analysis/result.ts";
import { renderPages } from "../../src/publish/renderpages.ts";
import { settle } from "../../src/publish/settlepages.ts";
import { presentSite } from "../../src/views/siteview.ts";
import { gallery, study, studyResult } from "./sample.ts";

const named = (slug: string, changed: object = {}) => ({
  ...studyResult,
  study: { ...study, slug, file: `content/studies/${slug}/study.md`, ...changed },
});
const slugsOf = ({ studies }: GalleryResult) => studies.map((one) => one.study.slug);
const many: GalleryResult = {
  gallery,
  studies: Array.from({ length: 13 }, (_, index) => named(`study-${index}`)),
  problems: [],
};

/** Makes a list of slugs, and throws where one of `bad` is among them. */
const throwing =
  (...bad: readonly string[]) =>
  async (result: GalleryResult) => {
    const found = slugsOf(result).find((slug) => bad.includes(slug));
    if (found !== undefined) throw new Error(`thrown by ${found}`);
    return slugsOf(result);
  };

test.each([[[]], [["study-0"]], [["study-3", "study-4", "study-12"]], [slugsOf(many)]])(
  "%j are left out and named, all others are made",
  async (bad) => {
    const { result, made } = await settle(many, throwing(...bad));
    expect(made).toEqual(slugsOf(many).filter((slug) => !bad.includes(slug)));
    expect(slugsOf(result)).toEqual(made);
    expect(result.problems.map(({ rule, file }) => `${rule} ${file}`).sort()).toEqual(
      bad.map((slug) => `study/fault content/studies/${slug}/study.md`).sort(),
    );
    for (const { hint } of result.problems) expect(hint).toContain("thrown by");
  },
);

test("what throws without any study, or for no study alone, is no study's fault", async () => {
  await expect(settle(many, () => Promise.reject(new Error("always")))).rejects.toThrow("always");
  const never = async ({ studies }: GalleryResult) => {
    if (studies.length === 13) throw new Error("all of them");
  };
  await expect(settle(many, never)).rejects.toThrow("all of them");
});

test("a real template that throws: the pages of the others are rendered", { timeout: 240_000 }, async () => {
  const broken = h(() => {
    throw new Error("a part that throws");
  }, null);
  const three = { ...many, studies: [named("first"), named("bad", { symbolism: broken }), named("last")] };
  const { result, made } = await settle(three, async (part) =>
    renderPages(presentSite(part, "/"), part.gallery),
  );
  expect(slugsOf(result)).toEqual(["first", "last"]);
  expect(result.problems.map(({ hint }) => hint).join()).toContain("a part that throws");
  const paths = made.map(({ path }) => path);
  expect(paths).toContain("studies/first/index.html");
  expect(paths).toContain("studies/last/index.html");
  expect(paths.filter((path) => path.startsWith("studies/bad/"))).toEqual([]);
});
