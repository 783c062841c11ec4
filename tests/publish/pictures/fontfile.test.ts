import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { expect, test } from "vitest";
import { unpackFont } from "../../../src/publish/pictures/fontfile.ts";

const folder = path.dirname(
  createRequire(import.meta.url).resolve("@fontsource/source-serif-4/package.json"),
);
const woff = readFileSync(path.join(folder, "files", "source-serif-4-latin-400-normal.woff"));

/** Source: OpenType 1.9, “Calculating checksums”: the sum of the table as big-endian 32-bit words, zeros behind it. */
function sumTable(font: Buffer, offset: number, length: number): number {
  let sum = 0;
  for (let at = 0; at < length; at += 4) {
    const word = Buffer.alloc(4);
    font.copy(word, 0, offset + at, Math.min(offset + at + 4, offset + length));
    sum = (sum + word.readUInt32BE()) >>> 0;
  }
  return sum;
}

test("every table comes out with the checksum its maker gave it", () => {
  const font = unpackFont(woff);
  const count = font.readUInt16BE(4);
  expect(count).toBeGreaterThan(8);
  // The length that the file says the font has, WOFF 1.0 section 3, totalSfntSize.
  expect(font.length).toBe(woff.readUInt32BE(16));
  for (let index = 0; index < count; index += 1) {
    const entry = 12 + 16 * index;
    const tag = font.toString("latin1", entry, entry + 4);
    // The checksum of head is taken before its own field is filled in.
    if (tag === "head") continue;
    const [checksum, offset, length] = [4, 8, 12].map((field) => font.readUInt32BE(entry + field));
    expect(sumTable(font, offset ?? 0, length ?? 0), tag).toBe(checksum);
  }
});

test("what is no WOFF font is refused", () => {
  expect(() => unpackFont(Buffer.from("wOF2 and so on, long enough to have a header"))).toThrow(RangeError);
  const short = Buffer.from(woff);
  short.writeUInt32BE(woff.readUInt32BE(44 + 12) + 1, 44 + 12);
  expect(() => unpackFont(short)).toThrow();
});
