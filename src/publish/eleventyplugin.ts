// Floor 9. The gallery inside another Eleventy site: published as ever into a folder that Eleventy does not look at; then each
// page is a template without a file, and what lies beside the pages is laid beside what the site writes.
import { copyFile, mkdir } from "node:fs/promises";
import path from "node:path";
import type { UserConfig } from "@11ty/eleventy";
import type { GalleryResult } from "../analysis/result.ts";
import { openStore } from "../analysis/store/resultstore.ts";
import { findHome } from "../analysis/store/signature.ts";
import type { SurveyEntry } from "../analysis/survey/surveyentry.ts";
import { resolveLinksNow } from "../content/disk/pathkind.ts";
import { withSlashes } from "../content/disk/pathname.ts";
import { formatJson } from "../measure/roundnumber.ts";
import { hasError } from "../problem/problem.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { quoteText } from "../problem/quote.ts";
import { nameEntry, placeDrawing, placeEntry } from "../views/survey/flagname.ts";
import { type Format, formatOf, plainFormat } from "../words/format.ts";
import { buildSite } from "./buildsite.ts";
import { type FlagRecord, writeFlagFigure } from "./flagfigure.ts";
import { keepAddresses } from "./keepaddresses.ts";
import { listPublishedPages, type PublishedPage } from "./publishedpage.ts";

/** How a gallery stands in the site around it. */
export interface GalleryPlace {
  /** The content folder, from the working folder. Eleventy never reads what lies in it. */
  readonly content: string;
  /** The path of the gallery in the site; `/flags/`. It begins and ends with a slash. */
  readonly at?: string;
  /** A layout of the site: it gets the page as `content`, and prints `counterchangePage.head` in its head. Else pages are whole. */
  readonly layout?: string;
  /** Publishes drafts as well. */
  readonly drafts?: boolean;
}

/** A flag as `survey.json` has it, with what it is called, and where its drawing and its page are in the site. */
type SurveyedFlag = SurveyEntry["flag"] & {
  readonly name: string;
  readonly drawing: string;
  readonly page: string;
};

/** What a template of the site finds under `counterchange`. */
interface GalleryData {
  /** As `studies.json` has them. */
  readonly studies: readonly FlagRecord[];
  readonly series: readonly unknown[];
  readonly survey: readonly SurveyedFlag[];
  readonly files: ReadonlySet<string>;
  readonly format: Format;
  /** Those that stand in the layout, and those that are whole. */
  readonly pages: { readonly main: readonly PublishedPage[]; readonly whole: readonly PublishedPage[] };
  readonly hasErrors: boolean;
  /** Studies that are there and are not shown: drafts, and those with an error. */
  readonly hidden: ReadonlySet<string>;
}

/** Where measurements are kept, and where the gallery is published before the site around it is written. */
const kept = path.join(".cache", "counterchange");
const published = path.join(".cache", "counterchange-gallery");

/**
 * Puts a gallery into an Eleventy 3 site: its pages under `at`, the data `counterchange`, and pictures of a study by the
 * shortcode `flag` and the line `::flag{slug}` in Markdown.
 *
 * Throws where `at` is no path, and where the content folder or `.cache` cannot be used. Problems of studies are told on
 * standard error; one with errors is left out, and a build ends with status 1.
 */
export default function counterchange(config: UserConfig, place: GalleryPlace): void {
  const { at = "/flags/", content } = place;
  if (!/^\/(?:(?!\.{1,2}\/)[\w.~-]+\/)*$/.test(at))
    throw new Error(`at is “${at}”: a path begins and ends with a slash.`);
  const base = path.posix.join(config.pathPrefix ?? "/", at);
  let data: GalleryData | undefined;
  const draw = (from: string, slug: string, what?: string, edge?: string) => {
    if (data?.hidden.has(slug)) {
      // What a contributor does must not stop the site.
      process.stderr.write(`flag: the study ${quoteText(slug)} is not shown, and its figure is left out.\n`);
      return "";
    }
    const found = data ?? { studies: [], files: new Set(), format: plainFormat };
    return writeFlagFigure(found, { from, at, slug, what, edge });
  };
  // Eleventy meets the files where they are, however the folder was named.
  for (const way of [content, resolveLinksNow(content)]) config.ignores.add(writePattern(way));
  config.ignores.add(".cache/**");
  config.addWatchTarget(content);
  config.on("eleventy.before", async ({ runMode }) => {
    data = await publish(place, at, base, runMode === "build");
    if (data.hasErrors && runMode === "build") process.exitCode = 1;
  });
  config.addGlobalData("counterchange", () => data);
  addPages(config, "main", at, place.layout);
  addPages(config, "whole", at);
  config.addShortcode("flag", function (slug, what, edge) {
    return draw(this.page.url, slug ?? "", what, edge);
  });
  config.amendLibrary("md", (markdown) => {
    markdown.block.ruler.before("paragraph", "flag", (state, start, _end, isSilent) => {
      const line = state.getLines(start, start + 1, 0, false).trim();
      const [, slug, what, edge] = /^::flag\{([\w-]+)(?: ([a-z]+))?(?: ([\w-]+))?\}$/.exec(line) ?? [];
      if (slug === undefined) return false;
      if (!isSilent)
        state.push("html_block", "", 0).content = `${draw(state.env.page.url, slug, what, edge)}\n`;
      state.line = start + 1;
      return true;
    });
  });
  config.on("eleventy.after", ({ directories }) => layBeside(path.join(directories.output, at), data?.files));
}

/** All that lies in the content folder, as Eleventy matches it: from the working folder, any sign for what is one of patterns. */
function writePattern(content: string): string {
  const way = withSlashes(path.relative("", content));
  return path.posix.join(way.replace(/[^\w./-]/g, "?"), "**");
}

/** Publishes the gallery and reads what came of it; a build adds to the list of addresses. */
async function publish(
  { content, layout, drafts }: GalleryPlace,
  at: string,
  base: string,
  isBuild: boolean,
): Promise<GalleryData> {
  const store = await openStore({ folder: kept, secretFile: path.join(findHome(), "key") });
  try {
    const { result, addresses } = await buildSite(content, published, {
      base,
      store,
      keepOut: [content],
      ...(drafts === undefined ? {} : { drafts }),
    });
    const unkept = isBuild && drafts !== true ? await keepAddresses(content, addresses) : undefined;
    const problems = unkept === undefined ? result.problems : [...result.problems, unkept];
    if (problems.length > 0) process.stderr.write(`${formatProblems(problems)}\n`);
    return {
      ...(await listPublishedPages(published, layout !== undefined)),
      survey: listSurveyed(result, at),
      format: formatOf(result.gallery),
      hasErrors: hasError(problems),
      hidden: listHidden(result),
    };
  } finally {
    await store?.close();
  }
}

function listHidden({ folders = [], studies }: GalleryResult): ReadonlySet<string> {
  const shown = new Set(studies.map(({ study }) => study.slug));
  return new Set(folders.filter((slug) => !shown.has(slug)));
}

/** With the digits of `survey.json`. */
function listSurveyed({ survey, studies }: GalleryResult, at: string): readonly SurveyedFlag[] {
  const flags = survey?.entries.map((entry) => ({
    ...entry.flag,
    name: nameEntry(entry, studies),
    drawing: at + placeDrawing(entry).slice(1),
    page: at + placeEntry(entry).slice(1),
  }));
  return JSON.parse(formatJson(flags ?? []));
}

/** Lays the files that are no pages where the site is written. */
async function layBeside(output: string, files: ReadonlySet<string> = new Set()): Promise<void> {
  for (const file of files) {
    if (file.endsWith(".html")) continue;
    const target = path.join(output, file);
    await mkdir(path.dirname(target), { recursive: true });
    await copyFile(path.join(published, file), target);
  }
}

/** One template for all pages of a kind, without a file. */
function addPages(config: UserConfig, kind: keyof GalleryData["pages"], at: string, layout?: string): void {
  const take = ({ counterchangePage }: Paged): PublishedPage => counterchangePage;
  config.addTemplate(`counterchange-${kind}.11ty.js`, (data: Paged) => take(data)[kind], {
    pagination: {
      data: `counterchange.pages.${kind}`,
      size: 1,
      alias: "counterchangePage",
      addAllPagesToCollections: true,
    },
    tags: ["counterchange"],
    permalink: (data: Paged) => at + take(data).file,
    eleventyComputed: { title: (data: Paged) => take(data).title },
    ...(layout === undefined ? {} : { layout }),
  });
}

interface Paged {
  readonly counterchangePage: PublishedPage;
}
