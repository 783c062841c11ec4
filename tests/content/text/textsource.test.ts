import { expect, test } from "vitest";
import { readSource } from "../../../src/content/text/textsource.ts";
import { printText, writeStudy } from "../../analysis/fixture.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const latin1 = (text: string) => Uint8Array.from(text, (character) => character.charCodeAt(0));

test("the text comes without a byte order mark, with one kind of line end", () => {
  expect(readSource("a.md", bytes("\ufeffa\r\nb\rc\n")).value).toEqual({
    file: "a.md",
    text: "a\nb\nc\n",
    lines: ["a", "b", "c", ""],
  });
});

test("64 KB are not too many, one byte more is", () => {
  expect(readSource("a.md", new Uint8Array(65536).fill(0x61)).value).toBeDefined();
  expect(readSource("a.md", new Uint8Array(65537).fill(0x61)).value).toBeUndefined();
});

test.each<[string, Uint8Array, string]>([
  [
    "a file in Latin-1",
    latin1("---\ntitle: Caf\xe9 flag\n---\n"),
    `\
ferry/study.md:2:11  error  The file is not UTF-8: byte 0xe9 stands where a letter should.  study/encoding
    title: Caf\ufffd flag
              ^
    Save the file again with the encoding UTF-8.`,
  ],
  [
    "a character cut off at the end of the file",
    bytes("---\ntitle: é").slice(0, -1),
    `\
ferry/study.md:2:8  error  The file is not UTF-8: byte 0xc3 stands where a letter should.  study/encoding
    title: \ufffd
           ^
    Save the file again with the encoding UTF-8.`,
  ],
  [
    "a byte that only continues a character",
    latin1("---\nab\x80\n"),
    `\
ferry/study.md:2:3  error  The file is not UTF-8: byte 0x80 stands where a letter should.  study/encoding
    ab\ufffd
      ^
    Save the file again with the encoding UTF-8.`,
  ],
  [
    "UTF-16",
    latin1("\xff\xfe-\0-\0-\0"),
    `\
ferry/study.md  error  The file is in UTF-16, not in UTF-8.  study/encoding
    Save the file again with the encoding UTF-8.`,
  ],
  [
    "69 KB",
    bytes(writeStudy() + "x".repeat(70_000)),
    `\
ferry/study.md  error  The file has 69 KB; a study file may have 64 KB.  study/file-size
    Shorten the prose, or keep the long version elsewhere and link to it.`,
  ],
])("%s", (_, file, report) => {
  expect(printText(file)).toBe(report);
});
