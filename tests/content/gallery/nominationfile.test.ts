import { expect, test } from "vitest";
import { loadNominations } from "../../../src/content/gallery/nominationfile.ts";
import { rightDrawing } from "../mistakes.ts";
import { inFolder } from "../rules/making.ts";

const load = (text: string | undefined) =>
  inFolder(
    {
      "flags/harbour.svg": rightDrawing,
      ...(text === undefined ? {} : { "flags/nominations.yaml": text }),
    },
    async (root) => {
      const { value, problems } = await loadNominations(root, "content");
      return [value, problems.map(({ rule, place }) => [rule, place?.line, place?.column])];
    },
  );
const harbour = { flag: "flags/harbour.svg", reason: "Dark on dark" };

test("no file, no nominations; an empty list is none either", async () => {
  expect(await load(undefined)).toEqual([[], []]);
  expect(await load("nominations: []")).toEqual([[], []]);
});

test("several may name a flag, each once; what is wrong costs nothing beside it", async () => {
  const lines = [
    "nominations:",
    "  - { flag: /flags/harbour.svg, reason: Dark on dark }",
    "  - { flag: /flags/harbour.svg, by: Ines Valcourt, reason: Dark on dark }",
    "  - { flag: /flags/harbour.svg, by: Ines Valcourt, reason: Again }",
    "  - { flag: /flags/habour.svg, reason: Dark on dark }",
    "  - { flag: ../gallery.yaml, reason: Dark on dark }",
  ];
  expect(await load(lines.join("\n"))).toEqual([
    [harbour, { ...harbour, by: "Ines Valcourt" }],
    [
      ["nomination/twice", 4, 5],
      ["nomination/unknown-flag", 5, 13],
      ["nomination/unknown-flag", 6, 13],
    ],
  ]);
});

// #security: one line of a stranger ended every command that reads the gallery.
test("who says so may be of any kind: it is told of, and nothing ends by it", async () => {
  const one = (by: string) => `  - { flag: /flags/harbour.svg, by: ${by}, reason: Dark on dark }`;
  const kinds = ["{ name: Ines }", "[{ name: Ines }]", "7", "true"];
  expect(await load(["nominations:", ...kinds.map(one)].join("\n"))).toEqual([
    [],
    kinds.map((_, index) => ["study/wrong-type", index + 2, 37]),
  ]);
});

test("with an unknown key none is read, and no link is followed", async () => {
  expect(await load("nominations:\n  - { flag: /flags/harbour.svg, why: Dark }")).toEqual([
    [],
    [["study/unknown-key", 2, 33]],
  ]);
  expect(await load("→../gallery.yaml")).toEqual([[], [["study/link", undefined, undefined]]]);
});
