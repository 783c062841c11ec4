import { describe, expect, test } from "vitest";
import { hexOf, linearOf, parseColour, toHex, toRgb } from "../../src/colour/colourtext.ts";
import { startClock } from "../clock.ts";
import { greenSpellings, notColours } from "../reference/spelling.ts";
import { decode, encode } from "../reference/srgb.ts";

describe("parseColour", () => {
  test.each(greenSpellings)("%j is green", (text) => {
    expect(parseColour(text)).toEqual({ hex: "#008000", alpha01: 1 });
  });

  test.each(notColours)("%j is no colour", (text) => {
    expect(parseColour(text)).toBeUndefined();
  });

  test("alpha comes from every notation", () => {
    expect(parseColour("transparent")).toEqual({ hex: "#000000", alpha01: 0 });
    expect(parseColour("TRANSPARENT")).toEqual({ hex: "#000000", alpha01: 0 });
    expect(parseColour("#0080")).toEqual({ hex: "#000088", alpha01: 0 });
    expect(parseColour("#ff000033")).toEqual({ hex: "#ff0000", alpha01: 0.2 });
    expect(parseColour("rgba(255, 0, 0, .5)")).toEqual({ hex: "#ff0000", alpha01: 0.5 });
    expect(parseColour("hsl(0 100% 50% / 25%)")).toEqual({ hex: "#ff0000", alpha01: 0.25 });
    expect(parseColour("oklch(0 0 0 / none)")).toEqual({ hex: "#000000", alpha01: 0 });
    expect(parseColour("rgb(255 0 0 / 7)")).toEqual({ hex: "#ff0000", alpha01: 1 });
    expect(parseColour("rgb(255 0 0 / -7)")).toEqual({ hex: "#ff0000", alpha01: 0 });
  });

  test("a component none counts as 0", () => {
    expect(parseColour("rgb(none none none)")?.hex).toBe("#000000");
    expect(parseColour("hsl(none 100% 50%)")?.hex).toBe("#ff0000");
    expect(parseColour("lab(none none none)")?.hex).toBe("#000000");
    expect(parseColour("lch(100% none none)")?.hex).toBe("#ffffff");
    expect(parseColour("color(srgb 1 none none)")?.hex).toBe("#ff0000");
  });

  test("a colour outside sRGB is clamped", () => {
    expect(parseColour("rgb(300 -5 255.4)")?.hex).toBe("#ff00ff");
    expect(parseColour("color(display-p3 1 0 0)")?.hex).toBe("#ff0000");
    expect(parseColour("color(srgb 1e400 0 0)")?.hex).toBe("#ff0000");
  });

  // Source: CSS Color Module Level 4, section 6.1, the table of named colours.
  test.each([
    ["rebeccapurple", "#663399"],
    ["gray", "#808080"],
    ["grey", "#808080"],
    ["DarkSlateGrey", "#2f4f4f"],
    ["lightgoldenrodyellow", "#fafad2"],
    ["gold", "#ffd700"],
    ["navy", "#000080"],
    ["maroon", "#800000"],
  ])("the name %s is %s", (name, hex) => {
    expect(parseColour(name)).toEqual({ hex, alpha01: 1 });
  });

  test("a very long text is no colour, and says so at once", () => {
    const spent = startClock();
    expect(parseColour(`rgb(${"1".repeat(1_000_000)} 0 0)`)).toBeUndefined();
    expect(parseColour(`rgb(${" ".repeat(1_000_000)}`)).toBeUndefined();
    expect(spent()).toBeLessThan(1000);
  });
});

describe("toRgb and toHex", () => {
  test("are inverse and lower case", () => {
    expect(toRgb("#ff8000")).toEqual({ r: 1, g: 128 / 255, b: 0 });
    expect(toHex({ r: 1, g: 128 / 255, b: 0 })).toBe("#ff8000");
    expect(toHex(toRgb("#ABCDEF"))).toBe("#abcdef");
  });

  test("round to the nearest byte", () => {
    expect(toHex({ r: 0.4999 / 255, g: 0.5001 / 255, b: 254.5001 / 255 })).toBe("#0001ff");
  });

  test.each(["#fff", "ffffff", "#fffffff", "#gggggg", "red", "#ffffff\n"])("toRgb refuses %j", (text) => {
    expect(() => toRgb(text as `#${string}`)).toThrow(RangeError);
    expect(() => linearOf(text as `#${string}`)).toThrow(text);
  });

  test("toHex refuses what is not 0 to 1", () => {
    expect(() => toHex({ r: 1.5, g: 0, b: 0 })).toThrow("red must be a number from 0 to 1, got 1.5");
    expect(() => toHex({ r: 0, g: Number.NaN, b: 0 })).toThrow(RangeError);
  });
});

describe("linearOf and hexOf", () => {
  test("follow the standard at every byte, within 1e-15, and come back", () => {
    for (let byte = 0; byte < 256; byte++) {
      const hex = toHex({ r: byte / 255, g: byte / 255, b: byte / 255 });
      const linear = linearOf(hex);
      expect(Math.abs(linear.linearR - decode(byte / 255))).toBeLessThan(1e-15);
      expect(linear.linearG).toBe(linear.linearR);
      expect(linear.linearB).toBe(linear.linearR);
      expect(hexOf(linear)).toBe(hex);
    }
  });

  test("hexOf encodes by the standard, also between bytes", () => {
    for (let step = 0; step <= 1000; step++) {
      const linear = step / 1000;
      const byte = Math.round(encode(linear) * 255);
      const hex = hexOf({ linearR: linear, linearG: 0, linearB: 0 });
      expect(Number.parseInt(hex.slice(1, 3), 16)).toBe(byte);
    }
  });

  // Source: WCAG 2.2, relative luminance, note 1: 0.03928 before May 2021, no practical effect.
  test("the threshold WCAG printed before May 2021 gives the same for every byte", () => {
    for (let byte = 0; byte < 256; byte++) {
      expect(decode(byte / 255, 0.03928)).toBe(decode(byte / 255, 0.04045));
    }
    expect(decode(0.04, 0.03928)).not.toBe(decode(0.04, 0.04045));
  });

  test("hexOf refuses what is not 0 to 1", () => {
    expect(() => hexOf({ linearR: 0, linearG: 0, linearB: -0.1 })).toThrow("linear blue");
    expect(() => hexOf({ linearR: Number.NaN, linearG: 0, linearB: 0 })).toThrow("NaN");
  });
});
