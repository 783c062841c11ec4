// Floor 9. A published gallery → its pages, whole and as they stand in a layout of somebody else's.
import { readRegular } from "../content/disk/readfile.ts";
import type { FlagRecord } from "./flagfigure.ts";
import { readDigests } from "./folder/manifest.ts";

/** A page of a gallery. */
export interface PublishedPage {
  /** `studies/kedgeport/index.html`. */
  readonly file: string;
  readonly title: string;
  /** Styles, in a layer that any style of the site comes before, and scripts: for the head of the layout. */
  readonly head: string;
  /** What stands between masthead and foot. */
  readonly main: string;
  readonly whole: string;
}

/** Larger files are not read, in bytes. */
const mostBytes = 64 * 1024 * 1024;

/** Reads the pages of a gallery that was published to `folder`, and its list of studies. Throws where one cannot be read. */
export async function listPublishedPages(folder: string, isLaid: boolean) {
  const digests = await readDigests(folder);
  const files = [...(digests ?? new Map()).keys()].filter((file: string) => file.endsWith(".html"));
  const pages = await Promise.all(files.map(async (file) => splitPage(file, await readText(folder, file))));
  const isWhole = (page: PublishedPage) => !isLaid || page.main === "";
  const { studies, series }: { studies: readonly FlagRecord[]; series: readonly unknown[] } = JSON.parse(
    await readText(folder, "studies.json"),
  );
  return {
    studies,
    series,
    files: new Set(digests?.keys()),
    pages: { main: pages.filter((page) => !isWhole(page)), whole: pages.filter(isWhole) },
  };
}

async function readText(folder: string, file: string): Promise<string> {
  const read = await readRegular(folder, file, mostBytes);
  if (!("bytes" in read)) throw new Error(`${folder}/${file} cannot be read: ${read.kind}`);
  return Buffer.from(read.bytes).toString();
}

/** A show fills the screen, and a page that leads on is nothing to look at: they have no `main`. */
function splitPage(file: string, whole: string): PublishedPage {
  const title = between(whole, "<title>", "</title>");
  const body = between(whole, '<body class="', '"');
  const isLaid = body !== "" && body !== "show" && !whole.includes('http-equiv="refresh"');
  if (!isLaid) return { file, title, head: "", main: "", whole };
  const tags = between(whole, "", "</head>").split(/(?=<)/);
  const styles = tags.flatMap((tag) =>
    tag.startsWith('<link rel="stylesheet"')
      ? `@import url("${between(tag, 'href="', '"')}") layer(counterchange);`
      : [],
  );
  const scripts = tags.filter((tag) => tag.startsWith("<script src=")).map((tag) => `${tag}</script>`);
  const main = between(whole, '<main id="content" tabindex="-1">', "</main>");
  return {
    file,
    title,
    head: [`<style>${styles.join("")}</style>`, ...scripts].join("\n"),
    main: `<div class="${body}">${main}</div>`,
    whole,
  };
}

function between(text: string, from: string, to: string): string {
  const start = text.indexOf(from);
  const end = text.indexOf(to, start + from.length);
  return start < 0 || end < 0 ? "" : text.slice(start + from.length, end);
}
