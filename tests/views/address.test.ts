import { expect, test } from "vitest";
import {
  formatCanonical,
  formatRelative,
  linkFrom,
  linkUnder,
  locate,
  resolveBase,
} from "../../src/views/address.ts";

// What a browser makes of the address is the outside check: it must land where we meant, under any base.
const pages = [
  "/",
  "/method/",
  "/studies/a-square/",
  "/studies/b/edges/a-b/",
  "/assets/site.css",
  "/404.html",
];
for (const base of ["https://flags.example", "https://flags.example/deep/er", "file:///home/ines/site"]) {
  for (const from of pages) {
    test(`links from ${base}${from} resolve to where they point`, () => {
      for (const to of pages) {
        expect(new URL(formatRelative(from, to), `${base}${from}`).href).toBe(`${base}${to}`);
      }
    });
  }
}

test("keeps a fragment and never begins with a slash", () => {
  expect(formatRelative("/studies/a/", "/method/#cautions")).toBe("../../method/#cautions");
  expect(formatRelative("/method/", "/method/")).toBe("./");
  expect(linkFrom("/")("/studies/a/")).toBe("studies/a/");
});

test("the page for missing addresses links by whole paths under the base", () => {
  expect(linkUnder("/")("/method/")).toBe("/method/");
  expect(linkUnder("/sound/")("/method/")).toBe("/sound/method/");
});

test("the base is what was asked for, or else the path of the gallery's address", () => {
  expect(resolveBase(undefined, "https://flags.example/sound")).toBe("/sound/");
  expect(resolveBase(undefined, "https://flags.example/")).toBe("/");
  expect(resolveBase("preview", "https://flags.example/sound")).toBe("/preview/");
  expect(resolveBase("/a/b/", "no address")).toBe("/a/b/");
  expect(resolveBase(undefined, "no address")).toBe("/");
});

test("canonical addresses are absolute, and absent where the gallery has none", () => {
  expect(formatCanonical("https://flags.example/sound/", "/method/")).toBe(
    "https://flags.example/sound/method/",
  );
  expect(formatCanonical("no address", "/method/")).toBeUndefined();
});

test("a file in data links absolutely where the gallery has an address, else from where it lies", () => {
  expect(locate("https://flags.example/sound/", "/survey/survey.json", "/schemas/a.json")).toBe(
    "https://flags.example/sound/schemas/a.json",
  );
  expect(locate("http://localhost:8080/", "/survey/survey.json", "/schemas/a.json")).toBe(
    "../schemas/a.json",
  );
});
