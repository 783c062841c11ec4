// Floor 9. All addresses, for search: one sitemap, or an index of several where one would be over the protocol's limits.
import { escapeMarkup } from "./markup.ts";

/** A page. `date`: the day its study was put forward, as W3C date; other pages say nothing of time. */
export interface MappedPage {
  /** Absolute. */
  readonly url: string;
  readonly date?: string;
}

/** One file at the top of the site. */
export interface SitemapFile {
  readonly file: string;
  readonly text: string;
}

/** What one sitemap may hold. Source: sitemaps.org, protocol 0.9: 50,000 addresses, 50 MB (52,428,800 bytes). */
export const sitemapLimit = { urls: 50_000, bytes: 52_428_800 } as const;

const namespace = 'xmlns="http://www.sitemaps.org/schemas/sitemap/0.9"';
const head = '<?xml version="1.0" encoding="utf-8"?>\n';

/**
 * Returns `sitemap.xml` alone, or `sitemap.xml` as an index of `sitemap-1.xml` and so on. `address` gives the absolute
 * address of a site path.
 *
 * Source: sitemaps.org, protocol 0.9.
 */
export function formatSitemaps(
  pages: readonly MappedPage[],
  address: (path: string) => string,
): readonly SitemapFile[] {
  const parts = splitUrls(pages.map(formatUrl)).map(
    (urls) => `${head}<urlset ${namespace}>\n${urls.join("")}</urlset>\n`,
  );
  const [only, second] = parts;
  if (only !== undefined && second === undefined) return [{ file: "sitemap.xml", text: only }];
  const files = parts.map((text, index) => ({ file: `sitemap-${index + 1}.xml`, text }));
  const entries = files.map(
    ({ file }) => `<sitemap><loc>${escapeMarkup(address(`/${file}`))}</loc></sitemap>\n`,
  );
  const index = `${head}<sitemapindex ${namespace}>\n${entries.join("")}</sitemapindex>\n`;
  return [{ file: "sitemap.xml", text: index }, ...files];
}

function formatUrl({ url, date }: MappedPage): string {
  const lastmod = date === undefined ? "" : `<lastmod>${date}</lastmod>`;
  return `<url><loc>${escapeMarkup(url)}</loc>${lastmod}</url>\n`;
}

/** At least one part, each within both limits. */
function splitUrls(urls: readonly string[]): readonly (readonly string[])[] {
  const frame = 200;
  let part: string[] = [];
  const parts = [part];
  let bytes = frame;
  for (const url of urls) {
    const own = Buffer.byteLength(url);
    if (part.length === sitemapLimit.urls || bytes + own > sitemapLimit.bytes) {
      part = [];
      parts.push(part);
      bytes = frame;
    }
    part.push(url);
    bytes += own;
  }
  return parts;
}
