import { expect, test } from "vitest";
import { isDrawingName, parseOriginal, proposeDrawingName } from "../../../src/content/study/original.ts";
import { printStudy } from "../../analysis/fixture.ts";

test.each([
  ["original.svg", { folder: "study", name: "original.svg" }],
  ["ferry-wheel-2.svg", { folder: "study", name: "ferry-wheel-2.svg" }],
  ["/flags/harbour.svg", { folder: "flags", name: "harbour.svg" }],
])("%s is a drawing", (text, reference) => {
  expect(parseOriginal(text)).toEqual(reference);
});

const path = "it must name a file beside study.md, or /flags/ and a file name";

test.each([
  ["../../../etc/hostname", path, "original.svg"],
  ["./original.svg", path, "original.svg"],
  ["sub/wheel.svg", path, "wheel.svg"],
  ["/etc/passwd", path, "original.svg"],
  ["/flags/../x.svg", path, "x.svg"],
  ["/flags/sub/x.svg", path, "x.svg"],
  ["/flags/", "the drawing must be an SVG file", "original.svg"],
  ["//host/share/x.svg", path, "x.svg"],
  ["C:\\x.svg", path, "x.svg"],
  ["\\\\host\\share\\x.svg", path, "x.svg"],
  ["x.svg:stream", path, "original.svg"],
  ["%2e%2e/x.svg", path, "x.svg"],
  ["%2e%2e%2fx.svg", path, "2e-2e-2fx.svg"],
  ["https://flags.example/x.svg", path, "x.svg"],
  ["data:image/svg+xml,x", path, "original.svg"],
  ["a.svg\ufffd.png", path, "original.svg"],
  ["wheel.png", "the drawing must be an SVG file", "wheel.svg"],
  ["wheel", "the drawing must be an SVG file", "wheel.svg"],
  ["Wheel.svg", "small letters, digits and hyphens only", "wheel.svg"],
  ["wheel.SVG", "small letters, digits and hyphens only", "wheel.svg"],
  ["ferry wheel.svg", "small letters, digits and hyphens only", "ferry-wheel.svg"],
  ["cafe\u0301.svg", "small letters, digits and hyphens only", "cafe.svg"],
  [".svg", "small letters, digits and hyphens only", "original.svg"],
  ["旗.svg", "small letters, digits and hyphens only", "original.svg"],
])("%j is refused, and a name is proposed", (text, why, proposed) => {
  const parsed = parseOriginal(text);
  expect(parsed).toMatchObject({
    reason: expect.stringContaining(why),
    hint: expect.stringMatching(`original: ${proposed}$`),
  });
  expect(isDrawingName(proposed)).toBe(true);
});

test.each([
  ["flags/x.svg", "Type: original: /flags/x.svg"],
  ["./flags/x.svg", "Type: original: /flags/x.svg"],
  ["./original.svg", "Type: original: original.svg"],
])("%j is only spelt in another way", (text, hint) => {
  expect(parseOriginal(text)).toMatchObject({ reason: expect.stringContaining(path), hint });
});

test("a name that Windows keeps for a device is none", () => {
  expect(parseOriginal("/flags/aux.svg")).toMatchObject({
    reason: expect.stringContaining("keeps for a device"),
    hint: "Rename the file and type: original: /flags/aux-flag.svg",
  });
});

test("a proposed name is one that is accepted", () => {
  for (const name of ["A b.SVG", "旗.svg", "--.svg", "a.b.c.svg", "x"]) {
    expect(isDrawingName(proposeDrawingName(name))).toBe(true);
  }
});

// What an author reads, letter for letter.
test.each<[string, string]>([
  [
    "original: ../harbour/original.svg",
    `\
ferry/study.md:3:11  error  “original” is “../harbour/original.svg”; it must name a file beside study.md, or /flags/ and a file name.  study/original-path
    original: ../harbour/original.svg
              ^^^^^^^^^^^^^^^^^^^^^^^
    Copy the drawing into the study's folder and type: original: original.svg`,
  ],
  [
    "original: Ferry wheel.svg",
    `\
ferry/study.md:3:11  error  “Ferry wheel.svg” is no file name for a drawing: small letters, digits and hyphens only.  study/original-path
    original: Ferry wheel.svg
              ^^^^^^^^^^^^^^^
    Rename the file and type: original: ferry-wheel.svg`,
  ],
  [
    "original: wheel.png",
    `\
ferry/study.md:3:11  error  “original” is “wheel.png”; the drawing must be an SVG file.  study/original-path
    original: wheel.png
              ^^^^^^^^^
    Save the drawing as SVG and type: original: wheel.svg`,
  ],
])("%s", (line, report) => {
  expect(printStudy(line)).toBe(report);
});
