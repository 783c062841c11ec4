import { expect, test } from "vitest";
import { checkFolderDrawings } from "../../../src/content/folder/flagfiles.ts";
import type { Entry } from "../../../src/content/folder/listing.ts";

const file = (name: string): Entry => ({ name, kind: "file" });

test("drawings with a good name, sorted, and a warning for everything else", () => {
  const { names, problems } = checkFolderDrawings(
    "content/flags",
    [
      file("b.svg"),
      file("a-one.svg"),
      file("Big Flag.svg"),
      { name: "linked.svg", kind: "link" },
      { name: "folder.svg", kind: "folder" },
      file("notes.txt"),
      file(".DS_Store"),
      file(".hidden.svg"),
    ],
    true,
  );
  expect(names).toEqual(["a-one.svg", "b.svg"]);
  expect(problems.every(({ severity }) => severity === "warning")).toBe(true);
  expect(problems.map(({ file: name, rule }) => [name.slice(14), rule]).sort()).toEqual([
    ["Big Flag.svg", "study/drawing-name"],
    ["folder.svg", "study/not-a-file"],
    ["linked.svg", "study/link"],
    ["notes.txt", "study/unexpected-file"],
  ]);
});

test("two names that many computers take for one: neither is read", () => {
  const { names, problems } = checkFolderDrawings("flags", [file("a.svg"), file("A.svg")], true);
  expect(names).toEqual([]);
  expect(problems.map(({ rule }) => rule)).toEqual(["study/same-name", "study/same-name"]);
  expect(problems[0]?.hint).toMatch(/none of them is read/);
});

test("somebody else's collection keeps its names, and nothing is said of the rest", () => {
  const { names, problems } = checkFolderDrawings(
    "collection",
    [file("Flag of A (1912).svg"), file("readme.txt"), { name: "link.svg", kind: "link" }],
    false,
  );
  expect([names, problems]).toEqual([["Flag of A (1912).svg"], []]);
});
