import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readPath, readPoints, readTransform, readViewBox } from "../../../src/svg/gate/geometry.ts";

// What is right and what is wrong is by the grammars of SVG 2, sections 9.3.9 (paths), 10.6.1 (points) and 8.6 (viewBox), and
// SVG 1.1, section 7.6 (transforms): blanks with one comma at most between values, none behind a letter or at an end.
describe("readPath", () => {
  test.each([
    ["", ""],
    [" none ", ""],
    [" M0,0 L1-1z ", "M0 0L1-1z"],
    ["m.5.5a1 1 0 01 2 2", "m.5.5a1 1 0 0 1 2 2"],
    ["m0 0a1 1 0 0012 2", "m0 0a1 1 0 0 0 12 2"],
    ["M1e-5,+0", "M1e-5 0"],
    ["M1e-005 0", "M1e-005 0"],
    ["M0 0 1 1 , 2 2h1 2 3", "M0 0 1 1 2 2h1 2 3"],
    ["M0\t0\n1\r1\f2 2Z z", "M0 0 1 1 2 2Zz"],
    ["M0 0zl1 1", "M0 0zl1 1"],
  ])("%j is written %j", (text, written) => {
    expect(readPath(text)).toEqual({ text: written });
    expect(readPath(written)).toEqual({ text: written });
  });

  test.each([
    ["L1 1", 0],
    ["1 1", 0],
    ["M", 1],
    ["M0", 2],
    ["M0 0,L1 1", 4],
    ["M0 0 L,1 1", 6],
    ["M0 0L1 1,", 8],
    ["M0 0L1,,1", 7],
    ["M0 0z1 1", 5],
    ["M0 0 x", 5],
    ["M0 0L1 1 1", 10],
    ["M0 0L1. 1", 6],
    ["M0 0L+-1 1", 5],
    ["M0 0L0x10 1", 6],
    ["M0 0LL1 1", 5],
    ["M5e 1", 2],
    ["M0 0a1 1 0 2 1 1 1", 11],
    ["M0 0a1 1 0 +1 1 1 1", 11],
    ["M1e999 0", 1],
    ["M1e-0005 0", 1],
    ["M0 0\u00a0L1 1", 4],
    ["nonesuch", 0],
  ])("%j is wrong at %i", (text, at) => {
    expect(readPath(text)).toEqual({ at });
  });

  test("a path of any commands comes out as it went in", () => {
    const number = fc.oneof(fc.integer(), fc.double({ noNaN: true, min: -1e6, max: 1e6 })).map(String);
    const command = fc
      .constantFrom(["L", 2], ["h", 1], ["C", 6], ["q", 4], ["z", 0])
      .chain(([name, count]) =>
        fc
          .array(number, { minLength: Number(count), maxLength: Number(count) })
          .map((all) => `${name}${all.join(" ")}`),
      );
    fc.assert(
      fc.property(fc.array(command), fc.constantFrom(" ", "\n", ""), (commands, gap) => {
        const text = `M0 0${commands.join("")}`;
        expect(readPath(["M0 0", ...commands].join(gap))).toEqual(
          /e-\d{3}/.test(text) ? { at: expect.any(Number) } : { text: text.replaceAll(" -", "-") },
        );
      }),
    );
  });
});

test.each([
  ["", { text: "" }],
  ["0,0 1,1", { text: "0 0 1 1" }],
  ["0 0-1-1", { text: "0 0 -1 -1" }],
  [".5.5", { text: ".5 .5" }],
  ["a", { at: 0 }],
  ["0,0 NaN", { at: 4 }],
  ["1e999,0", { at: 0 }],
  ["1,2,3", { at: 5 }],
  ["1,,2", { at: 2 }],
  [",1 2", { at: 0 }],
  ["0-1 2-3.5.5-6", { text: "0 -1 2 -3.5 .5 -6" }],
  ["1 2,", { at: 3 }],
  ["1 2;", { at: 3 }],
])("readPoints %j", (text, reading) => {
  expect(readPoints(text)).toEqual(reading);
});

test.each([
  ["", { text: "" }],
  ["translate( 1,2 )", { text: "translate(1 2)" }],
  ["rotate (30 1-1) , scale(2)", { text: "rotate(30 1 -1) scale(2)" }],
  ["matrix(1 0 0 1 0 0)skewX(9)", { text: "matrix(1 0 0 1 0 0) skewX(9)" }],
  ["spin(3)", { at: 0 }],
  ["Translate(3)", { at: 0 }],
  ["translate(NaN)", { at: 10 }],
  ["translate(1", { at: 11 }],
  ["translate(1px)", { at: 11 }],
  ["translate(1.)", { at: 11 }],
  ["rotate(url(#a))", { at: 7 }],
  ["rotate(30 1)", { at: 0 }],
  ["scale(1 1 1)", { at: 0 }],
  ["scale()", { at: 6 }],
  ["matrix(1 0 0 1 9)", { at: 0 }],
  ["scale(1),", { at: 8 }],
  ["scale(1),,scale(1)", { at: 9 }],
  [",scale(1)", { at: 0 }],
  ["rotate(-36000)", { text: "rotate(-36000)" }],
  ["scale(1) rotate(36001)", { at: 9 }],
  ["skewX(1e30)", { at: 0 }],
  ["scale(1 2 ,)", { at: 10 }],
])("readTransform %j", (text, reading) => {
  expect(readTransform(text)).toEqual(reading);
});

test.each([
  ["0 0 3 2", { x: 0, y: 0, width: 3, height: 2 }],
  [" -1,.5 , 3e1 -2 ", { x: -1, y: 0.5, width: 30, height: -2 }],
  ["0 0 3", undefined],
  ["0 0 3 2 1", undefined],
  ["0,,0 3 2", undefined],
  ["0 0 3px 2", undefined],
  ["0\u00a00 3 2", undefined],
  ["0 0 3. 2", undefined],
])("readViewBox %j", (text, box) => {
  expect(readViewBox(text)).toEqual(box);
});
