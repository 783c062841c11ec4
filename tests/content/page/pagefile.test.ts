import { expect, test } from "vitest";
import { orderPages, parsePage } from "../../../src/content/page/pagefile.ts";
import { rightPage } from "../mistakes.ts";

const parse = (text: string) => parsePage("about", "content/pages/about.md", Buffer.from(text));

test("keys, text and where the text begins", () => {
  expect(parse(rightPage)).toEqual({
    value: {
      path: "about",
      file: "content/pages/about.md",
      title: "Who we are",
      menu: "About",
      body: "We meet on the quay.\n\n::study{ferry}\n",
      bodyLine: 5,
    },
    problems: [],
  });
});

test("a page without a title is none, and every other mistake is told at once", () => {
  const { value, problems } = parse("---\nmenue: About\norder: first\n---\n");
  expect(value).toBeUndefined();
  expect(problems.map(({ rule, place }) => [rule, place?.line])).toEqual([
    ["study/missing-key", 4],
    ["study/wrong-type", 3],
    ["study/unknown-key", 2],
  ]);
});

test("by order, then by title, then by path", () => {
  const page = (path: string, title: string, order?: number) => ({
    ...{ path, title, file: "", body: "", bodyLine: 1 },
    ...(order === undefined ? {} : { order }),
  });
  const pages = [
    page("c", "Zoo"),
    page("b", "Ark"),
    page("a", "Ark"),
    page("d", "Zoo", 2),
    page("e", "Zoo", 1),
  ];
  expect(orderPages(pages).map(({ path }) => path)).toEqual(["e", "d", "a", "b", "c"]);
});
