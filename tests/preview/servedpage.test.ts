import { expect, test } from "vitest";
import { dressPage, formatFailure, servedPolicy, undressPage } from "../../src/preview/servedpage.ts";
import { pagePolicy } from "../../src/views/pagepolicy.ts";

const page = `<!DOCTYPE html>\n<html><head><meta http-equiv="Content-Security-Policy" content="${pagePolicy}"/><title>x</title></head><body><p>&lt;/head></p></body></html>\n`;

test("a served page has a script and a style more, and may read a page as one; nothing else is changed", () => {
  const dressed = dressPage(page, "0123456789abcdef");
  expect(dressed).toContain(
    '<script src="/_serve/reload.js" data-mark="0123456789abcdef" defer></script></head>',
  );
  expect(dressed.match(/_serve/g)).toHaveLength(2);
  expect(dressed).toContain(`content="${servedPolicy}"`);
  expect(servedPolicy).toBe(`${pagePolicy} renewal`);
  expect(servedPolicy).not.toMatch(/unsafe|\*|data:|https?:/);
  expect(undressPage(dressed)).toBe(page);
  expect(undressPage(page)).toBe(page);
});

test("a failure is told without its trace, and shows itself anew when it is mended", () => {
  const html = formatFailure("m");
  expect(html).toContain("The terminal says why.");
  expect(html).toContain(servedPolicy);
  expect(html).toContain("/_serve/reload.js");
});
