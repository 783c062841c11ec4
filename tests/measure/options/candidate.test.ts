import { describe, expect, test } from "vitest";
import { SwatchBook } from "../../../src/measure/colourcache.ts";
import {
  type Candidate,
  findSubjectShade,
  listCandidates,
  otherSide,
  type Subject,
} from "../../../src/measure/options/candidate.ts";
import { findShade } from "../../../src/measure/options/kepthue.ts";
import { nth } from "../../numbered.ts";
import { edgeOf, looksOf, tableOf } from "../build.ts";
import { contrast, difference76, reflectance } from "../oracle.ts";

const cloth = { black: 5, white: 85 };
const palette: readonly Candidate[] = [
  { hex: "#ffffff", name: "white", kind: "palette" },
  { hex: "#c8202f", name: "red", kind: "palette" },
];
const own: readonly Candidate[] = [
  { hex: "#1f56a8", name: "blue", kind: "own" },
  { hex: "#ffffff", name: "white", kind: "own" },
  { hex: "#0b7a3b", name: "green", kind: "own" },
];
const subjectOf = (hexes: readonly `#${string}`[], edges: Parameters<typeof tableOf>[1]): Subject => ({
  table: tableOf(
    hexes.map((_, index) => [`p${index + 1}`] as const),
    edges,
  ),
  looks: looksOf(...hexes),
  paint: nth(0),
});
const book = new SwatchBook(cloth);
const none = { isClear: true, least: null, lighter: null, darker: null, demands: [] };

describe("listCandidates", () => {
  const subject = subjectOf(["#1f56a8", "#000000"], [[0, 1, 1, 0]]);

  test("palette, own, kept hue; not the colour itself, and nothing twice", () => {
    const shade = findShade("#1f56a8", [{ name: "black", reflectances: [5] }], cloth);
    const listed = listCandidates(subject, palette, own, shade, book);
    expect(listed.map(({ kind, name }) => `${kind} ${name}`).slice(0, 3)).toEqual([
      "palette white",
      "palette red",
      "own green",
    ]);
    expect(listed[3]).toMatchObject({ kind: "keptHue", hex: shade.lighter?.hex });
    expect(listed).toHaveLength(4);
  });

  test("a shade is called by its own word, or lighter and darker where the word stays", () => {
    const nameOf = (hex: `#${string}`, least: `#${string}`, isLighter: boolean) => {
      const shade = { hex: least, deltaE00: 1, contrast: 50, isFamily: true };
      const finding = { ...none, isClear: false, least: shade, [isLighter ? "lighter" : "darker"]: shade };
      return listCandidates(subjectOf([hex, "#000000"], []), [], [], finding, book)[0]?.name;
    };
    expect(nameOf("#1f56a8", "#3570c8", true)).toBe("lighter blue");
    expect(nameOf("#1f56a8", "#12235c", false)).toBe("dark blue");
    expect(nameOf("#12235c", "#0a1238", false)).toBe("darker blue");
  });

  test("nothing under 10 CIELAB units from today's colour, whatever kind it is", () => {
    // Blues at ΔE*ab 9.3 and 10.7 of #1f56a8 by the oracle's CIE 76.
    const [within, beyond] = ["#2a63b8", "#1a4489"] as const;
    expect(difference76("#1f56a8", within)).toBeLessThan(10);
    expect(difference76("#1f56a8", beyond)).toBeGreaterThan(10);
    const as = (hex: `#${string}`, kind: Candidate["kind"]) => ({ hex, name: "new", kind });
    const shade = { hex: within, deltaE00: 5, contrast: 50, isFamily: true };
    const finding = { ...none, isClear: false, least: shade, lighter: shade };
    expect(listCandidates(subject, [as(within, "palette")], [as(within, "own")], finding, book)).toEqual([]);
    expect(
      listCandidates(subject, [as(beyond, "palette")], [as(beyond, "own")], finding, book).map(
        ({ kind }) => kind,
      ),
    ).toEqual(["palette"]);
  });

  test("nothing to try", () => expect(listCandidates(subject, [], [], none, book)).toEqual([]));
});

describe("findSubjectShade", () => {
  test("clears every neighbour of 1 % or more of all edge length, and only those", () => {
    const subject = subjectOf(
      ["#1f56a8", "#000000", "#f7c81e"],
      [
        [0, 1, 2],
        [0, 2, 0.01],
      ],
    );
    const { least, demands } = findSubjectShade(subject, cloth, book);
    expect(demands.map(({ name }) => name)).toEqual(["#000000"]);
    expect(contrast(least?.hex ?? "", "#000000")).toBeGreaterThanOrEqual(50);
  });

  test("edges between other paints ask nothing of it", () => {
    expect(
      findSubjectShade(subjectOf(["#1f56a8", "#000000", "#ffffff"], [[1, 2, 2]]), cloth, book).demands,
    ).toEqual([]);
  });

  test("a paint of the same group is no neighbour", () => {
    const table = tableOf(
      [
        ["p1", 0],
        ["p2", 0],
      ],
      [[0, 1, 2]],
    );
    expect(
      findSubjectShade({ table, looks: looksOf("#1f56a8", "#2057aa"), paint: nth(0) }, cloth, book).demands,
    ).toEqual([]);
  });

  test("an uneven neighbour asks with each of its ends", () => {
    const subject = subjectOf(["#1f56a8", "#445566"], [[0, 1, 2]]);
    const looks = subject.looks.map((look, index) =>
      index === 0 ? look : { ...look, uneven: { lightest: "#556677", darkest: "#334455" } as const },
    );
    const { demands } = findSubjectShade({ ...subject, looks }, cloth, book);
    expect(demands.map(({ atLeast }) => atLeast)).toEqual(
      ["#445566", "#556677", "#334455"].map((hex) => expect.closeTo((175 * reflectance(hex) + 1250) / 75, 6)),
    );
  });
});

test("otherSide", () => {
  const edge = edgeOf(1, 4, 1);
  expect([1, 4, 2].map((paint) => otherSide(edge, nth(paint)))).toEqual([4, 1, undefined]);
});
