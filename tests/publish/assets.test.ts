import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { listAssets, listAssetsFor, readLettering } from "../../src/publish/assets.ts";
import { fileOf } from "../../src/publish/folder/sitefile.ts";
import { faces } from "../../src/views/fontface.ts";
import { readLetters, unpackWoff2 } from "./glyph.ts";
import { makeAll, writeAll } from "./making.ts";

const templates = path.resolve(import.meta.dirname, "../../templates");
let out: string;
let css: string;
beforeAll(async () => {
  out = await mkdtemp(path.join(tmpdir(), "counterchange-assets-"));
  await writeAll(listAssets(templates), out);
  css = await readFile(path.join(out, "assets", "site.css"), "utf8");
});
afterAll(() => rm(out, { recursive: true }));

test("the style sheet names exactly the fonts that are shipped", async () => {
  // A file may be named twice: for the letters of a script, and for one of them that other scripts use too.
  const named = [...new Set([...css.matchAll(/url\("fonts\/([^"]+)"\)/g)].map((match) => match[1]))].sort();
  const shipped = (await readdir(path.join(out, "assets", "fonts")))
    .filter((file) => file.endsWith(".woff2"))
    .sort();
  expect(named).toEqual(shipped);
  expect(shipped).toEqual(faces.map(({ file }) => file).sort());
});

describe("for the pages of a site", () => {
  const make = async (html: string) =>
    makeAll(
      listAssetsFor(
        templates,
        await readLettering(templates, [fileOf("index.html", () => `<html lang="en">${html}</html>`)]),
      ),
    );
  const listFonts = (made: ReadonlyMap<string, Buffer>) =>
    [...made.keys()].flatMap((file) => /fonts\/(.*woff2)$/.exec(file)?.[1] ?? []);

  test("the fonts that they need are there and named, and no others", async () => {
    const made = await make('<p>Łódź <em>sails</em></p><div class="prose-run"><b>anchor</b></div>');
    const fonts = listFonts(made);
    expect(fonts.toSorted()).toEqual([
      "source-sans-3-latin-400-italic.woff2",
      "source-sans-3-latin-400-normal.woff2",
      "source-sans-3-latin-ext-400-normal.woff2",
      "source-serif-4-latin-400-italic.woff2",
      "source-serif-4-latin-400-normal.woff2",
      "source-serif-4-latin-600-normal.woff2",
      "source-serif-4-latin-ext-400-normal.woff2",
    ]);
    const named = [...String(made.get("assets/site.css")).matchAll(/url\("fonts\/([^"]+)"\)/g)];
    expect(new Set(named.map(([, file]) => file))).toEqual(new Set(fonts));
  });

  test("all that a reader can type on any keyboard for English is in the upright ones", async () => {
    const made = await make("<p>a</p>");
    expect(listFonts(made).length).toBe(2);
    for (const file of listFonts(made)) {
      const has = readLetters(await unpackWoff2(made.get(`assets/fonts/${file}`) ?? Buffer.alloc(0)));
      for (let code = 0x20; code < 0x7f; code += 1) expect(has.has(code), `${file} ${code}`).toBe(true);
      expect(has.has(0xdf)).toBe(false);
    }
  });

  test("the style sheet says the same beside its fonts", async () => {
    const plain = (sheet: string) => sheet.replace(/@font-face \{[^}]*\}\n/g, "");
    expect(plain(String((await make("<p>a</p>")).get("assets/site.css")))).toBe(plain(css));
  });
});

test("the licence of both families ships with them", async () => {
  const licence = await readFile(path.join(out, "assets", "fonts", "OFL.txt"), "utf8");
  for (const { family } of faces) expect(licence).toContain(family);
  expect(licence.match(/subsets of the originals/g)?.length).toBe(2);
  expect(licence.match(/SIL OPEN FONT LICENSE Version 1.1/g)?.length).toBe(2);
});

test("the page has no hue: every colour of the style sheet is a grey", () => {
  const hexes = [...css.matchAll(/#([0-9a-f]{3,8})\b/gi)].map((match) => match[1] ?? "");
  expect(hexes.length).toBeGreaterThan(10);
  for (const hex of hexes) {
    const digits = hex.length < 6 ? [...hex].map((digit) => digit + digit).join("") : hex;
    const [r, g, b] = [digits.slice(0, 2), digits.slice(2, 4), digits.slice(4, 6)];
    expect([g, b], `#${hex}`).toEqual([r, r]);
  }
  for (const [text, r, g, b] of css.matchAll(/rgb\((\d+) (\d+) (\d+)/g)) expect([g, b], text).toEqual([r, r]);
  expect(css).not.toMatch(/\b(?:hsl|hwb|lab|lch|oklab|oklch|color|color-mix)\(/);
  // Named colours other than greys; `transparent` and `currentcolor` take no hue of their own.
  expect(css).not.toMatch(
    /:[^;{]*\b(?:red|green|blue|yellow|orange|purple|navy|maroon|teal|Highlight|LinkText)\b/,
  );
});

test("nothing in the style sheet depends on the direction of the text", () => {
  const physical =
    /(?:^|[\s{;])(?:(?:(?:margin|padding|border)-)?(?:left|right)\s*:|float\s*:(?!\s*inline-)|text-align\s*:(?!\s*(?:start|end|center|(?:-webkit-)?match-parent)))/gm;
  expect(css.match(physical)).toBeNull();
});

test("nothing is fetched from another host", () => {
  expect(css).not.toMatch(/@import|https?:|url\(\s*["']?\/\//);
});

test("a theme stands behind the first sheet, before what paper says; without one nothing does", async () => {
  const styles = async (theme?: Parameters<typeof listAssets>[1]) =>
    String(
      (
        await makeAll(listAssets(templates, theme).filter(({ path: file }) => file === "assets/site.css"))
      ).get("assets/site.css"),
    );
  const themed = await styles({ mat: 55, density: "close" });
  const rule = /:root\{--space-4:0\.75rem;[^}]*--mat:lab\(55% 0 0\)\}/.exec(themed);
  expect(rule?.index).toBeGreaterThan(themed.indexOf("--mat:#777"));
  expect(rule?.index).toBeLessThan(themed.indexOf("@media print"));
  expect(themed.replace(rule?.[0] ?? "", "")).toBe(await styles());
  expect(await styles({})).toBe(css);
});
