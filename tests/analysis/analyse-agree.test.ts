// What a comparison says of the redesign is what a measurement of the redesign's file says, with the same focus: lengths
// within 1 %, clarity within a point. Merged edges aside: they count in the comparison and are no edges of the file.
import { describe, expect, test } from "vitest";
import { compareDrawing } from "../../src/analysis/analyse.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import type { Change } from "../../src/content/study/study.ts";
import { blue, box, disc, draw, field, type Look, red, see, stripe, white, yellow } from "./sight.ts";

/** Near-equal greys, ΔE00 3.9 apart (ΔL 4.0 over S_L 1.01), and a red beside #ff0000. */
const [dark, middle, nearRed] = ["#777777", "#818181", "#f40000"] as const;
const line = (width: number, fill: string, id = "l"): string => box(150 - width / 2, 0, width, 200, fill, id);

const drawings: readonly (readonly [string, string, Change, Look])[] = [
  ["a disc", field(blue) + disc(150, 100, 50, red), { replace: red, with: yellow }, {}],
  [
    "one of two discs",
    field(blue) + disc(80, 100, 40, red, "one") + disc(220, 100, 40, red),
    { replace: red, with: yellow, only: "#one" },
    {},
  ],
  [
    "a thin line of the field's paint, parted: 1.6 is not seen",
    field(red) + line(1.6, red) + disc(60, 60, 30, white),
    { replace: red, with: yellow, only: "#l" },
    {},
  ],
  [
    "a line of the field's paint that is wide enough",
    field(red) + line(9, red) + disc(60, 60, 30, white),
    { replace: red, with: yellow, only: "#l" },
    {},
  ],
  [
    "a thin outline of the charge's own paint, parted",
    `${field(blue)}${disc(150, 100, 50, red)}<circle id="o" cx="150" cy="100" r="50" fill="none" stroke="${red}" stroke-width="1.8"/>`,
    { replace: red, with: white, only: "#o" },
    {},
  ],
  [
    "near-equal greys of which one changes",
    field(white) + stripe(80, 50, dark) + stripe(130, 70, middle),
    { replace: middle, with: blue },
    {},
  ],
  [
    "slices of near-equal greys, each too thin once they are two",
    field(white) + stripe(100, 1.6, dark) + stripe(101.6, 1.6, middle) + disc(150, 50, 30, red),
    { replace: middle, with: blue },
    {},
  ],
  [
    "a near-equal red within a red disc",
    field(blue) + disc(150, 100, 60, red) + disc(150, 100, 20, nearRed, "e"),
    { replace: nearRed, with: white },
    {},
  ],
  [
    "slivers along a stripe",
    field(white) + stripe(100, 100, red) + box(100, 99, 80, 3, blue) + box(220, 98, 40, 2, blue, "c"),
    { replace: red, with: yellow },
    {},
  ],
  [
    "a fimbriation",
    field(blue) + line(8, white) + box(154, 0, 146, 200, red),
    { replace: white, with: yellow },
    {},
  ],
  [
    "a named focus, by its colour, of which a part changes",
    field(white) + disc(80, 100, 40, red, "one") + box(180, 60, 120, 80, red),
    { replace: red, with: blue, only: "#one" },
    { focus: { select: "#one" } },
  ],
  [
    "a named focus whose field changes",
    field(blue) + stripe(150, 50, white) + disc(150, 100, 40, red),
    { replace: blue, with: yellow },
    { focus: { select: "#d" } },
  ],
  [
    "a disc over two fields",
    field(white) + box(150, 0, 150, 200, blue) + disc(150, 100, 50, red) + disc(150, 100, 20, yellow, "e"),
    { replace: white, with: "#00aa00" },
    {},
  ],
];

describe("a comparison and a measurement of the redesign's file", () => {
  test.each(drawings)("%s", async (_, body, what, look) => {
    const options = { cloth: defaultCloth, distance: 40, palette: new Map<string, string>(), ...look };
    const { value, problems } = await compareDrawing("a.svg", draw(body), what, options);
    if (value === undefined) throw new Error(problems.map(({ reason }) => reason).join(" "));
    const { after, edges } = value.comparison;
    expect(edges.map(({ outcome }) => outcome)).not.toContain("merged");
    // Shapes keep their ids in the drawing that is published, or the focus could not be named there.
    const measured = await see(new TextEncoder().encode(value.redesign), look);
    /** Length and focus length of each pair of colours: the file knows no part of a paint, only colours. */
    const lengthsIn = ({ colours, edges: all }: Pick<typeof after, "colours" | "edges">) => {
      const hexOf = (id: string) => colours.find((colour) => colour.id === id)?.hex ?? id;
      const sums = new Map<string, [number, number]>();
      for (const { a, b, length, focusLength } of all) {
        const pair = [hexOf(a), hexOf(b)].sort().join(" ");
        const [sum, focus] = sums.get(pair) ?? [0, 0];
        sums.set(pair, [sum + length, focus + focusLength]);
      }
      return sums;
    };
    const [compared, read] = [lengthsIn(after), lengthsIn(measured)];
    expect([...compared.keys()].sort()).toEqual([...read.keys()].sort());
    for (const [pair, [length, focusLength]] of compared) {
      const [other = Number.NaN, otherFocus = Number.NaN] = read.get(pair) ?? [];
      expect(Math.abs(length / other - 1)).toBeLessThan(0.01);
      expect(Math.abs(focusLength - otherFocus)).toBeLessThan(0.01 * other + 1e-9);
    }
    if (after.clarity === null) expect(measured.clarity).toBeNull();
    else {
      expect(Math.abs(after.clarity - (measured.clarity ?? Number.NaN))).toBeLessThan(1);
      expect(Math.abs((after.strength ?? 0) - (measured.strength ?? Number.NaN))).toBeLessThan(1);
    }
  });
});
