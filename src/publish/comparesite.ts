// Floor 9. A gallery beside a published site of it: what publishing it now would move, study by study.
import type { GalleryResult, StudyResult } from "../analysis/result.ts";
import { readRegular } from "../content/disk/readfile.ts";
import { isAddress } from "../content/folder/addressline.ts";
import { isSlug } from "../content/study/slug.ts";
import { roundMark } from "../measure/clarity.ts";
import { compareText } from "../problem/problem.ts";
import type { GoneAddress } from "../views/goneaddress.ts";
import { listAddresses } from "../views/pageaddress.ts";
import { openSite } from "../views/siteview.ts";
import { verdictIds } from "../words/verdict.ts";
import { describeFile, readDigests } from "./folder/manifest.ts";
import { listPages } from "./folder/standingsite.ts";

/** Larger files of the site are not read, in bytes: those of 5,000 studies in one list have some 5 MB. */
const mostBytes = 16 * 1024 * 1024;

/** What a page says first; clarity before and after the change in whole percent, null where there is no edge. */
export interface Marks {
  readonly verdict: string;
  readonly clarity: readonly (number | null)[];
}

/** Null where the study was not shown, or will not be. */
export interface MovedStudy {
  readonly study: string;
  readonly was: Marks | null;
  readonly is: Marks | null;
  /** Whether its folder is there and has an error. */
  readonly isLeftOut: boolean;
  /** Of `original` and `redesign`, those that show something else. */
  readonly pictures: readonly string[];
}

/** What publishing moves. `to`: where an address leads whose page goes; null where it will say that it was withdrawn. */
export interface Moved {
  readonly studies: readonly MovedStudy[];
  readonly gone: readonly { readonly address: string; readonly to: string | null }[];
}

/**
 * Returns what moves where `result`, as it would be published, takes the place of the site in `folder`; undefined where that
 * is none. The site may be anyone's: what of it is no address, slug or mark is passed over.
 */
export async function compareSite(folder: string, result: GalleryResult): Promise<Moved | undefined> {
  const digests = await readDigests(folder);
  if (digests === undefined) return undefined;
  const now = new Map(result.studies.map((one) => [one.study.slug, one]));
  const leftOut = new Set(result.leftOut);
  const before = new Map<string, Marks>();
  for (const file of digests.keys()) {
    const [, slug = ""] = /^studies\/([^/]+)\/study\.json$/.exec(file) ?? [];
    const marks = isSlug(slug) ? await readMarks(folder, file) : undefined;
    if (marks !== undefined) before.set(slug, marks);
  }
  const slugs = [...new Set([...before.keys(), ...now.keys()])].sort(compareText);
  const studies = slugs.map((study): MovedStudy => {
    const one = now.get(study);
    const was = before.get(study) ?? null;
    const pictures = was === null || one === undefined ? [] : findRedrawn(one, digests);
    const isLeftOut = leftOut.has(study);
    return { study, was, is: one === undefined ? null : marksOf(one), isLeftOut, pictures };
  });
  const moved = ({ was, is, pictures }: MovedStudy) =>
    pictures.length > 0 || JSON.stringify(was) !== JSON.stringify(is);
  return { studies: studies.filter(moved), gone: await findLost(folder, [...digests.keys()], result) };
}

/** Returns the title and the address that the published site in the folder has; undefined of what it does not say. */
export async function readSiteHead(
  folder: string,
): Promise<{ readonly title: string | undefined; readonly address: string | undefined }> {
  const data: Readonly<Record<string, unknown>> = { ...(await readData(folder, "studies.json")) };
  const textOf = (value: unknown) => (typeof value === "string" ? value : undefined);
  return { title: textOf(data["title"]), address: textOf(data["address"]) };
}

async function readData(folder: string, file: string): Promise<object | undefined> {
  const read = await readRegular(folder, file, mostBytes);
  if (!("bytes" in read)) return undefined;
  try {
    const data: unknown = JSON.parse(Buffer.from(read.bytes).toString("utf8"));
    return typeof data === "object" && data !== null ? data : undefined;
  } catch {
    return undefined;
  }
}

function marksOf({ comparison: { verdict, clarity } }: StudyResult): Marks {
  return { verdict, clarity: clarity.map((mark) => (mark === null ? null : roundMark(mark))) };
}

async function readMarks(folder: string, file: string): Promise<Marks | undefined> {
  const data = await readData(folder, file);
  if (data === undefined || !("verdict" in data) || !("clarity" in data)) return undefined;
  const { verdict, clarity } = data;
  if (typeof verdict !== "string" || !Object.hasOwn(verdictIds, verdict)) return undefined;
  if (!Array.isArray(clarity) || clarity.length !== 2) return undefined;
  return {
    verdict,
    clarity: clarity.map((mark: unknown) => (typeof mark === "number" ? roundMark(mark) : null)),
  };
}

function findRedrawn(
  { study: { slug }, drawings }: StudyResult,
  digests: ReadonlyMap<string, string>,
): readonly string[] {
  return (["original", "redesign"] as const).filter((name) => {
    const file = `studies/${slug}/${name}.svg`;
    return digests.get(file) !== describeFile(file, drawings[name]).sha256;
  });
}

/** The pages of the site that will be no more, but for those that only led on, and those of studies that stay as they are. */
async function findLost(
  folder: string,
  files: readonly string[],
  result: GalleryResult,
): Promise<Moved["gone"]> {
  const addresses = listPages(files).filter(isAddress);
  const leftOut = new Set(result.leftOut);
  const listed = new Set(addresses);
  const isLost = ({ address }: GoneAddress): boolean =>
    listed.has(address) && !leftOut.has(/^\/studies\/([^/]+)\//.exec(address)?.[1] ?? "");
  const lost = openSite(result, undefined)
    .findGone(new Set(listAddresses(result)), addresses)
    .filter(isLost);
  const real = await Promise.all(lost.map(async ({ address }) => isOwnPage(folder, address)));
  return lost.filter((_, index) => real[index]).map(({ address, to = null }) => ({ address, to }));
}

async function isOwnPage(folder: string, address: string): Promise<boolean> {
  const read = await readRegular(folder, `${address.slice(1)}index.html`, mostBytes);
  return "bytes" in read && !Buffer.from(read.bytes).toString("utf8").includes('<body class="missing">');
}
