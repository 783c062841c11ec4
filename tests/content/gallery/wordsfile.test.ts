import { expect, test } from "vitest";
import { loadWords } from "../../../src/content/gallery/wordsfile.ts";
import { inFolder } from "../rules/making.ts";

const load = (text: string | undefined) =>
  inFolder(text === undefined ? {} : { "words.yaml": text }, async (root) => {
    const { value, problems } = await loadWords(root, "content");
    return [value, problems.map(({ rule, place }) => [rule, place?.line, place?.column])];
  });

test("no file, no words of one's own", async () => {
  expect(await load(undefined)).toEqual([undefined, []]);
});

test("messages take the place of ours, in any language; what is wrong costs the others nothing", async () => {
  const lines = [
    "edges.where: Wo die Kanten liegen",
    'verdict.change: "Aus {before} wird {after}."',
    'verdict.changeInPart: "Aus {before} wird {after}."',
    "edges.were: Wo",
    'edges.map: "{"',
    "edges.none: 5",
    'edges.moreOnDistance: "Mehr über die <distance>Entfernung</distance>"',
  ];
  expect(await load(lines.join("\n"))).toEqual([
    {
      "edges.where": "Wo die Kanten liegen",
      "verdict.change": "Aus {before} wird {after}.",
      "edges.moreOnDistance": "Mehr über die <distance>Entfernung</distance>",
    },
    [
      ["words/values", 3, 23],
      ["words/unknown", 4, 1],
      ["words/message", 5, 12],
      ["words/message", 6, 13],
    ],
  ]);
});

test("what every object has is no message of ours", async () => {
  const found = ["constructor", "__proto__", "toString"].map((_, index) => ["words/unknown", index + 1, 1]);
  expect(await load("constructor: a\n__proto__: b\ntoString: c")).toEqual([{}, found]);
});

test("a message that nobody sees, and one without an end, are none", async () => {
  expect(await load('edges.where: "\\u200b"')).toEqual([{}, [["study/no-value", 1, 14]]]);
  expect(await load(`edges.where: ${"a".repeat(1001)}`)).toEqual([{}, [["words/message", 1, 14]]]);
});
