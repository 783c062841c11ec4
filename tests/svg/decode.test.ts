import { expect, test } from "vitest";
import { decodeText, isGzip } from "../../src/svg/decode.ts";
import { limit } from "../../src/svg/limit.ts";

// UTF-8 and its faults as in RFC 3629: overlong forms, surrogates and lone bytes are none.
test.each([
  ["a BOM goes", [0xef, 0xbb, 0xbf, 0x61], "a"],
  ["line ends become LF", [0x61, 0x0d, 0x0a, 0x62, 0x0d, 0x63], "a\nb\nc"],
  ["two bytes", [0xc3, 0xa9], "é"],
  ["an overlong slash", [0xc0, 0xaf], undefined],
  ["a surrogate", [0xed, 0xa0, 0x80], undefined],
  ["latin1", [0xe9], undefined],
])("decodeText: %s", (_, bytes, text) => {
  expect(decodeText(Uint8Array.from(bytes))).toBe(text);
});

test("decodeText does not read past the cap", () => {
  expect(decodeText(new Uint8Array(limit.fileBytes + 1).fill(0xff))).toBe("");
});

test("isGzip", () => {
  expect(isGzip(Uint8Array.from([0x1f, 0x8b, 8]))).toBe(true);
  expect(isGzip(new TextEncoder().encode("<svg/>"))).toBe(false);
});
