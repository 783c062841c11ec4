import { expect, test } from "vitest";
import { limit } from "../../../src/svg/gate/drawinglimit.ts";
import { decodeText, identifyOther, refuseBytes } from "../../../src/svg/xml/decode.ts";

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

// The first bytes as the formats' own specifications give them.
test.each<[string, readonly number[]]>([
  ["a compressed file (.svgz)", [0x1f, 0x8b, 8]],
  ["a PNG picture", [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]],
  ["a JPEG picture", [0xff, 0xd8, 0xff, 0xe0]],
  ["a GIF picture", [0x47, 0x49, 0x46, 0x38, 0x39, 0x61]],
  ["a WebP picture", [0x52, 0x49, 0x46, 0x46, 0, 0x0a, 1, 0, 0x57, 0x45, 0x42, 0x50]],
  ["a PDF document", [0x25, 0x50, 0x44, 0x46, 0x2d, 0x31]],
])("identifyOther: %s", (name, bytes) => {
  expect(identifyOther(Uint8Array.from(bytes))?.name).toBe(name);
});

test.each(["<svg/>", "", "GIFT", "%PD", "RIFF and so on, WEBP"])(
  "identifyOther: %j may be a drawing",
  (text) => {
    expect(identifyOther(new TextEncoder().encode(text))).toBeUndefined();
  },
);

test("refuseBytes says why a file cannot be tried", () => {
  const ruleOf = (bytes: readonly number[]) => {
    const array = Uint8Array.from(bytes);
    return refuseBytes(array, decodeText(array))?.rule;
  };
  expect(ruleOf([0x3c, 0x61])).toBeUndefined();
  expect(ruleOf([0x20, 0x0a])).toBe("svg/empty");
  expect(ruleOf([0x3c, 0xff])).toBe("svg/encoding");
  expect(ruleOf([0x1f, 0x8b])).toBe("svg/encoding");
  expect(refuseBytes(new Uint8Array(limit.fileBytes + 1), "")?.rule).toBe("svg/too-big");
});
