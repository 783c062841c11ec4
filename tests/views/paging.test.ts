import { expect, test } from "vitest";
import { linkFrom } from "../../src/views/address.ts";
import { divideList, mostOnPage, presentPages, titlePage } from "../../src/views/paging.ts";
import { createFormat } from "../../src/words/format.ts";

const format = createFormat("en");

test("a list is divided without a gap and without a twin, and the first page keeps the address of the list", () => {
  const items = Array.from({ length: 2 * mostOnPage + 1 }, (_, index) => index);
  const pages = divideList("/tags/charge/", items);
  expect(pages.map(({ path }) => path)).toEqual([
    "/tags/charge/",
    "/tags/charge/page/2/",
    "/tags/charge/page/3/",
  ]);
  expect(pages.flatMap((page) => page.items)).toEqual(items);
  expect(divideList("/", []).map(({ path, of }) => [path, of])).toEqual([["/", 1]]);
  expect(divideList("/", items.slice(0, mostOnPage))).toHaveLength(1);
});

test("every page leads to those beside it and to both ends; one that is alone says nothing", () => {
  const at = (number: number, path: string) =>
    presentPages("/list/", { number, of: 3 }, linkFrom(path), format);
  expect(at(1, "/list/")).toEqual({
    number: "1",
    count: "3",
    label: "Page 1 of 3",
    previous: undefined,
    next: "page/2/",
    first: "./",
    last: "page/3/",
  });
  expect(at(2, "/list/page/2/")).toMatchObject({ previous: "../../", next: "../3/", first: "../../" });
  expect(at(3, "/list/page/3/")?.next).toBeUndefined();
  expect(presentPages("/list/", { number: 1, of: 1 }, linkFrom("/list/"), format)).toBeUndefined();
});

test("the title of a page says where it stands, if there are others", () => {
  const pages = presentPages("/list/", { number: 2, of: 3 }, linkFrom("/list/page/2/"), format);
  expect(titlePage("All studies", pages, format)).toBe("All studies, page 2 of 3");
  expect(titlePage("All studies", undefined, format)).toBe("All studies");
});
