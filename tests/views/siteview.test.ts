import { expect, test } from "vitest";
import { openSite, presentSite } from "../../src/views/siteview.ts";
import { galleryResult, studyResult } from "../publish/sample.ts";
import { survey } from "../publish/surveyed.ts";

test("all that templates see is plain data: it survives being written down", () => {
  const view = presentSite(galleryResult, undefined);
  // JSON has no undefined; everything else must come back as it was.
  expect(JSON.parse(JSON.stringify(view))).toEqual(view);
  // Nor an instance of a class, which JSON would make a plain object that is equal to it.
  expect(structuredClone(view)).toStrictEqual(view);
  expect(view.studies.map((page) => page.slug)).toEqual(["a-square"]);
});

test("the page for missing addresses follows the base, or else the gallery's address", () => {
  expect(presentSite(galleryResult, undefined).missing.frame.links.home).toBe("/sound/");
  expect(presentSite(galleryResult, "/preview").missing.frame.links.home).toBe("/preview/");
});

/** Returns where in a page there is a list of more than `most` things: its path within the page. */
function findLong(page: unknown, most: number, at = ""): readonly string[] {
  if (typeof page !== "object" || page === null) return [];
  const long = Array.isArray(page) && page.length > most ? [`${at}: ${page.length}`] : [];
  return [...long, ...Object.entries(page).flatMap(([key, value]) => findLong(value, most, `${at}.${key}`))];
}

test("however many studies, tags, authors, flags and failures there are, no page has a list without end", {
  timeout: 120_000,
}, () => {
  const body = '::figure{kind="gain chart"}';
  const studies = Array.from({ length: 1300 }, (_, index) => {
    const names = (kind: string, at: number) => [0, 1, 2, 3].map((nth) => `${kind} ${at} ${nth}`);
    // A tag of one study has no page of its own.
    const tags = names("tag", Math.floor(index / 2));
    const own = { slug: `s${index}`, body, authors: names("author", index), tags };
    const clarity = index % 2 === 0 ? studyResult.comparison.clarity : ([null, null] as const);
    return {
      ...studyResult,
      study: { ...studyResult.study, ...own },
      comparison: { ...studyResult.comparison, clarity },
    };
  });
  const [entry] = survey.entries;
  const [failure] = survey.failed;
  if (entry === undefined || failure === undefined) throw new Error("the sample has both");
  const shown = { ...entry, slugs: studies.map(({ study: { slug } }) => slug) };
  const entries = [shown, ...studies.map(({ study: { slug } }) => ({ ...entry, slugs: [slug] }))];
  const failed = studies.map(() => failure);
  const site = openSite({ ...galleryResult, studies, survey: { entries, failed } }, undefined);
  const { shelves, shelfIndexes, ...pages } = site.presentShared();
  expect(shelves.length).toBeGreaterThan(7500);
  // The survey is the longest page: the thousand least clear flags, in two tables that a script sorts.
  expect(findLong(pages, 1000)).toEqual([]);
  expect(
    findLong({ ...pages, survey: { ...pages.survey, rows: [], more: undefined, field: undefined } }, 200),
  ).toEqual([]);
  for (const page of [...shelves, ...shelfIndexes]) expect(findLong(page, 200)).toEqual([]);
  const { studies: some, edges } = site.presentStudies(studies.slice(0, 3));
  for (const page of [...some, ...edges]) expect(findLong(page, 200)).toEqual([]);
});
