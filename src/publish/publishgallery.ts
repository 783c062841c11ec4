// Floor 9. An analysed gallery → the published folder: what is drawn is drawn by child processes, results become views, views
// pages, and the whole is swapped in.

import type { GalleryResult } from "../analysis/result.ts";
import type { Store } from "../analysis/store/resultstore.ts";
import type { AddressNotes } from "../content/folder/addressfile.ts";
import type { Problem } from "../problem/problem.ts";
import { compareProblems } from "../problem/problem.ts";
import { type Output, type OutputOptions, withOutput } from "./folder/output.ts";
import type { Swapped } from "./folder/replacesite.ts";
import { fileOf, type SiteFile } from "./folder/sitefile.ts";
import { findLastGood } from "./lastgood.ts";
import { type Division, type MadeTexts, makeTexts } from "./pagetext.ts";
import { drawFiles, drawStudies, type MadeFile, type Means, withPool } from "./pictures/drawfiles.ts";
import { listDrawn, listShared } from "./pictures/drawingrecipe.ts";
import { keepFonts } from "./pictures/imagecache.ts";
import type { DrawnFile } from "./pictures/recipe.ts";
import { settle } from "./settlepages.ts";

/** What was published, on how many pages, and how it took the place of the site before. `result` is without what was left out. */
export interface BuildReport<R extends GalleryResult = GalleryResult> {
  readonly result: R;
  readonly pages: number;
  /** Studies that were left out and stand as they were last good. */
  readonly kept: readonly string[];
  /** Every address that was published. */
  readonly addresses: AddressNotes;
  readonly swapped: Swapped;
}

/** What a site is published with. */
export interface PublishOptions {
  /** The path under which a host will show the site; default is that of the gallery's address. */
  readonly base?: string | undefined;
  /** Pictures that were made before. */
  readonly store?: Store | undefined;
  /** How the pages are divided. */
  readonly division?: Division;
}

/** A site that is ready to be swapped in. */
type Prepared<R extends GalleryResult> = Omit<BuildReport<R>, "swapped">;

/**
 * Makes the whole site in `output`. Studies that cannot be drawn or shown are left out and named in `result.problems`.
 * Throws what `Output.add` throws.
 */
export async function prepareSite<R extends GalleryResult>(
  output: Pick<Output, "add" | "drop"> & Partial<Pick<Output, "standing">>,
  result: R,
  means: Means,
  base?: string,
  division?: Division,
): Promise<Prepared<R>> {
  const take = (files: readonly MadeFile[]) =>
    output.add(files.map(({ path, bytes }) => fileOf(path, () => bytes)));
  const drawn = await drawStudies(result, means, take);
  const written: string[] = [];
  const standing = await output.standing?.();
  const settled = await settle(
    drawn,
    async (whole) => {
      await output.drop([...written.splice(0), ...listGone(drawn, whole)]);
      const write = async (files: readonly SiteFile[]) => {
        written.push(...files.map(({ path }) => path));
        await output.add(keepFonts(files, means.store));
      };
      return makeTexts(whole, base, division, write, standing && findLastGood(standing, whole.leftOut ?? []));
    },
    (part) => makeTexts(part, base, division),
  );
  const { picture, ...made } = settled.made;
  const { value, problems } = await drawShared(settled.result, picture, means);
  await take(value);
  const all = [...settled.result.problems, ...problems].sort(compareProblems);
  return { ...made, result: { ...settled.result, problems: all } };
}

/** Publishes an analysed gallery to `output`. Throws what `Output.publish` throws. */
export async function publishTo<R extends GalleryResult>(
  output: Output,
  result: R,
  means: Means,
  base?: string,
  division?: Division,
): Promise<BuildReport<R>> {
  const prepared = await prepareSite(output, result, means, base, division);
  return { ...prepared, swapped: await output.publish() };
}

/**
 * Publishes an analysed gallery to `outDir`, staying clear of the folders in `keepOut`.
 *
 * Throws OutputError, and changes nothing, where `outDir` cannot be used.
 */
export async function publishGallery(
  result: GalleryResult,
  outDir: string,
  { base, store, division, ...options }: OutputOptions & PublishOptions,
): Promise<BuildReport> {
  return withPool(undefined, (line) =>
    withOutput(outDir, options, (output) => publishTo(output, result, { line, store }, base, division)),
  );
}

/** The folders of studies that were left out: what an earlier try wrote there is not in the site. */
function listGone(before: GalleryResult, { studies }: GalleryResult): readonly string[] {
  const shown = new Set(studies.map(({ study }) => study.slug));
  const gone = before.studies.filter(({ study }) => !shown.has(study.slug));
  return gone.flatMap(({ study: { slug, formerly = [] } }) =>
    [slug, ...formerly].map((name) => `studies/${name}`),
  );
}

/** What is drawn for the whole site. The picture of the survey does without its flags where one of them cannot be drawn. */
async function drawShared(
  { survey = { entries: [], failed: [] }, studies }: GalleryResult,
  picture: MadeTexts["picture"],
  means: Means,
): Promise<{ readonly value: readonly MadeFile[]; readonly problems: readonly Problem[] }> {
  const draw = (entries: typeof survey.entries) => {
    const files = listShared(picture, { entries }, studies);
    return drawFiles(means, { file: "flags", drawing: `${entries.length} flags` }, files);
  };
  const whole = await draw(survey.entries);
  if (whole.value !== undefined) return { ...whole, value: whole.value };
  const { value } = await draw([]);
  if (value === undefined)
    throw new Error(whole.problems.map(({ reason, hint }) => `${reason} ${hint}`).join("\n"));
  return { value, problems: whole.problems.map((problem) => ({ ...problem, severity: "warning" })) };
}

/** Returns every file of the site, the pages first, and how many pages there are; nothing is drawn yet. */
export async function listSite(
  result: GalleryResult,
  base?: string,
): Promise<{
  readonly files: readonly SiteFile[];
  readonly drawn: readonly DrawnFile[];
  readonly pages: number;
}> {
  const files: SiteFile[] = [];
  const { pages, picture } = await makeTexts(result, base, undefined, async (more) => {
    files.push(...more);
  });
  const isPage = ({ path }: SiteFile) => path.endsWith(".html");
  const shared = listShared(picture, result.survey ?? { entries: [] }, result.studies);
  const own = result.studies.flatMap((study) => listDrawn(study, result.gallery));
  const ordered = [...files.filter(isPage), ...files.filter((file) => !isPage(file))];
  return { files: ordered, drawn: [...own, ...shared], pages };
}
