import { expect, test } from "vitest";
import { drawingFiles } from "../../src/publish/pictures/drawingrecipe.ts";
import { formatHeaders, pagePolicy } from "../../src/views/pagepolicy.ts";

test("the policy begins with nothing and allows nothing unsafe and no other host", () => {
  expect(pagePolicy.startsWith("default-src 'none'")).toBe(true);
  expect(pagePolicy).not.toMatch(/unsafe|https?:|data:|\*/);
  expect(pagePolicy).toMatch(/; require-trusted-types-for 'script'; trusted-types words drawing$/);
});

test("in _headers every line with a header belongs to a path, and drawings get a policy of their own", () => {
  const blocks = formatHeaders(drawingFiles).trim().split("\n\n");
  for (const block of blocks) {
    const [path, ...headers] = block.split("\n");
    expect(path).toMatch(/^\//);
    expect(headers.length).toBeGreaterThan(0);
    for (const header of headers) expect(header).toMatch(/^ {2}[A-Za-z-]+: \S/);
  }
  expect(blocks.find((block) => block.startsWith("/studies/:slug/redesign.svg"))).toContain("sandbox");
  for (const path of ["/assets/logo.svg", "/assets/drawings/*"])
    expect(blocks.find((block) => block.startsWith(`${path}\n`))).toContain("sandbox");
  expect(blocks.find((block) => block.startsWith("/studies/:slug/\n"))).toContain("frame-ancestors 'none'");
});

test("a font is asked for again: the next build may put other letters into a file of the same name", () => {
  const fonts = formatHeaders(drawingFiles)
    .split("\n\n")
    .find((block) => block.startsWith("/assets/fonts/*"));
  expect(fonts).toContain("Cache-Control: public, no-cache");
  expect(fonts).not.toContain("max-age");
});
