import { expect, test } from "vitest";
import { loadSeries } from "../../../src/content/series/loadseries.ts";
import { rightDrawing, rightSeries } from "../mistakes.ts";
import { inFolder } from "../rules/making.ts";

const load = (files: Readonly<Record<string, string>>) =>
  inFolder(files, async (root) => {
    const { value, problems } = await loadSeries(root, "content", ["ferry", "wheel"]);
    return [value?.map(({ slug }) => slug), problems.map(({ rule, file }) => [rule, file])];
  });

test("no folder, no series", async () => {
  expect(await load({ "gallery.yaml": "" })).toEqual([[], []]);
});

test("every good series, by slug; a bad one costs no other", async () => {
  const files = {
    "series/b.md": rightSeries,
    "series/a.md": rightSeries,
    "series/c.md": rightSeries.replace("[ferry]", "[fery]"),
    "series/d.md": rightSeries.replace("[ferry]", "[{ flag: /flags/x.svg }]"),
    "series/e.md": rightSeries.replace("[ferry]", "[{ flag: /flags/y.svg }]"),
    "flags/y.svg": rightDrawing,
    "series/Not This.md": rightSeries,
    "series/prn.md": rightSeries,
    "series/.DS_Store": "",
    "series/a.md~": "",
  };
  expect(await load(files)).toEqual([
    ["a", "b", "e"],
    [
      ["series/file-name", "content/series/Not This.md"],
      ["series/unknown-study", "content/series/c.md"],
      ["series/flag-missing", "content/series/d.md"],
      ["series/file-name", "content/series/prn.md"],
    ],
  ]);
});

test("links are not followed, neither a file's nor the folder's", async () => {
  expect(await load({ "other.md": rightSeries, "series/a.md": "→../other.md" })).toEqual([
    [],
    [["study/link", "content/series/a.md"]],
  ]);
  expect(await load({ "elsewhere/a.md": rightSeries, series: "→elsewhere" })).toEqual([
    [],
    [["study/link", "content/series"]],
  ]);
});
