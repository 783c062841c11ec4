import { expect, test } from "vitest";
import { loadTheme } from "../../../src/content/gallery/themefile.ts";
import { type Files, inFolder } from "../rules/making.ts";

const load = (files: Files) =>
  inFolder(files, async (root) => {
    const { value, problems } = await loadTheme(root, "content");
    return [value, problems.map(({ rule, place }) => [rule, place?.line])];
  });

test("no file, no theme", async () => {
  expect(await load({ "gallery.yaml": "" })).toEqual([undefined, []]);
});

test("what is said within the limits holds", async () => {
  const theme = "text: Source Sans 3\nheadings: Source Serif 4\nmeasure: 50\ndensity: close\nmat: 58\n";
  expect(await load({ "theme.yaml": theme })).toEqual([
    {
      ...{ text: "Source Sans 3", headings: "Source Serif 4" },
      ...{ measure: 50, density: "close", mat: 58 },
    },
    [],
  ]);
});

test("what is wrong costs the rest nothing", async () => {
  const theme = "text: Inter\nheadings: source sans 3\nmeasure: 120\ndensity: calm\nmat: 20\ncolour: red\n";
  expect(await load({ "theme.yaml": theme })).toEqual([
    { density: "calm" },
    [
      ["study/unknown-word", 1],
      ["study/unknown-word", 2],
      ["study/out-of-range", 3],
      ["study/out-of-range", 5],
      ["study/unknown-key", 6],
    ],
  ]);
});

test("a mat beyond its limits is told why", async () => {
  await inFolder({ "theme.yaml": "mat: 90\n" }, async (root) => {
    const { problems } = await loadTheme(root, "content");
    expect(problems[0]?.reason).toMatch(
      /^“mat” is 90; it must be at most 58\. On a lighter or darker ground/,
    );
    expect(problems[0]?.hint).toBe("Type, for example: mat: 55");
  });
});

test("styles do not come in by a value, nor a file by a link; what is no theme is none", async () => {
  const hostile =
    'text: "a; } body { display: none"\nmeasure: "50 * 9999"\nmat: [50]\n__proto__: { mat: 1 }\n';
  const [value, problems] = await load({ "theme.yaml": hostile });
  expect(value).toEqual({});
  expect((problems as unknown[]).length).toBe(4);
  expect(await load({ "other.yaml": "mat: 50", "theme.yaml": "→other.yaml" })).toEqual([
    undefined,
    [["study/link", undefined]],
  ]);
  expect((await load({ "theme.yaml": "- mat: 50\n" }))[0]).toBeUndefined();
  expect((await load({ "theme.yaml/a": "" }))[1]).toEqual([["study/not-a-file", undefined]]);
});
