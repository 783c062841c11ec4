// Test support. Several studies of one flag: the sample study under other names.
import type { GalleryResult, StudyResult } from "../../../src/analysis/result.ts";
import { galleryResult, study, studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

interface Named {
  readonly slug: string;
  readonly date?: string | undefined;
  readonly flag?: string;
}

/** Studies that differ in nothing but these. */
export function studiesNamed(all: readonly Named[]): readonly StudyResult[] {
  return all.map(({ slug, date, flag }) => {
    const { date: _, ...undated } = study;
    const named = { ...undated, slug, title: `Study ${slug}`, flag: flag ?? `The flag of ${slug}` };
    return { ...studyResult, study: date === undefined ? named : { ...named, date } };
  });
}

/** A gallery in which all of them are of one flag. */
export function rivalResult(all: readonly Named[]): GalleryResult {
  const [entry] = survey.entries.filter(({ slugs }) => slugs.length > 0);
  if (entry === undefined) throw new Error("the sample has no study");
  const slugs = all.map(({ slug }) => slug).sort();
  return {
    ...galleryResult,
    studies: studiesNamed(all),
    survey: { entries: [{ ...entry, slugs }], failed: [] },
  };
}
