import { expect, test } from "vitest";
import { formatSitemaps, sitemapLimit } from "../../../src/publish/feeds/sitemap.ts";
import { checkSitemap } from "../standards.ts";

const home = "https://flags.example/sound";
const own = `${home}/sitemap.xml`;
const address = (path: string) => `${home}${path}`;

test("one file of every page, escaped, with the date of a study", () => {
  const pages = [
    { url: `${home}/` },
    { url: `${home}/studies/a/`, date: "2026-04-02" },
    { url: `${home}/?a=1&b='2'` },
  ];
  const [file, ...others] = formatSitemaps(pages, address);
  expect(others).toEqual([]);
  expect(file?.file).toBe("sitemap.xml");
  expect(checkSitemap(file?.text ?? "", own)).toEqual({ urls: pages.map(({ url }) => url), faults: [] });
  expect(file?.text).toContain("<lastmod>2026-04-02</lastmod>");
});

test("without a page there is a sitemap all the same", () => {
  const [file] = formatSitemaps([], address);
  expect(checkSitemap(file?.text ?? "", own)).toEqual({ urls: [], faults: [] });
});

// Source of both limits: sitemaps.org, protocol 0.9, “Sitemap index files”.
test("50,000 addresses are one file; one more makes an index of two", () => {
  const list = (count: number) => Array.from({ length: count }, (_, index) => ({ url: `${home}/${index}/` }));
  expect(formatSitemaps(list(50_000), address)).toHaveLength(1);
  const files = formatSitemaps(list(50_001), address);
  expect(files.map(({ file }) => file)).toEqual(["sitemap.xml", "sitemap-1.xml", "sitemap-2.xml"]);
  expect(files.map(({ text }) => text.match(/<url>/g)?.length)).toEqual([undefined, 50_000, 1]);
  expect(checkSitemap(files[0]?.text ?? "", own)).toEqual({
    urls: [`${home}/sitemap-1.xml`, `${home}/sitemap-2.xml`],
    faults: [],
  });
});

test("no file is over 50 MB, however long the addresses", () => {
  const long = "x".repeat(1900);
  const pages = Array.from({ length: 40_000 }, (_, index) => ({ url: `${home}/${index}${long}/` }));
  const [index, ...parts] = formatSitemaps(pages, address);
  expect(index?.text).toContain("<sitemapindex");
  expect(parts.length).toBeGreaterThan(1);
  for (const { text } of parts) expect(Buffer.byteLength(text)).toBeLessThanOrEqual(50 * 1024 * 1024);
  expect(parts.map(({ text }) => text.match(/<url>/g)?.length ?? 0).reduce((a, b) => a + b)).toBe(40_000);
  expect(sitemapLimit).toEqual({ urls: 50_000, bytes: 50 * 1024 * 1024 });
});

test.each([
  ["an address of another host", "https://flags.example/sound/studies", "https://other.example/studies"],
  ["an address above the sitemap", "https://flags.example/sound/studies", "https://flags.example/studies"],
  ["a day that is none", "2026-04-02", "2026-13-02"],
  ["another root", /urlset/g, "urls"],
])("the check sees %s", (_what, right, wrong) => {
  const [file] = formatSitemaps([{ url: `${home}/studies/a/`, date: "2026-04-02" }], address);
  expect(checkSitemap((file?.text ?? "").replace(right, wrong), own).faults).not.toEqual([]);
});
