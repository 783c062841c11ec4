import { expect, test } from "vitest";
import { mediaTypeOf } from "../../src/preview/mediatype.ts";

// Source: IANA media types: text/html, image/svg+xml (W3C SVG 1.1, appendix P), font/woff2 (RFC 8081), text/csv (RFC 7111),
// image/webp (RFC 9649), text/markdown (RFC 7763).
test.each([
  ["index.html", "text/html; charset=utf-8"],
  ["studies/a/original.svg", "image/svg+xml"],
  ["assets/fonts/a.latin.woff2", "font/woff2"],
  ["edges.csv", "text/csv; charset=utf-8"],
  ["studies/a/matrix.webp", "image/webp"],
  ["studies/a/stills/script.md", "text/markdown; charset=utf-8"],
  ["_headers", "application/octet-stream"],
])("%s is %s", (file, type) => {
  expect(mediaTypeOf(file)).toBe(type);
});
