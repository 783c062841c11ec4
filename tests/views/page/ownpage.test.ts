import { expect, test } from "vitest";
import type { GalleryResult } from "../../../src/analysis/result.ts";
import { listMenu } from "../../../src/content/page/loadpages.ts";
import { presentPages } from "../../../src/views/page/ownpage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { galleryResult, study, studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

const page = (path: string, body = "", menu?: string) => ({
  ...{ path, title: `On ${path}`, file: "", body, bodyLine: 1 },
  ...(menu === undefined ? {} : { menu }),
});
const pages = [
  page("guide", `# A head\n\nRead this. Then that.\n\n::study{${study.slug}}\n\n::study{nobody}\n`, "Guide"),
  page("guide/first", "<b>No</b> [all](../../survey/)"),
  page("guide/second"),
  page("alone", "Nobody leads here."),
];
const gallery = { ...galleryResult.gallery, menu: listMenu(pages) };
const result: GalleryResult = { ...galleryResult, studies: [studyResult], gallery, pages };
const shown = presentPages(result, createFormat("en"));
const find = (folder: string) => shown.find((one) => one.folder === folder);

test("text with headings below the title, and the studies that there are", () => {
  const [text, card, ...rest] = find("guide")?.blocks ?? [];
  expect(text).toMatchObject({ html: '<h2 id="at-a-head">A head</h2>\n<p>Read this. Then that.</p>' });
  expect(card).toMatchObject({ kind: "figure", figure: { card: { address: `../studies/${study.slug}/` } } });
  expect(rest).toEqual([]);
  expect(find("guide/first")?.blocks).toEqual([
    { kind: "html", html: '<p>&lt;b&gt;No&lt;/b&gt; <a href="../../survey/">all</a></p>' },
  ]);
});

test("drawings as their author calls them, else as their file is; a flag of the survey leads there", () => {
  const { before: measure } = studyResult.comparison;
  const shownOn = (path: string) => {
    const lines = ["/flags/harbour-pilots.svg", "old-quay.svg", "gone.svg"];
    const body = lines.map((name) => `::figure{drawing="${name}"}\n\n`).join("");
    const captioned = body.replace('quay.svg"', 'quay.svg" caption="The <quay>"');
    const paths = ["flags/harbour-pilots.svg", "pages/guide/old-quay.svg"];
    const drawings = new Map(paths.map((one) => [one, { drawing: "<svg/>", measure }]));
    const made = presentPages(
      { ...result, survey, drawings, pages: [page(path, captioned), page("other/a", body)] },
      createFormat("en"),
    );
    return made[0]?.blocks.map((block) => block.kind === "figure" && block.figure);
  };
  expect(shownOn("guide/first")).toMatchObject([
    {
      kind: "drawing",
      plate: { label: "Harbour pilots", src: "../../assets/drawings/flags/harbour-pilots.svg" },
      page: "../../survey/#flag-flags-harbour-pilots",
    },
    {
      plate: { label: "The <quay>", src: "../../assets/drawings/pages/guide/old-quay.svg" },
      page: undefined,
    },
  ]);
  expect(shownOn("guide")).toHaveLength(1);
});

test("a page leads to those below it, and each of them up, back and on", () => {
  const first = { title: "On guide/first", address: "first/", summary: "<b>No</b> all" };
  const second = { title: "On guide/second", address: "second/", summary: "On guide/second" };
  expect(find("guide")?.below).toEqual([{ group: undefined, ways: [first, second] }]);
  const grouped = pages.map((page) => (page.path === "guide/second" ? { ...page, group: "Later" } : page));
  const [guide] = presentPages({ ...result, pages: grouped }, createFormat("en"));
  expect(guide?.below).toEqual([
    { group: undefined, ways: [first] },
    { group: "Later", ways: [second] },
  ]);
  expect(find("guide/second")).toMatchObject({
    above: [{ title: "On guide", address: "../" }],
    beside: [
      {
        group: undefined,
        ways: [
          { address: "../first/", isHere: false },
          { address: "./", isHere: true },
        ],
      },
    ],
    next: undefined,
  });
  expect(find("guide")).toMatchObject({ above: [], beside: [], next: undefined });
});

test("every page has the navigation, which marks where it is, and a list of what nothing leads to", () => {
  expect(find("guide/first")?.frame.menu).toEqual([
    { word: "Guide", address: "../", isHere: true },
    { word: "Pages", address: "../../pages/", isHere: false },
  ]);
  expect(find("pages")?.below.flatMap(({ ways }) => ways.map(({ address }) => address))).toEqual([
    "../alone/",
  ]);
  expect(presentPages({ ...result, pages: [] }, createFormat("en"))).toHaveLength(1);
});

test("beside a page its neighbours stand as the page above groups them, and its own sections have anchors", () => {
  const body = "One.\n\n## Über\n\n### Under\n\n## Same\n\n## Same\n";
  const grouped = pages.map((one) => (one.path === "guide/second" ? { ...one, group: "Later", body } : one));
  const second = presentPages({ ...result, pages: grouped }, createFormat("en"))[2];
  expect(second?.beside.map(({ group, ways }) => [group, ways.map(({ title }) => title)])).toEqual([
    [undefined, ["On guide/first"]],
    ["Later", ["On guide/second"]],
  ]);
  const [first, ...same] = second?.sections ?? [];
  expect(first).toMatchObject({ title: "Über" });
  expect(same).toEqual([
    { title: "Same", address: "#at-same" },
    { title: "Same", address: "#at-same.2" },
  ]);
  const html = second?.blocks.map((block) => (block.kind === "html" ? block.html : "")).join("") ?? "";
  expect(html.match(/ id="[^"]*"/g)).toEqual(
    second?.sections.map(({ address }) => ` id="${address.slice(1)}"`),
  );
});
