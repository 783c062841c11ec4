// What has to be seen: one drawing for each kind of charge, seen from 40 flag heights. Shares and lengths by geometry
// (0.2 points of share, 1 % of length), clarity by Σ (length + focusLength) · min(1, contrast / 45) ÷ Σ of the weights.
import { describe, expect, test } from "vitest";
import type { Measure } from "../../../src/measure/measurement.ts";
import {
  black,
  blue,
  box,
  contrasts,
  disc,
  draw,
  edgeOf,
  field,
  lookFrom,
  red,
  see,
  stripe,
  white,
  yellow,
} from "../sight.ts";

/** Area of a circle of this radius as a share of 300 × 200; length of a circle in flag heights. */
const areaOf = (radius: number): number => (Math.PI * radius ** 2) / 60_000;
const roundOf = (radius: number): number => (2 * Math.PI * radius) / 200;

function expectFocus({ focus }: Measure, source: string, share: number): void {
  expect(focus.source).toBe(source);
  expect(Math.abs(focus.share - share)).toBeLessThan(0.002);
}

/** Lengths of an edge, [all, beside the focus], in flag heights. */
function expectEdge(
  measure: Measure,
  one: string,
  other: string,
  length: number,
  focusLength = length,
): void {
  const edge = edgeOf(measure, one, other);
  expect(Math.abs((edge?.length ?? 0) / length - 1)).toBeLessThan(0.01);
  expect(Math.abs((edge?.focusLength ?? Number.NaN) - focusLength)).toBeLessThan(
    0.01 * Math.max(length, 0.5),
  );
}

/** Clarity in percent of edges `[length, focusLength, contrast]`. */
function clarityOf(...edges: readonly (readonly [number, number, number])[]): number {
  const weights = edges.map(([length, focusLength]) => length + focusLength);
  const seen = edges.map(([, , contrast], index) => (weights[index] ?? 0) * Math.min(1, contrast / 45));
  const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);
  return (100 * sum(seen)) / sum(weights);
}

describe("found", () => {
  test("a charge on a field: all of its outline is the focus", async () => {
    const measure = await see(field(white) + disc(150, 100, 50, red));
    expectFocus(measure, "found", areaOf(50));
    expectEdge(measure, white, red, roundOf(50));
    expect(measure.focus.clarity).toBe(100);
  });

  test("edges away from it are listed without it, and weigh half as much", async () => {
    // Yellow field, white stripe at its foot, blue disc: yellow / white 3.816, yellow / blue 74.4.
    const measure = await see(field(yellow) + stripe(160, 40, white) + disc(150, 80, 40, blue));
    expectFocus(measure, "found", areaOf(40));
    expectEdge(measure, yellow, white, 1.5, 0);
    expectEdge(measure, yellow, blue, roundOf(40));
    // (1.5 · 3.8156 / 45 + 2 · 1.2566 · 1) / (1.5 + 2 · 1.2566) = 65.79 %.
    expect(clarityOf([1.5, 0, 3.8156], [1.2566, 1.2566, 74.4])).toBeCloseTo(65.79, 1);
    expect(Math.abs((measure.clarity ?? 0) - 65.79)).toBeLessThan(0.3);
    expect(measure.focus.clarity).toBe(100);
  });

  test("a weak focus pulls clarity down twice, and counts nothing extra for being strong", async () => {
    // Red disc on blue (24.297), white stripe (76.82): (1.5 + 2 · 1.2566 · 0.53994) / (1.5 + 2 · 1.2566) = 71.19 %.
    const measure = await see(field(blue) + stripe(160, 40, white) + disc(150, 80, 40, red));
    expect(clarityOf([1.5, 0, contrasts.whiteBlue], [1.2566, 1.2566, contrasts.redBlue])).toBeCloseTo(
      71.19,
      1,
    );
    expect(Math.abs((measure.clarity ?? 0) - 71.19)).toBeLessThan(0.3);
    expect(measure.focus.clarity).toBeCloseTo((100 * contrasts.redBlue) / 45, 2);
    // By length alone: 1.5 / (1.5 + 1.2566).
    expect(Math.abs((measure.clearEdgeShare ?? 0) - 0.5441)).toBeLessThan(0.005);
  });

  test("concentric charges in paints of their own: all of them", async () => {
    const measure = await see(field(white) + disc(150, 100, 60, red) + disc(150, 100, 30, yellow, "e"));
    expectFocus(measure, "found", areaOf(60));
    expectEdge(measure, white, red, roundOf(60));
    expectEdge(measure, red, yellow, roundOf(30));
  });

  test("a charge over two fields: half of its outline on each, the line between them no part of it", async () => {
    const measure = await see(field(white) + box(0, 0, 150, 200, blue) + disc(150, 100, 50, red));
    expectFocus(measure, "found", areaOf(50));
    expectEdge(measure, white, red, roundOf(50) / 2);
    expectEdge(measure, blue, red, roundOf(50) / 2);
    expectEdge(measure, white, blue, 0.5, 0);
    // Half of the focus is weak: (1 + 0.53994) / 2.
    expect(Math.abs((measure.focus.clarity ?? 0) - 77)).toBeLessThan(0.5);
  });

  test("several charges: together", async () => {
    const measure = await see(
      field(blue) + disc(75, 100, 30, white) + disc(150, 100, 20, yellow, "e") + box(210, 80, 40, 40, white),
    );
    expectFocus(measure, "found", areaOf(30) + areaOf(20) + 1600 / 60_000);
    expectEdge(measure, blue, white, roundOf(30) + 0.8);
    expectEdge(measure, blue, yellow, roundOf(20));
  });

  test("a charge that stands on a stripe but does not reach the border", async () => {
    const measure = await see(field(white) + stripe(140, 60, blue) + box(120, 80, 60, 60, red));
    expectFocus(measure, "found", 3600 / 60_000);
    expectEdge(measure, white, red, 0.9);
    expectEdge(measure, blue, red, 0.3);
    expectEdge(measure, white, blue, 1.2, 0);
  });

  test("a counterchanged disc: both its halves", async () => {
    const half = (sweep: 0 | 1, fill: string): string =>
      `<path d="M150 50A50 50 0 0 ${sweep} 150 150Z" fill="${fill}"/>`;
    const measure = await see(field(white) + box(0, 0, 150, 200, red) + half(0, white) + half(1, red));
    expectFocus(measure, "found", areaOf(50));
    // The outline, the line through the disc, and the line above and below it, which is not the focus.
    expectEdge(measure, white, red, roundOf(50) + 1, roundOf(50) + 0.5);
  });

  test("a charge within a bordure: not the field, though it does not reach the border", async () => {
    // The field has 260 × 160 of 60,000: 69 %.
    const measure = await see(field(white) + box(20, 20, 260, 160, blue) + disc(150, 100, 40, yellow));
    expectFocus(measure, "found", areaOf(40));
    expectEdge(measure, blue, yellow, roundOf(40));
    expectEdge(measure, white, blue, 4.2, 0);
  });

  test("a bordure round an empty field: nothing", async () => {
    const measure = await see(field(white) + box(20, 20, 260, 160, blue));
    expect(measure.focus).toEqual({
      source: "none",
      share: 0,
      clarity: null,
      from: [],
      lastsTo: null,
    });
  });

  test("a ring: not its hole, though both outlines are its own", async () => {
    const measure = await see(field(white) + disc(150, 100, 60, red) + disc(150, 100, 30, white, "hole"));
    expectFocus(measure, "found", areaOf(60) - areaOf(30));
    expectEdge(measure, white, red, roundOf(60) + roundOf(30));
  });

  test("a ring in which something of another paint lies: both, and not the hole", async () => {
    const measure = await see(
      field(white) +
        disc(150, 100, 60, red) +
        disc(150, 100, 45, white, "hole") +
        disc(150, 100, 20, blue, "e"),
    );
    expectFocus(measure, "found", areaOf(60) - areaOf(45) + areaOf(20));
    expectEdge(measure, white, blue, roundOf(20));
  });

  test("a charge on a flag with a transparent ground", async () => {
    const pennon = `<path d="M0 0L300 100L0 200Z" fill="${blue}"/>`;
    const measure = await see(pennon + disc(80, 100, 30, white));
    // The share is of the painted half.
    expectFocus(measure, "found", 2 * areaOf(30));
    expectEdge(measure, blue, white, roundOf(30));
  });

  test("a charge that reaches the transparent ground is none", async () => {
    const pennon = `<path d="M0 0L300 100L0 200Z" fill="${blue}"/>`;
    expect((await see(pennon + box(0, 70, 60, 60, white))).focus.source).toBe("none");
    expect((await see(`${pennon}<path d="M270 90L300 100L270 110Z" fill="${white}"/>`)).focus.source).toBe(
      "none",
    );
  });

  test("a charge on a round flag", async () => {
    const bytes = draw(disc(100, 100, 100, blue) + disc(100, 100, 40, white, "e"), "0 0 200 200");
    const measure = await see(bytes);
    expectFocus(measure, "found", 0.16);
    expectEdge(measure, blue, white, roundOf(40));
  });

  test("a rim round a round flag is none: it meets what is transparent", async () => {
    const bytes = draw(
      disc(100, 100, 100, red) + disc(100, 100, 90, white, "e") + disc(100, 100, 40, blue, "f"),
      "0 0 200 200",
    );
    // The white inside has (81 − 16) / 100 of the flag, over 35 %.
    expectFocus(await see(bytes), "found", 0.16);
  });

  test("what vanishes on the way is no charge", async () => {
    // A bar 0.8 % high, 0.27 % of the flag: seen at 20 · tan 1′ = 0.58 %, not at 40.
    const bar = field(blue) + box(100, 99.2, 100, 1.6, white);
    expect((await see(bar, { distance: 20 })).focus.source).toBe("found");
    expect((await see(bar)).focus).toMatchObject({ source: "none", share: 0 });
  });

  test("less than 0.2 % of the flag is no focus", async () => {
    // π · 6² and π · 6.4² of 60,000: 0.188 % and 0.214 %.
    expect((await see(field(blue) + disc(150, 100, 6, white))).focus.source).toBe("none");
    expect((await see(field(blue) + disc(150, 100, 6.4, white))).focus.source).toBe("found");
  });

  test("a disc with a cross in the paint of the field: both, for the cross is no hole", async () => {
    const cross = `<path d="M120 92h22v-22h16v22h22v16h-22v22h-16v-22h-22Z" fill="${blue}"/>`;
    const measure = await see(field(blue) + disc(150, 100, 50, white) + cross);
    expectFocus(measure, "found", areaOf(50));
    expectEdge(measure, blue, white, roundOf(50) + 240 / 200);
  });

  test("a charge whose outline to the border vanishes is found", async () => {
    // A thin flagstaff joins the disc to the border: at 40 the disc stands alone.
    const staffed = field(blue) + disc(150, 100, 40, white) + box(149.2, 100, 1.6, 100, white);
    expect((await see(staffed, { distance: 0 })).focus.source).toBe("none");
    expectFocus(await see(staffed), "found", areaOf(40));
  });

  test("near-equal shades are one charge", async () => {
    // #777777 and #818181: ΔE00 3.9.
    const shaded = field(white) + disc(150, 100, 50, "#777777") + disc(150, 100, 25, "#818181", "e");
    const measure = await see(shaded);
    expectFocus(measure, "found", areaOf(50));
    expect(measure.edges).toHaveLength(1);
  });
});

describe("not found", () => {
  test("no focus is a fact: no source, no share, no figures, no problem", async () => {
    const measure = await see(field(white) + box(0, 0, 150, 200, red));
    expect(measure.focus).toEqual({
      source: "none",
      share: 0,
      clarity: null,
      from: [],
      lastsTo: null,
    });
    expectEdge(measure, white, red, 1, 0);
    expect(measure.clarity).toBe(100);
    expect(measure.warnings).toEqual([]);
  });

  test("a charge that runs into a stripe of its own paint; named by the author it is", async () => {
    const drawing = field(white) + stripe(120, 80, red) + disc(150, 100, 50, red);
    expect((await see(drawing)).focus.source).toBe("none");
    expectFocus(await see(drawing, { focus: { select: "#d" } }), "named", areaOf(50));
  });

  test("a canton and a charge on it: the charge alone", async () => {
    const measure = await see(field(white) + box(0, 0, 120, 100, blue) + disc(60, 50, 25, yellow));
    expectFocus(measure, "found", areaOf(25));
    expectEdge(measure, white, blue, 1.1, 0);
  });

  test("a wedge at the hoist is none", async () => {
    expect((await see(`${field(white)}<path d="M0 0L120 100L0 200Z" fill="${red}"/>`)).focus.source).toBe(
      "none",
    );
  });
});

describe("named", () => {
  const drawing =
    field(white) + stripe(160, 40, red) + disc(100, 80, 30, red, "one") + disc(200, 80, 40, blue, "two");

  test("by colour: everything in it, stripes too", async () => {
    const measure = await see(drawing, { focus: { colour: red } });
    expectFocus(measure, "named", 0.2 + areaOf(30));
    expectEdge(measure, white, red, 1.5 + roundOf(30));
    expectEdge(measure, white, blue, roundOf(40), 0);
  });

  test("by the name that the page gives a colour", async () => {
    expectFocus(await see(drawing, { focus: { colour: "red" } }), "named", 0.2 + areaOf(30));
  });

  test("by selector: the shapes it names, not others of their paint", async () => {
    const measure = await see(drawing, { focus: { select: "#one" } });
    expectFocus(measure, "named", areaOf(30));
    expectEdge(measure, white, red, 1.5 + roundOf(30), roundOf(30));
    expectEdge(measure, white, blue, roundOf(40), 0);
  });

  test("by selector: what shows of them, where another shape lies over them", async () => {
    // Discs of radius 50 and, over it, of radius 30 about the same middle.
    const covered = field(white) + disc(150, 100, 50, red, "one") + disc(150, 100, 30, blue, "two");
    expectFocus(await see(covered, { focus: { select: "#one" } }), "named", areaOf(50) - areaOf(30));
  });

  test("by selector: a group with all it holds", async () => {
    const grouped = `${field(white)}<g id="arms">${disc(100, 100, 40, red)}${box(180, 60, 80, 80, blue)}</g>`;
    const measure = await see(grouped, { focus: { select: "#arms" } });
    expectFocus(measure, "named", areaOf(40) + 6400 / 60_000);
    expectEdge(measure, white, blue, 1.6);
  });

  test("its share is that of the full drawing, its edges are those of the view", async () => {
    // A disc, and a line of 0.8 % in the same paint, which has vanished at 40.
    const measure = await see(field(white) + disc(150, 80, 40, red) + stripe(160, 1.6, red), {
      focus: { colour: red },
    });
    expectFocus(measure, "named", areaOf(40) + 1.6 / 200);
    expectEdge(measure, white, red, roundOf(40));
  });

  test("a charge with an outline that has vanished: its body meets the field, and that is a focus edge", async () => {
    // Radius 41.6 and 40: the line of 0.8 % goes at 40, what is left meets in its middle.
    const outlined = `${field(blue)}<g id="arms">${disc(150, 100, 41.6, white)}${disc(150, 100, 40, red, "e")}</g>`;
    const measure = await see(outlined, { focus: { select: "#arms" } });
    expectFocus(measure, "named", areaOf(41.6));
    expectEdge(measure, blue, red, roundOf(40.8));
  });

  test("a shape that another one hides shows nothing to be seen, and breaks nothing", async () => {
    const hidden = disc(150, 100, 40, red) + field(white) + disc(150, 100, 20, blue, "e");
    const measure = await see(hidden, { focus: { select: "#d" } });
    expect(measure.focus).toMatchObject({ source: "named", share: 0, clarity: null });
    expectEdge(measure, white, blue, roundOf(20), 0);
  });

  test("a colour that is not in the drawing is a problem, and so is a selector that finds nothing", async () => {
    await expect(see(drawing, { focus: { colour: "#123456" } })).rejects.toThrow(/123456/);
    await expect(see(drawing, { focus: { select: "#none" } })).rejects.toThrow(/#none/);
  });

  test("takes the place of what would have been found", async () => {
    const measure = await see(field(white) + disc(150, 100, 40, red) + stripe(180, 20, black), {
      focus: { colour: black },
    });
    expectFocus(measure, "named", 0.1);
    expectEdge(measure, white, red, roundOf(40), 0);
    expectEdge(measure, white, black, 1.5);
  });
});

test("the mask lies where the charge is seen, and the steps begin at 10", async () => {
  const { table } = await lookFrom(field(white) + disc(150, 100, 50, red));
  expect(table.focus.steps.map(({ distance }) => distance)).toEqual([10, 20, 40, 80, 160, 320]);
  expect(table.focus.steps.every(({ left }) => left > 0.95 && left <= 1)).toBe(true);
  // Coarser pictures from further away: the outline within 3 %.
  for (const { edges } of table.focus.steps) {
    expect(edges).toHaveLength(1);
    expect(Math.abs((edges[0]?.focusLength ?? 0) / roundOf(50) - 1)).toBeLessThan(0.03);
  }
});
