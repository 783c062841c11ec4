import { expect, test } from "vitest";
import type { Study } from "../../../src/content/study/study.ts";
import { formatContent } from "../../../src/publish/feeds/feedcontent.ts";
import { presentSite } from "../../../src/views/siteview.ts";
import { createFormat } from "../../../src/words/format.ts";
import { readHtml } from "../dom.ts";
import { galleryResult, studyResult } from "../sample.ts";
import { checkHtml } from "../standards.ts";

function contentOf(changed: Partial<Study>): string {
  const study = { ...studyResult, study: { ...studyResult.study, ...changed } };
  const [entry] = presentSite({ ...galleryResult, studies: [study] }, undefined).studies;
  if (entry === undefined) throw new Error("one study");
  const address = (path: string) => `https://flags.example/sound${path}`;
  return formatContent(entry, { format: createFormat("en"), address });
}

test("says what the page says: change, verdict, decision, prose, meaning, and that it is unofficial", () => {
  const html = contentOf({});
  expect(checkHtml(html)).toEqual([]);
  const { body } = readHtml(html);
  const text = body.textContent ?? "";
  for (const said of [
    "Red becomes yellow.",
    "Clearer. Clarity rises from 74% to 100%; no edge becomes harder to see.",
    "Adopted, because it can be seen.",
    "First words.",
    "Straw for the harvest.",
    "unofficial study",
  ])
    expect(text).toContain(said);
  const picture = body.querySelector("img");
  expect(picture?.getAttribute("src")).toBe("https://flags.example/sound/studies/a-square/link.png");
  expect([picture?.getAttribute("width"), picture?.getAttribute("height")]).toEqual(["1200", "630"]);
});

test("links of the prose are written in full, from where the page is", () => {
  const body =
    "[up](../b/?x=1&y=2#z) [here](#edges) [root](/sound/) [out](https://a.example/?q=%22) [mail](mailto:a@b.example)";
  const links = [...readHtml(contentOf({ body })).querySelectorAll("a")].map((a) => a.getAttribute("href"));
  expect(links).toEqual([
    "https://flags.example/sound/studies/b/?x=1&y=2#z",
    "https://flags.example/sound/studies/a-square/#edges",
    "https://a.example/?q=%22",
    "mailto:a@b.example",
  ]);
});

test("a figure of the prose becomes its numbers; markup in prose stays text", () => {
  const html = contentOf({ body: '::figure{edge="dark blue / red"}\n\n<script>alert(1)</script>\n' });
  const { body } = readHtml(html);
  expect(body.textContent).toContain(
    "Dark blue / red: contrast 25% (weak) before, 67% (strong) after; gained.",
  );
  expect(body.querySelector("script")).toBeNull();
  expect(body.textContent).toContain("<script>alert(1)</script>");
});
