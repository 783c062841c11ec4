// From how far away the focus can be made out, where geometry and contrast say it beforehand. The thinnest part seen, in
// units of the viewBox (200 to a height): 0.58 from 10, 1.16 from 20, 2.33 from 40, 4.65 from 80, 9.3 from 160, 18.6 from 320.
import { describe, expect, test } from "vitest";
import { blue, box, change, disc, field, type Look, red, see, stripe, white, yellow } from "./sight.ts";

const readsTo = async (body: string, look: Look = {}) => (await see(body, look)).focus.readsTo;

/** A bar that touches nothing. */
const bar = (height: number, fill: string, y = 100): string =>
  `<rect x="70" y="${y}" width="160" height="${height}" fill="${fill}"/>`;

describe("fails because too thin", () => {
  test.each([
    [3, 40],
    [7, 80],
    [14, 160],
    [30, 320],
    [80, 320],
  ])("a bar of %d units, found: %d", async (height, distance) => {
    expect(await readsTo(field(white) + bar(height, red))).toBe(distance);
  });

  test.each([
    [0.3, null],
    [0.9, 10],
    [1.5, 20],
    [3, 40],
    [7, 80],
  ])("a bar of %d units, named: %d", async (height, distance) => {
    expect(await readsTo(field(white) + bar(height, red), { focus: { colour: red } })).toBe(distance);
  });

  test("upright and slanted bars like lying ones", async () => {
    const turned = (degrees: number): string =>
      `${field(white)}<g transform="rotate(${degrees} 150 100)">${bar(7, red, 96.5)}</g>`;
    for (const degrees of [90, 30, 45, 66]) expect(await readsTo(turned(degrees))).toBe(80);
  });

  test("a bar that has vanished from the gallery's distance is no focus; from nearer it is", async () => {
    const thin = field(white) + bar(1.5, red);
    expect(await readsTo(thin, { distance: 40 })).toBeNull();
    expect(await readsTo(thin, { distance: 20 })).toBe(20);
    expect(await readsTo(thin, { distance: 0 })).toBe(20);
  });

  test("a named focus reads to the same distance wherever the gallery stands", async () => {
    for (const distance of [0, 10, 40, 160]) {
      expect(await readsTo(field(white) + bar(7, red), { distance, focus: { colour: red } })).toBe(80);
    }
  });
});

describe("half of its area has to be left", () => {
  // The disc has 1,257 square units, a bar of 3 has 480 and goes between 40 and 80.
  const withBars = (count: number): string =>
    field(white) +
    disc(35, 100, 20, red) +
    Array.from({ length: count }, (_, index) => bar(3, red, 20 + 40 * index)).join("");

  test("two bars: 57 % is left, and the disc can be seen from everywhere", async () => {
    expect(await readsTo(withBars(2))).toBe(320);
  });

  test("three bars: 47 % is left", async () => {
    expect(await readsTo(withBars(3))).toBe(40);
  });

  test("found: half of what is seen from the gallery's distance; named: half of all", async () => {
    // Six bars of 1.6, 1,536 square units, have gone at 40 (0.8 %).
    const lined =
      field(white) +
      disc(35, 100, 20, red) +
      [0, 1, 2, 3, 4, 5].map((at) => bar(1.6, red, 15 + 30 * at)).join("");
    expect(await readsTo(lined)).toBe(320);
    expect(await readsTo(lined, { focus: { colour: red } })).toBe(20);
  });
});

describe("two thirds of its length have to be clear", () => {
  test.each([
    ["white, clear", white, red, 320],
    ["blue, weak", blue, red, null],
    ["white, weak", white, yellow, null],
    ["blue, strong", blue, yellow, 320],
  ])("a disc on %s", async (_, ground, charge, distance) => {
    expect(await readsTo(field(ground) + disc(150, 100, 50, charge))).toBe(distance);
  });

  test.each([
    // The blue part of the outline is acos(d / 50) of a half turn: 25 %, and 39 %.
    [35.36, 320],
    [17.4, null],
  ])("a disc over white and blue, blue from %d right of its middle: %d", async (away, distance) => {
    const flag = field(white) + box(150 + away, 0, 150 - away, 200, blue) + disc(150, 100, 50, red);
    expect(await readsTo(flag)).toBe(distance);
  });

  test.each([
    // A white line between red and blue (weak), gone where it is thinner than what is seen.
    [3, 40],
    [7, 80],
    [30, 320],
  ])("a fimbriation of %d units holds to %d", async (width, distance) => {
    expect(
      await readsTo(field(blue) + disc(150, 100, 40 + width, white) + disc(150, 100, 40, red, "e")),
    ).toBe(distance);
  });
});

test("what lies far from the charge, and at the border, changes nothing", async () => {
  const rest = stripe(0, 1, blue) + stripe(1, 1, yellow) + stripe(190, 10, blue);
  for (const [height, distance] of [
    [3, 40],
    [7, 80],
    [30, 320],
  ] as const) {
    expect(await readsTo(field(white) + rest + bar(height, red))).toBe(distance);
  }
});

test("a charge close to the border", async () => {
  // 4 units of white, seen at 40 and gone at 80, part it from the border.
  expect(await readsTo(`${field(white)}<rect x="4" y="60" width="7" height="80" fill="${red}"/>`)).toBe(80);
});

test("two charges of one paint grow together where the gap between them vanishes, and go when each is too thin", async () => {
  // The gap of 4 goes from 80 on; bars of 14 go at 320.
  expect(await readsTo(field(white) + bar(14, red, 90) + bar(14, red, 108))).toBe(160);
});

test("no focus, nothing to read", async () => {
  expect(await readsTo(field(white) + stripe(100, 100, red))).toBeNull();
});

describe("before and after", () => {
  const reads = async (body: string, what: Parameters<typeof change>[1], look: Look = {}) => {
    const { before, after } = await change(body, what, look);
    return [before.focus.readsTo, after.focus.readsTo];
  };
  const barred = (fill: string): string => field(white) + bar(7, fill);
  const discs = [60, 120, 180, 240].map((x, index) => disc(x, 100, 20, red, `d${index}`)).join("");

  test("a change to a weak colour takes it away, a change to a clear one gives it", async () => {
    expect(await reads(barred(red), { replace: red, with: yellow })).toEqual([80, null]);
    expect(await reads(barred(yellow), { replace: yellow, with: blue })).toEqual([null, 80]);
    expect(await reads(barred(red), { replace: red, with: blue })).toEqual([80, 80]);
  });

  test("a change of the field counts as much", async () => {
    expect(await reads(field(blue) + bar(7, red), { replace: blue, with: white })).toEqual([null, 80]);
  });

  test("a charge that merges into its field cannot be read: its edge counts 0", async () => {
    expect(await reads(barred(red), { replace: red, with: white })).toEqual([80, null]);
  });

  test("the focus and its share are those of the original, before and after", async () => {
    const { before, after } = await change(barred(red), { replace: red, with: white });
    expect(after.focus).toMatchObject({ source: "found", share: before.focus.share, clarity: 0 });
    expect(before.focus.clarity).toBe(100);
  });

  test("a change of one part only: three of four discs stay clear, two of four are too few", async () => {
    const flag = field(white) + discs;
    expect(await reads(flag, { replace: red, with: yellow, only: "#d0" })).toEqual([320, 320]);
    expect(await reads(flag, { replace: red, with: yellow, only: "#d0, #d1" })).toEqual([320, null]);
  });

  test("one part merges into the field: its outline counts, and counts 0", async () => {
    const flag = field(white) + discs;
    expect(await reads(flag, { replace: red, with: white, only: "#d0" })).toEqual([320, 320]);
    expect(await reads(flag, { replace: red, with: white, only: "#d0, #d1" })).toEqual([320, null]);
  });

  test("a part that comes off its own paint: an edge after, none before", async () => {
    const flag = field(red) + disc(150, 100, 40, red);
    const compared = await change(
      flag,
      { replace: red, with: white, only: "#d" },
      { focus: { select: "#d" } },
    );
    expect(compared.after.focus).toMatchObject({ source: "named", readsTo: 320, clarity: 100 });
    expect(compared.before.focus).toMatchObject({ source: "named", readsTo: null, clarity: null });
    expect(compared.edges.map(({ outcome, contrast }) => [outcome, contrast[0]])).toEqual([["parted", null]]);
  });

  test("a charge of two paints of which one merges with the other is still read by its outline", async () => {
    // Yellow within red on white: after red to yellow nothing of it is clear; after yellow to red all that is left is.
    const flag = field(white) + disc(150, 100, 60, red) + disc(150, 100, 15, yellow, "e");
    expect(await reads(flag, { replace: red, with: yellow })).toEqual([320, null]);
    // The merged outline of 15 counts 0: 60 of 75 is clear.
    expect(await reads(flag, { replace: yellow, with: red })).toEqual([320, 320]);
  });
});
