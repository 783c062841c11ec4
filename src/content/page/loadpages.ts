// Floor 5. The folder pages/ of a content folder → the gallery's own pages, each under an address that nothing else has.
import { findNearest } from "../../problem/knownword.ts";
import { compareText, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { describeFolderFailure } from "../disk/filefailure.ts";
import { readFolder, readRegular } from "../disk/readfile.ts";
import { listNames } from "../folder/absent.ts";
import { isEditorFile } from "../folder/editorfile.ts";
import type { FolderDrawing } from "../folder/flagfiles.ts";
import { budget } from "../folder/gallerybudget.ts";
import { type Entry, leftovers, linkProblem, listDevice } from "../folder/listing.ts";
import { isDrawingName, proposeDrawingName } from "../study/original.ts";
import { findStudyLines } from "../study/prosecheck.ts";
import { isSlug, proposeSlug } from "../study/slug.ts";
import { describeTextFailure, textFileBytes } from "../text/textsource.ts";
import { findDrawings } from "./pagedrawing.ts";
import { orderPages, type Page, parentOf, parsePage } from "./pagefile.ts";

/** First steps of addresses that the site has for itself. */
export const ownSteps: readonly string[] = [
  ..."404 assets authors decisions flags list method pages rules".split(" "),
  ..."schemas series studies survey tags take-part".split(" "),
];

/** Words that the navigation has room for beside those of every gallery (our own judgement). */
const mostWords = 5;

/** Folders in folders: longer addresses are hard to pass on (our own judgement). */
const deepest = 3;

/** The pages of a gallery, and the drawings that they show. */
export interface LoadedPages {
  readonly value: readonly Page[];
  readonly drawings: readonly FolderDrawing[];
  readonly problems: readonly Problem[];
}

/**
 * Reads every `pages/**\/*.md` of the content folder `root`, shown as `shown`, in their order. `studies` are the names of all
 * folders in studies/, good or bad.
 *
 * Problems: those of `parsePage`, of files and folders as in a study; `page/file-name`, `page/address`, `page/too-many`;
 * warnings `page/study` of a study that nobody knows, and `page/menu`; those of `findDrawings`.
 */
export async function loadPages(
  root: string,
  shown: string,
  studies: readonly string[],
): Promise<LoadedPages> {
  const { paths, drawings: own, problems } = await listFiles(root, shown);
  const found: Page[] = [];
  for (const path of paths) {
    const file = `${shown}/${path}`;
    const read = await readRegular(root, path, textFileBytes);
    const { value, problems: wrong } =
      "bytes" in read
        ? parsePage(path.replace(/^pages\/|\.md$/g, ""), file, read.bytes)
        : { value: undefined, problems: [describeTextFailure(file, read)] };
    problems.push(...wrong);
    if (value === undefined) continue;
    problems.push(...findUnknown(value, studies));
    found.push(value);
  }
  const value = orderPages(found);
  const drawings = await findDrawings(root, shown, value, own);
  return { ...drawings, value, problems: [...problems, ...drawings.problems, ...findExcess(value)] };
}

/** The files that can be pages, and drawings beside them, as paths in the content folder, and what is wrong with the names of all others. */
async function listFiles(
  root: string,
  shown: string,
): Promise<{ paths: string[]; drawings: string[]; problems: Problem[] }> {
  const paths: string[] = [];
  const drawings: string[] = [];
  const problems: Problem[] = [];
  const folders = ["pages"];
  let count = 0;
  for (const inner of folders) {
    const folder = `${shown}/${inner}`;
    const entries = await readFolder(root, inner);
    if ("kind" in entries) {
      if (entries.kind === "link") problems.push(linkProblem(folder));
      else if (entries.kind !== "missing" || inner !== "pages")
        problems.push(describeFolderFailure(folder, entries));
      continue;
    }
    for (const entry of [...entries].sort((a, b) => compareText(a.name, b.name))) {
      if (leftovers.includes(entry.name) || isEditorFile(entry.name)) continue;
      count += 1;
      if (count > budget.files)
        return { paths, drawings, problems: [...problems, tooMany(`${shown}/pages`)] };
      const path = `${inner}/${entry.name}`;
      const wrong = checkName(`${shown}/${path}`, path, entry);
      problems.push(...wrong);
      const kind = entry.kind === "folder" ? folders : isDrawing(entry) ? drawings : paths;
      if (wrong.length === 0) kind.push(path);
    }
  }
  return { paths, drawings, problems };
}

function isDrawing({ name, kind }: Entry): boolean {
  return kind === "file" && /\.svg$/i.test(name);
}

function tooMany(folder: string): Problem {
  return report("page/too-many", folder, {
    reason: `There are more than ${budget.files} files and folders here; the first ${budget.files} are read, folder after folder.`,
    hint: "Move some of them elsewhere, or put several pages into one.",
  });
}

function checkName(file: string, path: string, entry: Entry): Problem[] {
  const { name, kind } = entry;
  if (kind === "link") return [linkProblem(file)];
  const device = listDevice("page/file-name", file, name);
  if (device.length > 0) return device;
  const steps = path.replace(/\.md$/, "").split("/").slice(1);
  const isFolder = kind === "folder";
  const isPage = !isFolder && !isDrawing(entry);
  if (isDrawing(entry) && !isDrawingName(name)) return [wrongDrawing(file, name)];
  if (isPage ? !name.endsWith(".md") || !isSlug(steps.at(-1) ?? "") : isFolder && !isSlug(name))
    return [wrongName(file, name, isFolder)];
  const deep = steps.length > deepest + (isFolder ? 0 : 1);
  if (deep)
    return [
      report("page/file-name", file, {
        reason: `This lies in more than ${deepest} folders below pages.`,
        hint: "Move it up: its address is the way to it.",
      }),
    ];
  if (isPage && steps.at(-1) === "index") return [indexName(file, steps)];
  if (steps.length === 1 && ownSteps.includes(name.replace(/\.md$/, ""))) return [taken(file, name)];
  return [];
}

function wrongName(file: string, name: string, isFolder: boolean): Problem {
  const slug = proposeSlug(isFolder ? name : name.replace(/\.[a-z0-9]{1,8}$/i, "")) ?? "how-to-take-part";
  const what = isFolder ? "a folder of pages" : "a page";
  return report("page/file-name", file, {
    reason: `${quoteText(name)} is no name of ${what}: small letters, digits and single hyphens${isFolder ? "" : ", with .md behind"}.`,
    hint: `Rename it to: ${slug}${isFolder ? "" : ".md"}`,
  });
}

function wrongDrawing(file: string, name: string): Problem {
  const reason = `${quoteText(name)} is no name of a drawing: small letters, digits and single hyphens, with .svg behind.`;
  return report("page/file-name", file, { reason, hint: `Rename it to: ${proposeDrawingName(name)}` });
}

function indexName(file: string, steps: readonly string[]): Problem {
  const folder = steps.slice(0, -1).join("/");
  return report("page/address", file, {
    reason: `The page at /${folder === "" ? "" : `${folder}/`} is ${folder === "" ? "the front page, which the program makes" : `written in pages/${folder}.md, beside its folder`}.`,
    hint: folder === "" ? "Rename it, for example: about.md" : `Move the text to: pages/${folder}.md`,
  });
}

function taken(file: string, name: string): Problem {
  const word = name.replace(/\.md$/, "");
  return report("page/address", file, {
    reason: `The address /${word}/ is taken: the program makes what is there.`,
    hint: `Rename it, for example: our-${name}`,
  });
}

function findUnknown(page: Page, studies: readonly string[]): Problem[] {
  return findStudyLines(page).flatMap(({ slug, at }) => {
    if (studies.includes(slug)) return [];
    const near = findNearest(slug, studies);
    const reason = `There is no study ${quoteText(slug)}.`;
    const hint = near === undefined ? `The studies are: ${listNames(studies)}` : `Type: ::study{${near}}`;
    return [report("page/study", at, { reason, hint }, "warning")];
  });
}

/** The pages that have a word and no room for it. */
function findExcess(pages: readonly Page[]): Problem[] {
  const worded = pages.filter(({ menu }) => menu !== undefined);
  const [first, ...rest] = worded.slice(mostWords);
  if (first === undefined) return [];
  const before = worded.slice(0, mostWords).map(({ file }) => file.split("/pages/").at(-1) ?? file);
  const others = rest.length === 0 ? "" : `, nor for ${rest.length} more`;
  const reason = `The navigation has room for ${mostWords} words of pages, and none is left for ${quoteText(first.menu ?? "")}${others}: before it stand ${listNames(before)}.`;
  const hint = "Delete menu: here, or give this page a smaller order: than one that may stand below it.";
  return [report("page/menu", first.file, { reason, hint }, "warning")];
}

/**
 * The words of the navigation and where they lead, in their order; last `Pages`, the list of those that neither a word nor
 * the page above leads to, if there are any.
 */
export function listMenu(
  pages: readonly Page[],
): readonly { readonly word: string; readonly path: string }[] {
  const words = pages
    .flatMap(({ menu, path }) => (menu === undefined ? [] : [{ word: menu, path }]))
    .slice(0, mostWords);
  return listUnled(pages, words).length === 0 ? words : [...words, { word: "Pages", path: "pages" }];
}

/** The pages that neither a word of `menu` nor the page above leads to. */
export function listUnled(
  pages: readonly Page[],
  menu: readonly { readonly path: string }[],
): readonly Page[] {
  const all = new Set(pages.map(({ path }) => path));
  const inMenu = new Set(menu.map(({ path }) => path));
  return pages.filter(({ path }) => !inMenu.has(path) && !all.has(parentOf(path) ?? ""));
}
