// Floor 9. Results → every file of a site that is text, pages and data: the pages of some studies at a time, so that no process
// ever holds those of a whole gallery, and those of a large gallery each time in a process of its own.
import { runOrdered } from "../analysis/jobs/orderedqueue.ts";
import type { GalleryResult } from "../analysis/result.ts";
import type { AddressNotes } from "../content/folder/addressfile.ts";
import type { AddressNote } from "../content/folder/addressline.ts";
import type { GoneAddress } from "../views/goneaddress.ts";
import { listPages } from "../views/pageaddress.ts";
import { openSite, type SiteView } from "../views/siteview.ts";
import type { StudyPage } from "../views/study/studypage.ts";
import { formatOf } from "../words/format.ts";
import type { Worded } from "../words/say.ts";
import { readLettering } from "./assets.ts";
import { feedLength } from "./feeds/feed.ts";
import { listStudyFiles } from "./feeds/machinefiles.ts";
import { fileOf, type SiteFile } from "./folder/sitefile.ts";
import { joinLettering, type Lettering } from "./fonts/lettering.ts";
import type { LastGood } from "./lastgood.ts";
import { listFilesBeside } from "./listfiles.ts";
import { openPool } from "./pictures/drawfiles.ts";
import { renderPages, templatesDir } from "./renderpages.ts";

/** How many studies' pages are rendered at a time; `apart` in a process of its own, where the gallery has more than `most`. */
export interface Division {
  readonly here: number;
  readonly apart: number;
  readonly most: number;
}

export const usualDivision: Division = { here: 25, apart: 100, most: 2000 };

/** What a process of its own may take, in MB, and for how long, in seconds. */
const apartLimits = { size: 1, megabytes: 2048, seconds: 600 };

/** Pages rendered at a time that only lead on. */
const goneAtOnce = 500;

/** Processes at once, beside ours. */
const apartAtOnce = 2;

/** What was made: the number of pages, and what is drawn for all of them. */
export interface MadeTexts {
  readonly pages: number;
  readonly picture: SiteView["survey"]["picture"];
  /** Every address that was published: where it leads once no page is there. */
  readonly addresses: AddressNotes;
  /** The studies of `lastGood` that stay. */
  readonly kept: readonly string[];
}

/**
 * Makes all texts and hands them to `take` as soon as they are there, without it only tries. Studies of `lastGood`
 * stay as they stand. Throws what a view, a template or `take` throws.
 */
export async function makeTexts(
  result: GalleryResult,
  base: string | undefined,
  division = usualDivision,
  take: (files: readonly SiteFile[]) => Promise<void> = async () => undefined,
  lastGood: readonly LastGood[] = [],
): Promise<MadeTexts> {
  const { ordered, presentStudies, presentShared, leads, ...site } = openSite(result, base);
  const isApart = ordered.length > division.most;
  const size = isApart ? division.apart : division.here;
  const { shelves, ...whole } = presentShared();
  const news: StudyPage[] = [];
  const titles = new Map<string, string>();
  const parts: readonly (() => Part)[] = [
    ...divide(ordered, size).map((some) => () => {
      const view = presentStudies(some);
      news.push(...view.studies.slice(0, feedLength - news.length));
      return { view, beside: some.flatMap((study) => listStudyFiles(study, result.gallery)) };
    }),
    ...divide(shelves, size).map((some) => () => ({ view: { shelves: some }, beside: [] })),
    () => ({ view: whole, beside: [] }),
  ];
  const { logo, theme } = result.gallery;
  const lettering: Lettering[] = [];
  let pages = 0;
  const work = async (part: () => Part): Promise<void> => {
    const { view, beside } = part();
    for (const [address, title] of listPages(view, result.gallery)) titles.set(address, title);
    const rendered = isApart
      ? await renderApart(view, result.gallery)
      : await renderPages(view, result.gallery);
    pages += rendered.length;
    lettering.push(await readLettering(templatesDir, rendered, theme));
    await take([...rendered, ...(await Promise.all(beside.map(hold)))]);
  };
  await runOrdered(parts, isApart ? apartAtOnce : 1, work, () => undefined);
  const kept: string[] = [];
  const { say } = formatOf(result.gallery);
  for (const { slug, pages: addresses, load } of lastGood) {
    const files = await load(say("moved.lastGood"), logo !== undefined);
    if (files.length === 0) continue;
    kept.push(slug);
    pages += addresses.length;
    for (const address of addresses) titles.set(address, slug);
    lettering.push(
      await readLettering(
        templatesDir,
        files.filter(({ path }) => path.endsWith(".html")),
        theme,
      ),
    );
    await take(files);
  }
  const addresses = new Map(
    [...titles.keys()].map((address): [string, AddressNote] => {
      const to = leads.get(address);
      return [address, to === undefined ? {} : { to }];
    }),
  );
  const gone = site.findGone(new Set(titles.keys()));
  for (const address of listWithdrawn(gone, result)) addresses.set(address, { withdrawn: "" });
  for (const moved of divide(site.presentGone(gone, titles), goneAtOnce))
    await work(() => ({ view: { moved }, beside: [] }));
  await take(await listFilesBeside(result, { ...whole, shelves, studies: news }, joinLettering(lettering)));
  return { pages, picture: whole.survey.picture, addresses, kept };
}

/**
 * The studies that are known to be gone: no other can say any more that it was one of them. A folder with an error that was
 * never published may be one that was renamed.
 */
function listWithdrawn(
  gone: readonly GoneAddress[],
  { leftOut = [], contested = new Map(), addresses }: GalleryResult,
): readonly string[] {
  if (leftOut.some((slug) => addresses?.has(`/studies/${slug}/`) !== true)) return [];
  return gone.flatMap(({ address, fate }) => {
    const [, slug] = /^\/studies\/([^/]+)\/$/.exec(address) ?? [];
    return fate === "withdrawn" && slug !== undefined && !contested.has(slug) ? [address] : [];
  });
}

interface Part {
  readonly view: Partial<SiteView>;
  readonly beside: readonly SiteFile[];
}

function divide<T>(items: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, at) =>
    items.slice(at * size, (at + 1) * size),
  );
}

async function hold({ path, make }: SiteFile): Promise<SiteFile> {
  const bytes = await make();
  return fileOf(path, () => bytes);
}

/** Renders pages in a process that ends with it. Throws what a template throws there. */
async function renderApart(
  view: Partial<SiteView>,
  { language, words }: Worded,
): Promise<readonly SiteFile[]> {
  const pool = openPool(apartLimits);
  try {
    const { value, problems } = await pool.run("pages", "pages", {
      view,
      gallery: { language, ...(words && { words }) },
    });
    if (value === undefined) throw new Error(`rendering pages apart: ${problems[0]?.rule}`);
    return value.map(({ path, text }) => fileOf(path, () => text));
  } finally {
    pool.close();
  }
}
