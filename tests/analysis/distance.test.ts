// The distance view through the whole of a measurement. Lengths and shares by geometry, within 1 % and 0.2 points; the
// thinnest part that is seen is D · tan 1′ flag heights: 0.01164 (2.3 units) from 40, 0.00582 (1.2 units) from 20.
import { describe, expect, test } from "vitest";
import { sample } from "../sample.ts";
import {
  blue,
  box,
  disc,
  edgeOf,
  field,
  lengthOf,
  lookFrom,
  oneArcminute,
  pairsOf,
  red,
  see,
  stripe,
  vanishedOf,
  white,
  yellow,
} from "./sight.ts";

/** 0.8 % and 3 % of the height. */
const thin = 1.6;
const wide = 6;

/** Within `percent` of a length. */
function near(measured: number | undefined, length: number, percent = 1): void {
  expect(Math.abs((measured ?? Number.NaN) / length - 1)).toBeLessThan(percent / 100);
}

describe("an outline of 0.8 % of the height", () => {
  const outlined = `${field(red)}<circle cx="150" cy="100" r="50" fill="${blue}" stroke="${white}" stroke-width="${thin}"/>`;

  test("stays at 20: two edges, on either side of it", async () => {
    const measure = await see(outlined, { distance: 20 });
    expect(pairsOf(measure)).toEqual([`${blue}/${white}`, `${red}/${white}`]);
    near(lengthOf(measure, blue, white), (2 * Math.PI * 49.2) / 200);
    near(lengthOf(measure, red, white), (2 * Math.PI * 50.8) / 200);
    expect(vanishedOf(measure)).toEqual([]);
  });

  test("vanishes at 40: what it parted meets along its middle", async () => {
    const measure = await see(outlined);
    expect(pairsOf(measure)).toEqual([`${red}/${blue}`]);
    near(lengthOf(measure, red, blue), (2 * Math.PI * 50) / 200);
  });

  test("keeps its row and its share of the full drawing when it is gone", async () => {
    const measure = await see(outlined);
    expect(vanishedOf(measure)).toEqual([white]);
    const share = (Math.PI * (50.8 ** 2 - 49.2 ** 2)) / 60_000;
    expect(Math.abs((measure.colours[2]?.share ?? 0) - share)).toBeLessThan(0.002);
    expect(measure.colours.map(({ hex }) => hex)).toEqual([red, blue, white]);
  });

  test("is halved between its two sides", async () => {
    const { shareOf } = await lookFrom(outlined);
    expect(Math.abs(shareOf(blue) - (Math.PI * 50 ** 2) / 60_000)).toBeLessThan(0.002);
    expect(shareOf(white)).toBe(0);
  });
});

describe("a line between two fields", () => {
  const parted = (width: number): string =>
    field(red) + box(150, 0, 150, 200, blue) + box(150 - width / 2, 0, width, 200, white, "line");

  test("a fimbriation of 3 % stays at 40, and the fields do not meet", async () => {
    const measure = await see(parted(wide));
    expect(pairsOf(measure)).toEqual([`${blue}/${white}`, `${red}/${white}`]);
    near(lengthOf(measure, red, white), 1);
    near(lengthOf(measure, blue, white), 1);
    expect(edgeOf(measure, red, blue)).toBeUndefined();
  });

  test("one of 0.8 % vanishes, and they do", async () => {
    const measure = await see(parted(thin));
    expect(pairsOf(measure)).toHaveLength(1);
    near(lengthOf(measure, red, blue), 1);
    expect(vanishedOf(measure)).toEqual([white]);
  });

  test("the further away, the wider the line that vanishes: 3 % lies between 80 and 160", async () => {
    // 80 · tan 1′ = 0.0233, 160 · tan 1′ = 0.0465.
    expect(vanishedOf(await see(parted(wide), { distance: 80 }))).toEqual([]);
    expect(vanishedOf(await see(parted(wide), { distance: 160 }))).toEqual([white]);
  });

  test("no share of any colour depends on the distance", async () => {
    const sharesAt = async (distance: number) =>
      (await see(parted(thin), { distance })).colours.map(({ id, share }) => [id, share]);
    const full = await sharesAt(0);
    for (const distance of [20, 40, 160]) expect(await sharesAt(distance)).toEqual(full);
  });
});

describe("parts of one region", () => {
  // A star of five points, 0.35 high from its middle: 10 sides of 0.7265 R.
  const points = Array.from({ length: 10 }, (_, index) => {
    const radius = index % 2 === 0 ? 70 : 70 * 0.381966;
    const angle = (index * Math.PI) / 5;
    return `${150 + radius * Math.sin(angle)},${100 - radius * Math.cos(angle)}`;
  }).join(" ");
  const star = `${field(blue)}<polygon points="${points}" fill="${white}"/>`;

  test("a star whose points thin out loses its tips, not its body", async () => {
    // A disc as wide as t that touches both sides of a point of 36° has its centre t / (2 sin 18°) = 1.618 t from the
    // tip, and keeps what lies within t / √2 of it: of each side 1.539 t − 0.5 t = 1.039 t goes, 0.284 t² of each point.
    const t = 40 * oneArcminute * 200;
    const { colourAt, shareOf } = await lookFrom(star);
    expect(colourAt(150, 30 + 0.6 * t)).toBe(blue);
    expect(colourAt(150, 30 + 1.5 * t)).toBe(white);
    const area = 5 * 70 * 70 * 0.381966 * Math.sin(Math.PI / 5);
    expect(shareOf(white) / ((area - 5 * 0.284 * t * t) / 60_000)).toBeCloseTo(1, 2);
  });

  test("its outline is shorter by what the tips had", async () => {
    // Of each point two sides of 1.039 t go, and an arc of 54° with the radius t / √2 comes: 1.41 t less, five times.
    const t = 40 * oneArcminute;
    const full = lengthOf(await see(star, { distance: 0 }), blue, white);
    const seen = lengthOf(await see(star), blue, white);
    near(full, 10 * 0.7265 * 0.35, 3);
    expect((full - seen) / (5 * 1.41 * t)).toBeGreaterThan(0.5);
    expect((full - seen) / (5 * 1.41 * t)).toBeLessThan(1.5);
  });

  test("a thin part goes while the thick part of the same region stays", async () => {
    const kite = field(blue) + disc(100, 100, 40, white) + box(100, 100 - thin / 2, 180, thin, white);
    // Two sides of the tail from the disc to its end: 2 · 140 units.
    near(lengthOf(await see(kite, { distance: 20 }), blue, white), (2 * Math.PI * 40 + 280) / 200, 1.5);
    near(lengthOf(await see(kite), blue, white), (2 * Math.PI * 40) / 200, 1.5);
    const { colourAt } = await lookFrom(kite);
    expect([colourAt(100, 100), colourAt(200, 100)]).toEqual([white, blue]);
  });

  test("a bridge between two discs goes, and leaves two discs", async () => {
    const dumbbell =
      field(blue) +
      disc(80, 100, 30, white) +
      disc(220, 100, 30, white, "e") +
      box(80, 100 - thin / 2, 140, thin, white);
    near(lengthOf(await see(dumbbell), blue, white), (4 * Math.PI * 30) / 200, 1.5);
  });
});

describe("what vanishes goes to what remains beside it", () => {
  test("a speck on a stripe to the stripe, not to the largest paint", async () => {
    const { shareOf, table } = await lookFrom(
      field(white) + stripe(150, 50, blue) + disc(150, 175, 1, yellow),
    );
    expect(shareOf(blue)).toBeCloseTo(0.25, 3);
    expect(shareOf(white)).toBeCloseTo(0.75, 3);
    expect(table.paints.map(({ vanishes }) => vanishes)).toEqual([false, false, true]);
  });

  test("a thin line across two fields to each field where it crosses it", async () => {
    const { colourAt, shareOf } = await lookFrom(
      field(white) + box(0, 0, 150, 200, blue) + stripe(100 - thin / 2, thin, yellow),
    );
    expect([colourAt(75, 100), colourAt(225, 100)]).toEqual([blue, white]);
    expect(shareOf(blue)).toBeCloseTo(0.5, 3);
  });

  test("a thin stripe at the border to the paint inside of it, and no edge is left", async () => {
    for (const strip of [
      stripe(200 - thin, thin, red),
      stripe(0, thin, red),
      box(0, 0, thin, 200, red),
      box(300 - thin, 0, thin, 200, red),
    ]) {
      const measure = await see(field(white) + strip);
      expect(measure).toMatchObject({ edges: [], clarity: null, clearEdgeShare: null, weakestEdge: null });
      expect(vanishedOf(measure)).toEqual([red]);
      expect((await see(field(white) + strip, { distance: 20 })).edges).toHaveLength(1);
    }
  });

  test("a stripe of 3 % at the border stays", async () => {
    near(lengthOf(await see(field(white) + stripe(200 - wide, wide, red)), red, white), 1.5);
  });
});

describe("straight and slanted", () => {
  test("squares, cantons and crosses keep their right-angled corners", async () => {
    const drawing =
      field(blue) +
      box(0, 0, 100, 80, white, "canton") +
      box(200, 100, 50, 50, red, "square") +
      box(120, 0, 5, 200, yellow, "pale") +
      box(120, 140, 180, 5, yellow, "bar") +
      box(20, 100, 3, 3, red, "small");
    expect((await lookFrom(drawing)).isFull).toBe(true);
    const measure = await see(drawing, { distance: 40 });
    expect(measure.edges).toEqual((await see(drawing, { distance: 0 })).edges);
  });

  // The measuring picture is 720 pixels high: the thinnest part that is seen from 40 has 40 · tan 1′ · 720 = 8.38 of them.
  const limit = 40 * oneArcminute * 720;
  const slanted = (pixels: number, degrees: number): string =>
    `${field(blue)}<rect x="-100" y="${100 - pixels / 7.2}" width="500" height="${pixels / 3.6}" transform="rotate(${degrees} 150 100)" fill="${white}"/>`;

  test.each([0, 90])("a straight stripe (%d degrees) of 8 pixels goes, of 9 stays", async (degrees) => {
    expect((await lookFrom(slanted(8, degrees))).shareOf(white)).toBe(0);
    expect((await lookFrom(slanted(9, degrees))).isFull).toBe(true);
  });

  test.each(sample([3, 10, 18.4, 26.6, 33.7, 45, 56.3, 60, 71, 80, 87, -30], 3))(
    "a stripe at %d degrees goes at a tenth less and stays at a tenth more",
    async (degrees) => {
      const leftOf = async (pixels: number): Promise<number> => {
        const full = await lookFrom(slanted(pixels, degrees), { distance: 0 });
        return (await lookFrom(slanted(pixels, degrees))).shareOf(white) / full.shareOf(white);
      };
      expect(await leftOf(0.9 * limit)).toBeLessThan(0.5);
      expect(await leftOf(1.1 * limit)).toBeGreaterThan(0.5);
    },
  );
});

describe("a transparent ground", () => {
  const round = (rim: number): string => disc(150, 100, 99, white, "rim") + disc(150, 100, 99 - rim, blue);

  test("bounds a paint: a thin rim of a round flag goes to the paint inside", async () => {
    const measure = await see(round(thin));
    expect(measure.edges).toEqual([]);
    expect(vanishedOf(measure)).toEqual([white]);
    const { shareOf } = await lookFrom(round(thin));
    expect(shareOf(blue)).toBeCloseTo((Math.PI * 99 ** 2) / 60_000, 2);
  });

  test("a rim of 3 % stays", async () => {
    near(lengthOf(await see(round(wide)), white, blue), (2 * Math.PI * 93) / 200, 1.5);
  });

  test("a gap that is seen stays a gap: transparent parts take nothing", async () => {
    const measure = await see(box(0, 0, 150 - wide, 200, red) + box(150, 0, 150, 200, blue, "fly"));
    expect(measure.edges).toEqual([]);
    expect(measure.colours.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });
});

describe("nothing to give to", () => {
  test("a flag in which everything is thin stays as it is", async () => {
    const stripes = Array.from({ length: 125 }, (_, index) =>
      stripe(thin * index, thin, index % 2 === 0 ? red : white),
    ).join("");
    expect((await lookFrom(stripes)).isFull).toBe(true);
    const measure = await see(stripes);
    near(lengthOf(measure, red, white), 124 * 1.5);
    expect(vanishedOf(measure)).toEqual([]);
  });

  test("a flag of one colour stays as it is", async () => {
    expect((await see(field(red), { distance: 1000 })).colours).toMatchObject([
      { hex: red, share: 1, vanishes: false },
    ]);
  });
});

describe("no distance", () => {
  test("from 0 it is the full drawing, down to the thinnest line", async () => {
    const drawing = field(red) + stripe(100, 0.6, white) + disc(150, 50, 0.6, blue);
    const look = await lookFrom(drawing, { distance: 0 });
    expect(look.isFull).toBe(true);
    const measure = await see(drawing, { distance: 0 });
    near(lengthOf(measure, red, white), 3);
    expect(vanishedOf(measure)).toEqual([]);
    expect(measure.distance).toBe(0);
  });
});

// Greys have no hue, so ΔE00 is ΔL over 1 + 0.015 (L − 50)² / √(20 + (L − 50)²) of the mean L (CIEDE2000, S_L).
// #777777, #818181 and #8b8b8b have L 50.0, 54.0 and 57.9: 3.9, 3.7 and (both steps) 7.5 apart.
describe("near-equal paints", () => {
  const [dark, middle, light] = ["#777777", "#818181", "#8b8b8b"];

  test("are joined to the larger, without chains, and stay in the colours table", async () => {
    const measure = await see(field(dark) + stripe(100, 60, middle) + stripe(160, 40, light));
    // Middle is one with dark; light is near middle, which is joined itself, so light stands alone.
    expect(pairsOf(measure)).toEqual([`${dark}/${light}`]);
    near(lengthOf(measure, dark, light), 1.5);
    expect(measure.colours.map(({ hex, vanishes }) => [hex, vanishes])).toEqual([
      [dark, false],
      [middle, false],
      [light, false],
    ]);
    for (const [index, share] of [0.5, 0.3, 0.2].entries())
      expect(measure.colours[index]?.share).toBeCloseTo(share, 3);
  });

  test("the larger decides: with the middle shade largest all three are one", async () => {
    const measure = await see(field(middle) + stripe(120, 40, dark) + stripe(160, 40, light));
    expect(measure.edges).toEqual([]);
  });

  test("are joined before thin parts vanish: shading in slices is one thing", async () => {
    // Four slices of 0.5 %, each too thin at 40; together 2 %.
    const slices = [0, 1, 2, 3]
      .map((index) => stripe(100 + index, 1, index % 2 === 0 ? dark : middle))
      .join("");
    const measure = await see(field(white) + slices);
    expect(measure.edges).toHaveLength(1);
    near(measure.edges[0]?.length, 3);
    expect(vanishedOf(measure)).toEqual([]);
  });

  test("vanish together where both together are thin", async () => {
    const slices = stripe(100, 0.8, dark) + stripe(100.8, 0.8, middle);
    expect([...vanishedOf(await see(field(white) + slices))].sort()).toEqual([dark, middle]);
  });

  test("paints just too far apart are not joined", async () => {
    // #777777 and #858585, L 50.0 and 55.6: ΔE00 5.4.
    expect((await see(field("#777777") + stripe(100, 60, "#858585"))).edges).toHaveLength(1);
  });
});

describe("near the limit of sight", () => {
  const warned = async (pixels: number, distance: number): Promise<boolean> => {
    const { warnings } = await see(field(red) + stripe(100, pixels / 3.6, white), { distance });
    return warnings.some((doubt) => doubt.about === "nearLimit" && doubt.names.includes("white"));
  };

  // 100 · tan 1′ · 720 = 20.9 pixels: from 18.9 to 23.0.
  test.each([
    [18, false],
    [19, true],
    [20, true],
    [21, true],
    [22, true],
    [24, false],
    [60, false],
    [5, false],
  ])("a stripe of %i pixels from 100: %s", async (pixels, is) => {
    expect(await warned(pixels, 100)).toBe(is);
  });

  // 40 · tan 1′ · 720 = 8.4 pixels: from 7.5 to 9.2.
  test.each([
    [6, false],
    [7, false],
    [8, true],
    [9, true],
    [10, false],
  ])("a stripe of %i pixels from 40: %s", async (pixels, is) => {
    expect(await warned(pixels, 40)).toBe(is);
  });

  test("the full drawing has no limit", async () => {
    for (const pixels of [1, 2, 3]) expect(await warned(pixels, 0)).toBe(false);
  });
});

describe("a hairline of transparency", () => {
  // 0.4 of 200 units, 1.4 pixels of the measuring picture.
  const stripes = box(0, 0, 300, 100, red) + box(0, 100.4, 300, 99.6, white, "below");
  const hole = "M0 0H300V200H0Z M99.6 100a50.4 50.4 0 1 0 100.8 0a50.4 50.4 0 1 0-100.8 0";
  const charged = `<path fill-rule="evenodd" fill="${red}" d="${hole}"/>${disc(150, 100, 50, white)}`;

  test("parts nothing from 40: the edge is that of stripes that meet", async () => {
    const measure = await see(stripes);
    near(lengthOf(measure, red, white), 1.5);
    expect(measure.clarity).toBe(100);
  });

  test("is seen from no distance: there nothing meets", async () => {
    expect((await see(stripes, { distance: 0 })).edges).toEqual([]);
  });

  test("around a charge leaves it its edge, and the charge is the focus", async () => {
    const measure = await see(charged);
    near(lengthOf(measure, red, white), (2 * Math.PI * 50.2) / 200);
    expect(measure.focus.source).toBe("found");
    expect(Math.abs(measure.focus.share - (Math.PI * 50.2 ** 2) / 60_000)).toBeLessThan(0.002);
    expect(measure.focus.lastsTo).toBe((await see(field(red) + disc(150, 100, 50.2, white))).focus.lastsTo);
  });

  test("is no colour, so shares are of the full drawing", async () => {
    const { colours } = await see(stripes);
    expect(Math.abs((colours.find(({ hex }) => hex === red)?.share ?? 0) - 100 / 199.6)).toBeLessThan(0.001);
  });
});
