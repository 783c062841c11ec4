// Figures of edges and of whole drawings; every expected value is worked out in the comment beside it.
import { describe, expect, test } from "vitest";
import { defaultCloth } from "../../src/colour/cloth.ts";
import { SwatchBook } from "../../src/measure/colourcache.ts";
import { contrastOf, type PaintLook, seenAlong } from "../../src/measure/edgefigure.ts";
import { measureEdge, measureLooks } from "../../src/measure/measurelooks.ts";
import { listed, type Rank } from "../../src/svg/paintnumber.ts";
import { nth } from "../numbered.ts";
import { edgeOf, frame, looksOf, tableOf } from "./build.ts";

const pair = tableOf([["p1"], ["p2"]], [[0, 1, 1]]);
const single = (a: `#${string}`, b: `#${string}`) =>
  measureLooks(frame, pair, looksOf(a, b), defaultCloth).edges[0];

describe("a paint that looks otherwise along one edge", () => {
  // White as a whole, black to white; beside paint 1 it is black alone, beside paint 2 as it is.
  const ends = { lightest: "#ffffff", darkest: "#000000" } as const;
  const beside = new Map([[nth<Rank>(1), { hex: "#000000", uneven: null } as const]]);
  const looks = listed<Rank, PaintLook>([
    { hex: "#ffffff", name: "sky", uneven: ends, beside },
    ...looksOf("#ffffff", "#ffffff"),
  ]);
  const table = tableOf(
    [["p1"], ["p2"], ["p3"]],
    [
      [0, 1, 1],
      [2, 0, 1],
    ],
  );

  test("counts with what it is there, on either side of the edge", () => {
    const { edges } = measureLooks(frame, table, looks, defaultCloth);
    // Black on white: 125 · 80 / 115. White on white: 0.
    expect(edges.map(({ contrast }) => contrast)).toEqual([expect.closeTo(86.9565, 3), 0]);
    expect(edges[0]?.deltaE00).toBeCloseTo(100, 6);
    expect(edges[1]?.deltaE00).toBe(0);
    expect(
      contrastOf(...seenAlong(looks, { a: nth(0), b: nth(1) }), new SwatchBook(defaultCloth)).contrast,
    ).toBe(edges[0]?.contrast);
    expect(seenAlong(looks, { a: nth(1), b: nth(0) }).map(({ hex, name }) => [hex, name])).toEqual([
      ["#ffffff", "#ffffff"],
      ["#000000", "sky"],
    ]);
  });

  test("keeps its name, its row of colours and its tincture", () => {
    const { edges, colours } = measureLooks(frame, table, looks, defaultCloth);
    expect(edges[0]?.names).toEqual(["sky", "#ffffff"]);
    expect(edges[0]?.tincture).toBe("both metals");
    expect(colours[0]).toMatchObject({ hex: "#ffffff", uneven: ends });
  });
});

describe("measureEdge", () => {
  // Reflectance 5 + 80 Y; contrast 125 · difference / (sum + 25). Y: white 1, red 0.2126, blue 0.0722, yellow 0.9278.
  test.each([
    // 85 and 5: 125 · 80 / 115
    ["#ffffff", "#000000", 86.9565, "strong"],
    // 85 and 22.008: 125 · 62.992 / 132.008
    ["#ffffff", "#ff0000", 59.6479, "clear"],
    // 22.008 and 5: 125 · 17.008 / 52.008
    ["#ff0000", "#000000", 40.8783, "soft"],
    // 22.008 and 10.776: 125 · 11.232 / 57.784
    ["#ff0000", "#0000ff", 24.2974, "weak"],
    // 85 and 79.224: 125 · 5.776 / 189.224
    ["#ffffff", "#ffff00", 3.8156, "weak"],
  ] as const)("%s on %s: %f, %s, either way round", (a, b, contrast, grade) => {
    expect(single(a, b)?.contrast).toBeCloseTo(contrast, 4);
    expect(single(b, a)?.contrast).toBeCloseTo(contrast, 4);
    expect(single(a, b)?.grade).toBe(grade);
  });

  test("contrast ratio is that of the screen, not of cloth", () => {
    // WCAG 2.2: (1 + 0.05) / (0.2126 + 0.05)
    expect(single("#ffffff", "#ff0000")?.contrastRatio).toBeCloseTo(3.9985, 4);
  });

  test("hue-only: weak, 20 or more in ΔE00, and under 10 in grey", () => {
    // Of one luminance: 0.7152 · 0.2961 is 0.2126 · 0.9961.
    expect(single("#ff0000", "#009400")).toMatchObject({
      grade: "weak",
      hueOnly: true,
    });
    // Weak, and as greys L* 53 and 32.
    expect(single("#ff0000", "#0000ff")).toMatchObject({ grade: "weak", hueOnly: false });
    // Soft, whatever the hue.
    expect(single("#ff0000", "#000000")?.hueOnly).toBe(false);
    // Two greys hardly apart: weak, and no hue.
    expect(single("#808080", "#8c8c8c")).toMatchObject({
      grade: "weak",
      hueOnly: false,
    });
  });

  test("near the line: another grade on cloth from 4 to 92", () => {
    // 4 + 88 Y. White 92, red 22.7088 instead of 85, 22.008: 125 · 69.2912 / 139.7088 = 62.00, strong; on 5 to 85 59.65.
    expect(single("#ffffff", "#ff0000")).toMatchObject({ grade: "clear", nearLine: true });
    // Yellow on white 125 · (92 − 85.6464) / 202.6464 = 3.92, weak on both.
    expect(single("#ffffff", "#ffff00")).toMatchObject({ grade: "weak", nearLine: false });
  });

  test("colours that are cloth values already have no range, and no line to be near to", () => {
    const asCloth = { black: 0, white: 100 };
    // White 100 and red 21.26: 125 · 78.74 / 146.26 = 67.3, strong; on 4 to 92 62.00. Red on black 125 · 21.26 / 46.26 =
    // 57.4, clear; on 4 to 92 125 · 18.7088 / 51.7088 = 45.2. #7f7f7f (Y 0.2122) hardly less: 45.14. #7e7e7e (Y 0.2086)
    // 56.9 here; on 4 to 92 125 · 18.36 / 51.36 = 44.7, soft, so another grade, and not said.
    const edge = edgeOf(0, 1, 1);
    expect(measureEdge(pair, edge, looksOf("#7e7e7e", "#000000"), new SwatchBook(asCloth))).toMatchObject({
      grade: "clear",
      nearLine: false,
    });
    expect(
      measureEdge(pair, edge, looksOf("#7e7e7e", "#000000"), new SwatchBook({ black: 1, white: 100 }))
        .nearLine,
    ).toBe(true);
  });

  test("rule of tincture", () => {
    expect(single("#ffffff", "#ffff00")?.tincture).toBe("both metals");
    expect(single("#ff0000", "#0000ff")?.tincture).toBe("both colours");
    expect(single("#ffffff", "#ff0000")?.tincture).toBeNull();
  });

  test("grey keeps the luminance: two colours of one luminance are one grey", () => {
    // #ff0000 has Y 0.2126, the grey of the same Y is #7f7f7f (0.2122).
    expect(single("#ff0000", "#7f7f7f")?.vision.grey.deltaE00).toBeLessThan(1);
    expect(single("#ff0000", "#7f7f7f")?.deltaE00).toBeGreaterThan(20);
  });

  test("protan: contrast of what is seen, #ff0000 as #6d5f00 (Machado 2009, worked out in linear light)", () => {
    // #6d5f00: linear 0.15229, 0.11450, 0 → Y 0.11427, reflectance 14.1415; on black 125 · 9.1415 / 44.1415.
    expect(single("#ff0000", "#000000")?.vision.protan.contrast).toBeCloseTo(25.887, 2);
  });

  test("an uneven paint counts with the end that is nearer to the other", () => {
    const [white, grey] = looksOf("#ffffff", "#808080");
    if (white === undefined || grey === undefined) throw new Error("two looks");
    const uneven = {
      ...grey,
      uneven: { lightest: "#ffff00", darkest: "#000000" },
    } as const;
    // Its lightest end is yellow, 3.8156 from white.
    expect(
      measureEdge(pair, edgeOf(0, 1, 1), listed([white, uneven]), new SwatchBook(defaultCloth)).contrast,
    ).toBeCloseTo(3.8156, 4);
    const black = { ...white, hex: "#000000" } as const;
    // From black the darkest end is the near one.
    expect(
      measureEdge(pair, edgeOf(0, 1, 1), listed([black, uneven]), new SwatchBook(defaultCloth)).contrast,
    ).toBe(0);
  });

  test("two uneven paints that overlap have no contrast to rely on", () => {
    const ends = { lightest: "#ffffff", darkest: "#000000" } as const;
    const looks = looksOf("#808080", "#ff0000").map((look) => ({
      ...look,
      uneven: ends,
    }));
    expect(measureEdge(pair, edgeOf(0, 1, 1), looks, new SwatchBook(defaultCloth)).contrast).toBe(0);
  });

  test("another cloth, another contrast", () => {
    const looks = looksOf("#ffffff", "#000000");
    // 100 and 0: 125 · 100 / 125
    expect(
      measureEdge(pair, edgeOf(0, 1, 1), looks, new SwatchBook({ black: 0, white: 100 })).contrast,
    ).toBeCloseTo(100, 12);
  });
});

describe("measureLooks", () => {
  test("puts colours, edges and the figures of the whole together", () => {
    const table = tableOf(
      [["p1"], ["p2"], ["p3"]],
      [
        [0, 1, 3],
        [1, 2, 1],
      ],
    );
    const measure = measureLooks(frame, table, looksOf("#ffffff", "#ff0000", "#0000ff"), defaultCloth);
    expect(measure).toMatchObject({ ...frame, clearEdgeShare: 0.75 });
    expect(measure.colours.map(({ id, hex, tincture }) => [id, hex, tincture])).toEqual([
      ["p1", "#ffffff", "metal"],
      ["p2", "#ff0000", "colour"],
      ["p3", "#0000ff", "colour"],
    ]);
    expect(measure.colours[1]?.reflectance).toBeCloseTo(22.008, 10);
    expect(measure.edges.map(({ a, b, names, length }) => [a, b, names, length])).toEqual([
      ["p1", "p2", ["#ffffff", "#ff0000"], 3],
      ["p2", "p3", ["#ff0000", "#0000ff"], 1],
    ]);
    // (3 + 24.2974 / 45) / 4
    expect(measure.clarity).toBeCloseTo(88.4985, 3);
    // With 60 in place of 45: (3 · 59.6479 / 60 + 24.2974 / 60) / 4
    expect(measure.strength).toBeCloseTo(84.6837, 3);
    expect(measure.weakestEdge).toMatchObject({ a: "p2", b: "p3" });
    expect(measure.focus).toEqual({ source: "none", share: 0, clarity: null, from: [], lastsTo: null });
  });

  test("one colour: no edges to measure", () => {
    const measure = measureLooks(frame, tableOf([["p1"]], []), looksOf("#ff0000"), defaultCloth);
    expect(measure).toMatchObject({
      edges: [],
      clearEdgeShare: null,
      clarity: null,
      strength: null,
      weakestEdge: null,
    });
  });
});
