// How far away what has to be seen lasts, where geometry says it beforehand. In units of the viewBox (200 to a height) the
// thinnest part that is seen is 0.58 from 10, 1.16 from 20, 2.33 from 40, 4.65 from 80, 9.31 from 160, 18.6 from 320; the
// largest piece has to span five times that: 2.91, 5.82, 11.6, 23.3, 46.5, 93.1.
import { describe, expect, test } from "vitest";
import { inspectDrawing } from "../../src/analysis/drawing/inspect.ts";
import type { Viewing } from "../../src/analysis/drawing/viewing.ts";
import { findLastsTo } from "../../src/measure/focusclarity.ts";
import { sample } from "../sample.ts";
import {
  black,
  blue,
  box,
  change,
  disc,
  field,
  type Look,
  red,
  resolve,
  see,
  stripe,
  white,
  yellow,
} from "./sight.ts";

const lastsTo = async (body: string, look: Look = {}) => (await see(body, look)).focus.lastsTo;

/** A bar, 160 units long, that touches nothing. */
const bar = (height: number, fill: string, y = 100, x = 70): string =>
  `<rect x="${x}" y="${y}" width="160" height="${height}" fill="${fill}"/>`;

describe("five arcminutes across", () => {
  // 2 r against the second row of figures above; from 320 a piece is known to a block of 8 pixels, 2.2 units.
  test.each([
    [50, 320],
    [44, 160],
    [24, 160],
    [22, 80],
    [12, 80],
    [11, 40],
    [6.2, 40],
  ])("a disc of radius %f, found and named: %d", async (radius, distance) => {
    const flag = field(white) + disc(150, 100, radius, red);
    expect(await lastsTo(flag)).toBe(distance);
    expect(await lastsTo(flag, { focus: { colour: red } })).toBe(distance);
  });

  // Under 0.2 % of the flag, a radius of 6.18, nothing is found.
  test.each([
    [5.5, 20],
    [3.1, 20],
    [2.7, 10],
  ])("a disc of radius %f, named: %d", async (radius, distance) => {
    const flag = field(white) + disc(150, 100, radius, red);
    expect(await lastsTo(flag)).toBeNull();
    expect(await lastsTo(flag, { focus: { colour: red } })).toBe(distance);
  });

  test("the longer side counts: a bar of 20 by 50 lasts like a disc of 50", async () => {
    expect(await lastsTo(field(white) + box(140, 75, 20, 50, red))).toBe(160);
    expect(await lastsTo(field(white) + box(125, 90, 50, 20, red))).toBe(160);
  });

  test("the largest piece counts, not how far apart the smallest are", async () => {
    // Twelve discs of radius 8 (16 across) in a ring of 140: each reaches 11.6 and not 23.3, though thick enough at 160.
    const ring = Array.from({ length: 12 }, (_, index) => {
      const turn = (index * Math.PI) / 6;
      return disc(150 + 70 * Math.cos(turn), 100 + 70 * Math.sin(turn), 8, red, `r${index}`);
    }).join("");
    expect(await lastsTo(field(white) + ring)).toBe(40);
    // One of radius 25 in the middle, 50 across, carries them on: from 160 all are thick enough.
    expect(await lastsTo(field(white) + ring + disc(150, 100, 25, red))).toBe(160);
  });

  test.each([
    [1.2, null],
    [1.7, 10],
  ])("a dot of radius %f, named: %s", async (radius, distance) => {
    expect(await lastsTo(field(white) + disc(150, 100, radius, red), { focus: { colour: red } })).toBe(
      distance,
    );
  });
});

describe("fails because too thin", () => {
  test.each([
    [3, 40],
    [7, 80],
    [14, 160],
    [30, 320],
    [80, 320],
  ])("a bar of %d units, found: %d", async (height, distance) => {
    expect(await lastsTo(field(white) + bar(height, red))).toBe(distance);
  });

  test.each([
    [0.3, null],
    [0.9, 10],
    [1.5, 20],
    [3, 40],
    [7, 80],
  ])("a bar of %d units, named: %d", async (height, distance) => {
    expect(await lastsTo(field(white) + bar(height, red), { focus: { colour: red } })).toBe(distance);
  });

  test("upright and slanted bars like lying ones", async () => {
    const turned = (degrees: number): string =>
      `${field(white)}<g transform="rotate(${degrees} 150 100)">${bar(7, red, 96.5)}</g>`;
    for (const degrees of [90, 30, 45, 66]) expect(await lastsTo(turned(degrees))).toBe(80);
  });

  test("a bar that has vanished from the gallery's distance is no focus; from nearer it is", async () => {
    const thin = field(white) + bar(1.5, red);
    expect((await see(thin, { distance: 40 })).focus).toMatchObject({
      source: "none",
      from: [],
      lastsTo: null,
    });
    expect(await lastsTo(thin, { distance: 20 })).toBe(20);
    expect(await lastsTo(thin, { distance: 0 })).toBe(20);
  });

  test("a focus lasts as far wherever the gallery stands", async () => {
    for (const distance of [0, 10, 40, 80, 160]) {
      expect(await lastsTo(field(white) + bar(7, red), { distance, focus: { colour: red } })).toBe(80);
    }
  });
});

describe("half of its area has to be left", () => {
  // The disc of radius 30 has 2,827 square units and spans 60, to 160; a bar of 4 has 640 and goes between 40 and 80.
  const withBars = (count: number): string =>
    field(white) +
    disc(40, 100, 30, red) +
    Array.from({ length: count }, (_, index) => bar(4, red, 20 + 36 * index, 80)).join("");

  test("four bars: 52 % is left", async () => {
    const { focus } = await see(withBars(4));
    expect(focus.lastsTo).toBe(160);
    expect(focus.from[3]?.left).toBeCloseTo(2827 / 5387, 1);
  });

  test("five bars: 47 % is left", async () => {
    expect(await lastsTo(withBars(5))).toBe(40);
  });

  test("found: half of what is seen from the gallery's distance; named: half of all", async () => {
    // Twelve bars of 1.6, 3,072 square units, have gone at 40: 48 % is left.
    const lined =
      field(white) +
      disc(40, 100, 30, red) +
      Array.from({ length: 12 }, (_, at) => bar(1.6, red, 12 + 15 * at, 80)).join("");
    expect(await lastsTo(lined)).toBe(160);
    expect(await lastsTo(lined, { focus: { colour: red } })).toBe(20);
  });
});

describe("contrast changes nothing", () => {
  test.each([
    ["white, clear", white, red],
    ["blue, weak", blue, red],
    ["white, weak", white, yellow],
    ["blue, strong", blue, yellow],
  ])("a disc and a bar on %s", async (_, ground, charge) => {
    expect(await lastsTo(field(ground) + disc(150, 100, 50, charge))).toBe(320);
    expect(await lastsTo(field(ground) + bar(7, charge))).toBe(80);
  });

  test("what lies far from the charge, and at the border, changes nothing", async () => {
    const rest = stripe(0, 1, blue) + stripe(1, 1, yellow) + stripe(190, 10, blue);
    for (const [height, distance] of [
      [3, 40],
      [7, 80],
      [30, 320],
    ] as const) {
      expect(await lastsTo(field(white) + rest + bar(height, red))).toBe(distance);
    }
  });
});

test("a charge close to the border", async () => {
  // 4 units of white, seen at 40 and gone at 80, part it from the border; 7 wide it goes at 160.
  expect(await lastsTo(`${field(white)}<rect x="4" y="60" width="7" height="80" fill="${red}"/>`)).toBe(80);
});

test("two charges of one paint last as each of them does: the gap between them goes, and then they do", async () => {
  // The gap of 4 goes from 80 on; bars of 14 go at 320.
  expect(await lastsTo(field(white) + bar(14, red, 90) + bar(14, red, 108))).toBe(160);
});

test("no focus is a fact of its own; a focus may last to no step", async () => {
  expect((await see(field(white) + stripe(100, 100, red))).focus).toMatchObject({
    source: "none",
    lastsTo: null,
  });
  expect((await see(field(white) + bar(0.3, red), { focus: { colour: red } })).focus).toMatchObject({
    source: "named",
    lastsTo: null,
    from: expect.objectContaining({ length: 6 }),
  });
});

describe("focus clarity at each step", () => {
  /** Clarity from 10, 20 … 320, in percent to one decimal. */
  const claritiesOf = async (body: string) =>
    (await see(body)).focus.from.map(({ clarity }) =>
      clarity === null ? null : Math.round(10 * clarity) / 10,
    );
  /** A red disc of radius 50 with a ring around it. */
  const ringed = (ground: string, ring: string, width: number) =>
    field(ground) + disc(150, 100, 50 + width, ring) + disc(150, 100, 50, red, "e");

  // White is clear of red and of blue; where the ring is too thin to be seen red meets blue, 24.297 / 45 = 54.0 %.
  test.each([
    [3, [100, 100, 100, 54, 54, 54]],
    [7, [100, 100, 100, 100, 54, 54]],
    [30, [100, 100, 100, 100, 100, 100]],
  ])("a white fimbriation of %d units on blue", async (width, clarities) => {
    expect(await claritiesOf(ringed(blue, white, width))).toEqual(clarities);
    expect(await lastsTo(ringed(blue, white, width))).toBe(320);
  });

  test("a ring that hides a clear disc: clarity rises with the distance", async () => {
    // Yellow on red is clear, on white 3.816 / 45 = 8.48 %: (50 + 57 · 0.0848) / 107 = 51.2 %. From 160 on red on white.
    const clarities = await claritiesOf(ringed(white, yellow, 7));
    for (const clarity of clarities.slice(0, 4)) expect(Math.abs((clarity ?? 0) - 51.2)).toBeLessThan(0.5);
    expect(clarities.slice(4)).toEqual([100, 100]);
  });

  test("half on white, half on blue", async () => {
    // (1 + 0.540) / 2 along half a circle each.
    const half = field(white) + box(150, 0, 150, 200, blue) + disc(150, 100, 50, red);
    for (const clarity of await claritiesOf(half)) expect(Math.abs((clarity ?? 0) - 77)).toBeLessThan(0.8);
    const { from } = (await see(half)).focus;
    for (const { outlineClear } of from) expect(Math.abs((outlineClear ?? 0) - 0.5)).toBeLessThan(0.02);
  });

  test("none where nothing of it is left", async () => {
    expect(await claritiesOf(field(white) + bar(7, red))).toEqual([100, 100, 100, 100, null, null]);
  });
});

describe("before and after", () => {
  const lasts = async (body: string, what: Parameters<typeof change>[1], look: Look = {}) => {
    const { before, after } = await change(body, what, look);
    expect(after.focus.from.map(({ left }) => left)).toEqual(before.focus.from.map(({ left }) => left));
    return [before.focus.lastsTo, after.focus.lastsTo];
  };
  const barred = (fill: string): string => field(white) + bar(7, fill);
  const discs = [60, 120, 180, 240].map((x, index) => disc(x, 100, 20, red, `d${index}`)).join("");

  test("geometry is one, whatever becomes of the colours", async () => {
    expect(await lasts(barred(red), { replace: red, with: yellow })).toEqual([80, 80]);
    expect(await lasts(barred(yellow), { replace: yellow, with: blue })).toEqual([80, 80]);
    expect(await lasts(field(blue) + bar(7, red), { replace: blue, with: white })).toEqual([80, 80]);
    // Merged into its field.
    expect(await lasts(barred(red), { replace: red, with: white })).toEqual([80, 80]);
    // Four discs, 40 across.
    const flag = field(white) + discs;
    expect(await lasts(flag, { replace: red, with: white, only: "#d0, #d1" })).toEqual([80, 80]);
  });

  test("the focus and its share are those of the original; its clarity is that of the change", async () => {
    const { before, after } = await change(barred(red), { replace: red, with: white });
    expect(after.focus).toMatchObject({ source: "found", share: before.focus.share, clarity: 0 });
    expect(before.focus.clarity).toBe(100);
    expect(after.focus.from.slice(0, 4).map(({ clarity }) => clarity)).toEqual([0, 0, 0, 0]);
  });

  test("a change of one part only: a quarter of the outline", async () => {
    // Yellow on white 8.48 %; three of four discs stay clear.
    const { after } = await change(field(white) + discs, { replace: red, with: yellow, only: "#d0" });
    for (const { clarity } of after.focus.from.slice(0, 4))
      expect(Math.abs((clarity ?? 0) - 77.1)).toBeLessThan(0.5);
  });

  test("a part that comes off its own paint: an edge after, none before", async () => {
    // 80 across: 160.
    const flag = field(red) + disc(150, 100, 40, red);
    const compared = await change(
      flag,
      { replace: red, with: white, only: "#d" },
      { focus: { select: "#d" } },
    );
    expect(compared.after.focus).toMatchObject({ source: "named", lastsTo: 160, clarity: 100 });
    expect(compared.before.focus).toMatchObject({ source: "named", lastsTo: 160, clarity: null });
    expect(compared.edges.map(({ outcome, contrast }) => [outcome, contrast[0]])).toEqual([["parted", null]]);
  });
});

/** A dozen drawings, none of which is near a limit. */
const dozen: readonly (readonly [string, string])[] = [
  ["disc of 60", field(white) + disc(150, 100, 60, red)],
  ["disc of 36", field(blue) + disc(150, 100, 36, yellow)],
  ["disc of 17", field(white) + disc(150, 100, 17, red)],
  ["disc of 8", field(white) + disc(150, 100, 8, red)],
  ["bar of 3.3", field(white) + bar(3.3, red)],
  ["bar of 6.5", field(white) + bar(6.5, red)],
  ["slanted bar of 13", `${field(white)}<g transform="rotate(33 150 100)">${bar(13, red)}</g>`],
  ["fimbriated disc", field(blue) + disc(150, 100, 56, white) + disc(150, 100, 49, red, "e")],
  [
    "ring of 12",
    `${field(white)}<circle cx="150" cy="100" r="60" fill="none" stroke="${red}" stroke-width="12"/>`,
  ],
  ["disc and bars", field(white) + disc(40, 100, 30, red) + bar(3.4, red, 40, 80) + bar(3.4, red, 150, 80)],
  [
    "star",
    `${field(blue)}<path fill="${white}" d="M150 30 L191.1 156.6 L83.4 78.4 L216.6 78.4 L108.9 156.6 Z"/>`,
  ],
  [
    "outlined disc in its own paint",
    `${field(yellow)}<circle cx="150" cy="100" r="52" fill="${yellow}" stroke="${black}" stroke-width="5"/>`,
  ],
];

describe("whatever the measuring size", () => {
  test.each(sample(dozen, 3))("%s: 720 and 1440 pixels", async (_, body) => {
    const stepsAt = async (heightPixels: number) => {
      const viewing: Viewing = { distance: 40, heightPixels, isBrief: true };
      const { steps } = (await inspectDrawing(resolve(body), viewing)).table.focus;
      return steps;
    };
    const [one, other] = [await stepsAt(720), await stepsAt(1440)];
    expect(one).toHaveLength(6);
    expect(findLastsTo(other)).toBe(findLastsTo(one));
    for (const [index, step] of one.entries()) {
      const twin = other[index];
      expect(Math.abs(step.left - (twin?.left ?? 0))).toBeLessThan(0.06);
      // Blocks of a map, 8 pixels of 720 at most.
      expect(Math.abs(step.span - (twin?.span ?? 0))).toBeLessThan(0.03);
    }
  });

  test.each(sample(dozen, 3))("%s: what is left never rises", async (_, body) => {
    for (const look of [{}, { distance: 0 }, { distance: 160 }] as const) {
      const left = (await see(body, look)).focus.from.map((step) => step.left);
      for (const [index, share] of left.entries()) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(left[index - 1] ?? 1);
      }
    }
  });
});
