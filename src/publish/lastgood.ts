// Floor 9. Studies that cannot be built now: the pages and files that they had when they last could, from the site that stands.
import { fileOf, type SiteFile } from "./folder/sitefile.ts";
import { listPages, type StandingSite } from "./folder/standingsite.ts";

/** What a study had. `pages` are addresses. */
export interface LastGood {
  readonly slug: string;
  readonly pages: readonly string[];
  /** Returns all its files, the pages marked with `note` and, unless there still is one, without a logo; none where one of them is not as it was published. */
  load(note: string, hasLogo: boolean): Promise<readonly SiteFile[]>;
}

/** Finds the studies of `slugs` that have pages of their own in the site that stands. */
export function findLastGood(standing: StandingSite, slugs: readonly string[]): readonly LastGood[] {
  const wanted = new Map<string, string[]>(slugs.map((slug) => [slug, []]));
  for (const path of standing.paths) wanted.get(/^studies\/([^/]+)\//.exec(path)?.[1] ?? "")?.push(path);
  return [...wanted].flatMap(([slug, paths]) => {
    // Its data: a page alone may be one that leads on.
    if (!paths.includes(`studies/${slug}/study.json`)) return [];
    return [{ slug, pages: listPages(paths), load: (...how) => load(standing, paths, ...how) }];
  });
}

async function load(
  standing: StandingSite,
  paths: readonly string[],
  note: string,
  hasLogo: boolean,
): Promise<readonly SiteFile[]> {
  const files: SiteFile[] = [];
  for (const path of paths) {
    const bytes = await standing.read(path);
    if (bytes === undefined) return [];
    const kept = path.endsWith(".html")
      ? markPage(Buffer.from(bytes).toString("utf8"), note, hasLogo)
      : bytes;
    files.push(fileOf(path, () => kept));
  }
  return files;
}

const opening = '<aside class="kept">';

/** What an author wrote has no tags on a page: only the template opens this one. A page that leads on says what it says. */
function markPage(page: string, note: string, hasLogo: boolean): string {
  const html = hasLogo ? page : page.replace(/<img class="masthead-logo"[^<>]*>/, "");
  if (html.includes(opening) || html.includes('<body class="missing">')) return html;
  const end = html.indexOf(">", html.indexOf('<main id="content"')) + 1;
  return `${html.slice(0, end)}${opening}${note}</aside>${html.slice(end)}`;
}
