import MarkdownIt from "markdown-it";
import { expect, test } from "vitest";
import { formatReply } from "../../../src/cli/text/replytext.ts";
import { galleryResult, studyResult } from "../../publish/sample.ts";
import { rivalResult } from "../../views/flag/rivals.ts";

const to = { content: "content", address: galleryResult.gallery.address };
const marks = { verdict: "mixed", clarity: [10, 20] };
const move = { was: marks, is: marks, isLeftOut: false, pictures: [] };

test("what moved, with all that is told of it; what goes; what cannot be built", () => {
  const moved = {
    studies: [
      { ...move, study: "a-square", pictures: ["redesign"] },
      { ...move, study: "gone", is: null },
      { ...move, study: "lee-shore", is: null, isLeftOut: true },
    ],
    gone: [
      { address: "/tags/old/", to: "/tags/" },
      { address: "/studies/gone/", to: null },
    ],
  };
  const site = "https://flags.example/sound/studies/a-square/";
  expect(formatReply([], { ...galleryResult, leftOut: ["lee-shore"] }, moved, to)).toBe(`\
**0 errors, 0 warnings; 1 study changed against the site that stands; 1 cannot be built.**

- **\`a-square\`: Clearer.** Another picture of the redesign.
  - Marks: clarity 74 % → 100 %; weakest edge 25 % (dark blue / red) → 67 % (dark blue / yellow).
  - Price: none. No edge becomes harder to see.
  - When published: [page](${site}), [original](${site}original.svg), [redesign](${site}redesign.svg), [both in one picture](${site}link.png)
- \`lee-shore\` cannot be built until its errors are mended.
- \`gone\` is not shown any more.
- \`/tags/old/\` goes and leads to \`/tags/\`.
- \`/studies/gone/\` goes and will say so.

No problem was found.`);
});

test("a study that did not move is not told of", () => {
  expect(formatReply([], galleryResult, { studies: [], gone: [] }, to)).toBe(
    "**0 errors, 0 warnings; 0 studies changed against the site that stands.**\n\nNo problem was found.",
  );
});

test("rivals: how many there are and where each stands; without an address no link", () => {
  const { studies, ...rest } = rivalResult([{ slug: "a" }, { slug: "b" }, { slug: "c" }]);
  const behind = { ...studyResult.comparison, clarity: [74, 80] as const };
  const some = studies.map((one) => (one.study.slug === "b" ? { ...one, comparison: behind } : one));
  const reply = formatReply([], { ...rest, studies: some }, undefined, to);
  expect(reply.match(/Rivals: .*/g)).toEqual([
    "Rivals: one of three proposals for it, 1st by clarity, level with 1 other.",
    "Rivals: one of three proposals for it, 3rd by clarity.",
    "Rivals: one of three proposals for it, 1st by clarity, level with 1 other.",
  ]);
  expect(reply).toContain("[rivals](https://flags.example/sound/flags/the-flag-of-a/)");
  const nowhere = { ...to, address: "http://localhost:8080" };
  expect(formatReply([], { ...rest, studies: some }, undefined, nowhere)).not.toMatch(/\]\(|When published/);
});

test("of many the first ten are told in full, the next in a line, and the others counted", () => {
  const slugs = Array.from({ length: 60 }, (_, at) => ({ slug: `s${at}` }));
  const reply = formatReply([], rivalResult(slugs), undefined, to);
  expect(reply.match(/^ {2}- Marks: /gm)).toHaveLength(10);
  expect(reply.match(/^- \*\*`s\d+`: Clearer\.\*\*$/gm)).toHaveLength(50);
  expect(reply).toContain("\n- And 10 more.\n");
});

test("the name of a colour is mere text", () => {
  const name = "@ines #12 ![x](//y) <b>x</b> | https://evil.example *a* GH-7";
  const { comparison } = studyResult;
  const edges = comparison.edges.map((edge) => ({
    ...edge,
    names: [
      [name, name],
      [name, name],
    ] as const,
  }));
  const [edge] = edges;
  const named = { ...comparison, edges, price: edge === undefined ? [] : [edge] };
  const shown = { ...galleryResult, studies: [{ ...studyResult, comparison: named }] };
  const reply = formatReply([], shown, undefined, { content: "", address: "" });
  expect(reply).toContain("@ines");
  const tokens = new MarkdownIt({ html: true, linkify: true })
    .parse(reply, {})
    .flatMap(({ children }) => children ?? []);
  expect(tokens.filter(({ type }) => /link|image|html|^em_/.test(type))).toEqual([]);
  const words = tokens.filter(({ type }) => type === "text").map(({ content }) => content);
  expect(words.join(" ")).not.toMatch(/[@#<>[\]|]|GH-|evil/);
});
