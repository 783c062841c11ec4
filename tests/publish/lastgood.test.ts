import { expect, test } from "vitest";
import { findLastGood } from "../../src/publish/lastgood.ts";

const note = "As it was.";
const page =
  '<html><body class="study"><main id="content" tabindex="-1"><p>a &gt; b</p></main></body></html>';
const leading = page.replace("study", "missing");
const site: Readonly<Record<string, string>> = {
  "index.html": page,
  "studies/a/index.html": page,
  "studies/a/edges/x/index.html": leading,
  "studies/a/study.json": "{}",
  "studies/ab/index.html": leading,
};
const standing = (files: Readonly<Record<string, string>>, broken = "") => ({
  paths: Object.keys(files),
  read: async (path: string) => (path === broken ? undefined : Buffer.from(files[path] ?? "")),
});
const text = async (made: { make(): Promise<string | Uint8Array> }) =>
  Buffer.from(await made.make()).toString();

test("a study that was published keeps its files, its own pages marked once however often they are kept", async () => {
  let files = site;
  for (const _ of [1, 2]) {
    const found = findLastGood(standing(files), ["a", "ab", "never"]);
    expect(found.map(({ slug, pages }) => [slug, pages])).toEqual([
      ["a", ["/studies/a/", "/studies/a/edges/x/"]],
    ]);
    const made = (await found[0]?.load(note, true)) ?? [];
    files = Object.fromEntries(
      await Promise.all(made.map(async (file) => [file.path, await text(file)] as const)),
    );
    expect(files).toEqual({
      "studies/a/index.html": page.replace("<p>a", `<aside class="kept">${note}</aside><p>a`),
      "studies/a/edges/x/index.html": leading,
      "studies/a/study.json": "{}",
    });
  }
});

test("the pages that are kept lose a logo that there is no more", async () => {
  const logo = '<img class="masthead-logo" src="../../assets/logo.svg" alt=""/>';
  const files = { ...site, "studies/a/index.html": page.replace("<main", `${logo}<main`) };
  const [found] = findLastGood(standing(files), ["a"]);
  const shown = async (hasLogo: boolean) =>
    text((await found?.load(note, hasLogo))?.[0] ?? { make: async () => "" });
  expect(await shown(true)).toContain(logo);
  expect(await shown(false)).not.toContain("<img");
});

test("nothing is kept of a study of which one file is not as it was published", async () => {
  expect(await findLastGood(standing(site, "studies/a/study.json"), ["a"])[0]?.load(note, true)).toEqual([]);
});
