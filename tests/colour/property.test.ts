// What must hold for every colour, tried on many at random.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { defaultCloth, measureLuminance, measureReflectance } from "../../src/colour/cloth.ts";
import type { Hex, LinearRgb } from "../../src/colour/colour.ts";
import { isOwnName, nameColour, nameColours, nameReplacement } from "../../src/colour/colourname.ts";
import { hexOf, linearOf, parseColour, toHex, toRgb } from "../../src/colour/colourtext.ts";
import { gradeOf, measureContrast, measureContrastRatio } from "../../src/colour/contrast.ts";
import { measureDifference } from "../../src/colour/difference.ts";
import { linearOfOklch, oklchOf } from "../../src/colour/space.ts";
import { tinctureOf } from "../../src/colour/tincture.ts";
import { simulate, visions } from "../../src/colour/vision.ts";

const hexes = fc
  .integer({ min: 0, max: 0xffffff })
  .map((bits): Hex => `#${bits.toString(16).padStart(6, "0")}`);
const component = fc.double({ min: 0, max: 1, noNaN: true });
const linears = fc.record({ linearR: component, linearG: component, linearB: component });

function expectInside(linear: LinearRgb): void {
  for (const value of [linear.linearR, linear.linearG, linear.linearB]) {
    expect(value >= 0 && value <= 1).toBe(true);
  }
}

describe("conversions", () => {
  test("hex → encoded → hex and hex → linear → hex are the identity", () => {
    fc.assert(
      fc.property(hexes, (hex) => {
        expect(toHex(toRgb(hex))).toBe(hex);
        expect(hexOf(linearOf(hex))).toBe(hex);
      }),
    );
  });

  test("hex → OKLCH → hex is the identity", () => {
    fc.assert(
      fc.property(hexes, (hex) => {
        expect(hexOf(linearOfOklch(oklchOf(linearOf(hex))))).toBe(hex);
      }),
    );
  });

  test("every OKLCH colour ends inside sRGB", () => {
    const oklch = fc.record({
      lightness01: component,
      chroma: component,
      hueDegrees: component.map((share) => share * 360),
    });
    fc.assert(fc.property(oklch, (colour) => expectInside(linearOfOklch(colour))));
  });

  test("any text is read without throwing, and what is read is a hex with an alpha", () => {
    const functionLike = fc
      .tuple(
        fc.constantFrom("rgb", "rgba", "hsl", "hwb", "lab", "lch", "oklab", "oklch", "color", "url", "var"),
        fc.array(
          fc.constantFrom(
            "0",
            "1e3",
            "-7",
            "50%",
            "none",
            "/",
            ",",
            " ",
            "srgb",
            "xyz",
            "deg",
            "90deg",
            "(",
            ")",
            "#",
            "--x",
            ".",
          ),
          { maxLength: 12 },
        ),
        fc.constantFrom(")", "", "))"),
      )
      .map(([name, parts, end]) => `${name}(${parts.join(" ")}${end}`);
    fc.assert(
      fc.property(fc.oneof(fc.string(), functionLike), (text) => {
        const parsed = parseColour(text);
        if (parsed === undefined) return;
        expect(parsed.hex).toMatch(/^#[0-9a-f]{6}$/);
        expect(parsed.alpha01 >= 0 && parsed.alpha01 <= 1).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("measures", () => {
  test("contrast is symmetric, 0 to 100, and 0 only between equals", () => {
    const reflectance = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(reflectance, reflectance, (a, b) => {
        const contrast = measureContrast(a, b);
        expect(contrast).toBe(measureContrast(b, a));
        expect(contrast >= 0 && contrast <= 100).toBe(true);
        expect(contrast === 0).toBe(a === b);
        expect(["weak", "soft", "clear", "strong"]).toContain(gradeOf(contrast));
      }),
    );
  });

  test("cloth keeps every colour between its black and its white, in the order of luminance", () => {
    fc.assert(
      fc.property(linears, linears, (a, b) => {
        const [first, second] = [measureReflectance(a, defaultCloth), measureReflectance(b, defaultCloth)];
        expect(first >= defaultCloth.black && first <= defaultCloth.white).toBe(true);
        if (measureLuminance(a) < measureLuminance(b)) expect(first).toBeLessThanOrEqual(second);
      }),
    );
  });

  test("the contrast ratio is symmetric and 1 to 21", () => {
    fc.assert(
      fc.property(linears, linears, (a, b) => {
        const ratio = measureContrastRatio(a, b);
        expect(ratio).toBe(measureContrastRatio(b, a));
        expect(ratio >= 1 && ratio <= 21 + 1e-9).toBe(true);
      }),
    );
  });

  test("ΔE00 is symmetric, a number from 0, and 0 from a colour to itself", () => {
    fc.assert(
      fc.property(linears, linears, (a, b) => {
        const difference = measureDifference(a, b);
        expect(difference >= 0 && Number.isFinite(difference)).toBe(true);
        expect(measureDifference(b, a)).toBeCloseTo(difference, 9);
        expect(measureDifference(a, a)).toBe(0);
      }),
    );
  });
});

describe("vision", () => {
  test("every colour is seen as a colour inside sRGB", () => {
    fc.assert(
      fc.property(linears, (linear) => {
        for (const vision of visions) expectInside(simulate(linear, vision));
      }),
    );
  });
});

describe("names", () => {
  const words = "(black|white|((light|dark) )?(grey|red|orange|yellow|green|blue|purple|pink|brown))";

  test("every colour has a name of the vocabulary, and a tincture", () => {
    fc.assert(
      fc.property(hexes, (hex) => {
        expect(nameColour(hex)).toMatch(new RegExp(`^${words}$`));
        expect(["metal", "colour", "unclassed"]).toContain(tinctureOf(hex));
      }),
      { numRuns: 500 },
    );
  });

  test("the colours of one flag have names of their own, in any order the same", () => {
    // Many near shades, so that they share words.
    const near = fc.integer({ min: 0, max: 0xfff }).map((bits): Hex => {
      const step = (shift: number): string =>
        (0x60 + ((bits >> shift) & 15) * 8).toString(16).padStart(2, "0");
      return `#${step(8)}${step(4)}${step(0)}`;
    });
    const shades = fc.uniqueArray(fc.oneof(hexes, near), { maxLength: 14 });
    fc.assert(
      fc.property(
        shades,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 14 }),
        (flag, areas) => {
          const shares = areas.slice(0, flag.length);
          const names = nameColours(flag, shares);
          expect(new Set(names).size).toBe(flag.length);
          expect(names.filter((name) => !isOwnName(name))).toEqual([]);
          for (const name of names) expect(name).toMatch(/^([a-z]+[ -])*[a-z]+$/);
          expect(nameColours([...flag].reverse(), [...shares].reverse())).toEqual([...names].reverse());
          for (const [index, hex] of flag.entries()) {
            const isLargest = flag.every(
              (other, at) =>
                nameColour(other) !== nameColour(hex) ||
                at === index ||
                (shares[at] ?? 0) < (shares[index] ?? 0),
            );
            if (isLargest) expect(names[index]).toBe(nameColour(hex));
          }
        },
      ),
    );
  });

  test("darker is darker, and lighter lighter, than the plain name beside it", () => {
    const lightness = (hex: Hex): number => oklchOf(linearOf(hex)).lightness01;
    fc.assert(
      fc.property(hexes, hexes, (a, b) => {
        const [nameA = "", nameB = ""] = nameColours([a, b], [2, 1]);
        const word = nameA.split(" ").at(-1);
        if ([`darker ${word}`, `very dark ${word}`].includes(nameB))
          expect(lightness(b)).toBeLessThan(lightness(a));
        if ([`lighter ${word}`, `very light ${word}`].includes(nameB))
          expect(lightness(b)).toBeGreaterThan(lightness(a));
      }),
      { numRuns: 1000 },
    );
  });

  test("a replacement has the name of another colour of the flag only where it is that colour", () => {
    fc.assert(
      fc.property(fc.uniqueArray(hexes, { minLength: 1, maxLength: 6 }), hexes, (flag, hex) => {
        const names = nameColours(
          flag,
          flag.map(() => 1),
        );
        const [today, ...others] = flag.map((one, index) => ({ hex: one, name: names[index] ?? "" }));
        if (today === undefined) return;
        const name = nameReplacement(hex, today, others);
        for (const colour of [today, ...others]) expect(colour.name === name).toBe(colour.hex === hex);
      }),
      { numRuns: 500 },
    );
  });
});
