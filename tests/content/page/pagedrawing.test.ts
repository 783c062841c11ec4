import { expect, test } from "vitest";
import { findDrawings, placeDrawing } from "../../../src/content/page/pagedrawing.ts";
import { drawing } from "../folder.ts";
import { inFolder } from "../rules/making.ts";

const pageOf = (path: string, body: string) => ({ path, title: path, file: `${path}.md`, body, bodyLine: 4 });

test("of the drawings that are there those that a page shows, each once", async () => {
  await inFolder({ "flags/a.svg": drawing, "flags/b.svg": drawing }, async (root) => {
    const body = '::figure{drawing="/flags/a.svg"}\n\n::figure{drawing="own.svg" caption="Own"}\n';
    const pages = [pageOf("one", body), pageOf("two", body)];
    const found = await findDrawings(root, "content", pages, ["pages/guide/own.svg", "pages/own.svg"]);
    expect(found.problems).toEqual([]);
    expect(found.drawings.map(({ file }) => file)).toEqual(["content/flags/a.svg", "content/pages/own.svg"]);
  });
});

test("a page that names none that is there is told what there is, or to put one there", async () => {
  await inFolder({}, async (root) => {
    const pages = [pageOf("guide/one", '\n::figure{drawing="ow.svg"}\n')];
    const problems = async (...own: readonly string[]) =>
      (await findDrawings(root, "content", pages, own)).problems.map(({ place, hint }) => [
        place?.line,
        hint,
      ]);
    expect(await problems()).toEqual([[5, "Put the drawing beside the file of this page."]]);
    expect(await problems("pages/guide/own.svg")).toEqual([[5, 'Type: ::figure{drawing="own.svg"}']]);
    expect(await problems("pages/guide/deep/own.svg")).toEqual([
      [5, "Put the drawing beside the file of this page."],
    ]);
  });
});

test("the path of a drawing begins where its page lies", () => {
  expect(placeDrawing({ path: "guide/hosts" }, "a.svg")).toBe("pages/guide/a.svg");
  expect(placeDrawing({ path: "about" }, "a.svg")).toBe("pages/a.svg");
  expect(placeDrawing({ path: "about" }, "/flags/a.svg")).toBe("flags/a.svg");
});
