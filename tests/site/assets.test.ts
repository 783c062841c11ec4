import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { fontFiles, listAssets } from "../../src/site/assets.ts";
import { writeAll } from "./making.ts";

let out: string;
let css: string;
beforeAll(async () => {
  out = await mkdtemp(path.join(tmpdir(), "counterchange-assets-"));
  await writeAll(listAssets(path.resolve(import.meta.dirname, "../../templates")), out);
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
  expect(shipped).toEqual(fontFiles.map(({ file }) => file).sort());
});

test("the licence of both families ships with them", async () => {
  const licence = await readFile(path.join(out, "assets", "fonts", "OFL.txt"), "utf8");
  for (const { family } of fontFiles) expect(licence).toContain(family);
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
    /(?:^|[\s{;])(?:(?:(?:margin|padding|border)-)?(?:left|right)\s*:|float\s*:|text-align\s*:(?!\s*(?:start|end|center|(?:-webkit-)?match-parent)))/gm;
  expect(css.match(physical)).toBeNull();
});

test("nothing is fetched from another host", () => {
  expect(css).not.toMatch(/@import|https?:|url\(\s*["']?\/\//);
});
