import { describe, expect, test } from "vitest";
import { compareDrawing } from "../../../src/analysis/analyse.ts";
import type { AnalyseOptions } from "../../../src/analysis/drawing/opendrawing.ts";
import { optionsOf } from "../../../src/analysis/options/rankoptions.ts";
import { defaultPalette } from "../../../src/content/gallery/palette.ts";
import { plainFormat } from "../../../src/words/format.ts";
import { describeNoShade } from "../../../src/words/noshade.ts";
import { describeFirst } from "../../../src/words/optionsreport.ts";
import { bytesOf, disc, drawing, field, stripes } from "../drawing.ts";

const settings: AnalyseOptions = { cloth: { black: 5, white: 85 }, distance: 40, palette: defaultPalette };
const reportOf = async (inside: string, options: Partial<AnalyseOptions> = {}) => {
  const { value } = await optionsOf("a.svg", drawing(inside), { ...settings, ...options });
  if (value === undefined) throw new Error("no report");
  return value;
};

describe("optionsOf", () => {
  test("a red disc on black: what to change first, and the charge that vanishes", async () => {
    const report = await reportOf(field("#141414") + disc("#c8202f"));
    // White in place of either is clear and strong: both, whichever stands first.
    expect(report.changeFirst?.map(({ name }) => name).sort()).toEqual(["black", "red"]);
    expect(describeFirst(report, plainFormat)).toBe(
      "White for red (19 % of the flag), or for black (81 %), lifts clarity from 61 % to 100 %. Most is gained where red meets black (contrast 28 % today).",
    );
    const vanishing = report.vanishing.map(({ replace, with: next }) => `${replace} ${next}`);
    expect(vanishing).toEqual(expect.arrayContaining(["#c8202f #141414", "#141414 #c8202f"]));
    expect(report.options.map(({ replace, with: next }) => `${replace} ${next}`)).not.toContain(
      "#c8202f #141414",
    );
    // No red is light enough for black; a blue is.
    expect(report.options.map(({ kind }) => kind)).not.toContain("keptHue");
    const blue = await reportOf(field("#141414") + disc("#1f56a8"));
    expect(blue.options.filter(({ kind }) => kind === "keptHue")).toMatchObject([{ replace: "#1f56a8" }]);
  });

  test.each([
    ["a charge", field("#141414") + disc("#c8202f")],
    ["stripes", stripes("#c8202f", "#0b7a3b", "#fcd20f")],
    ["near-equal stripes", stripes("#c8202f", "#c4222f", "#0b7a3b")],
  ])("%s: every option says what the comparison of that change says", async (_, inside) => {
    const { options, vanishing } = await reportOf(inside);
    for (const option of [...options.filter((_, index) => index % 5 === 0), ...vanishing]) {
      const { value } = await compareDrawing(
        "a.svg",
        drawing(inside),
        { replace: option.replace, with: option.with },
        settings,
      );
      expect(option.clarity).toBeCloseTo(value?.comparison.clarity[1] ?? Number.NaN, 6);
      expect(option.strength).toBeCloseTo(value?.comparison.strength[1] ?? Number.NaN, 6);
      expect(option.focusClarity ?? -1).toBeCloseTo(value?.comparison.after.focus.clarity ?? -1, 6);
      expect(option.clearEdgeShare).toBeCloseTo(value?.comparison.clearEdgeShare[1] ?? Number.NaN, 6);
      for (const outcome of ["gained", "better", "worse", "lost", "merged"] as const) {
        expect(option[outcome]).toHaveLength(
          value?.comparison.edges.filter((edge) => edge.outcome === outcome).length ?? -1,
        );
      }
    }
  });

  test("no shade clears: said, with both limits", async () => {
    const { shades } = await reportOf(stripes("#000000", "#0000ff", "#f7c81e"));
    const reasonOf = (hex: string, word: string) => {
      const shade = shades.find((one) => one.hex === hex);
      return shade && describeNoShade(word, shade);
    };
    expect(reasonOf("#0000ff", "blue")).toMatch(
      /^No shade of this blue is well clear of both black and yellow: beside black it would have to reflect 28\.4 % or more, beside yellow \d+\.\d % or less\.$/,
    );
    // And a black that light is a grey.
    expect(reasonOf("#000000", "black")).toMatch(/^No shade of this black is well clear of blue: /);
  });

  test("one colour: nulls, nothing to try", async () => {
    expect(await reportOf(field("#c8202f"))).toEqual({
      file: "a.svg",
      distance: 40,
      clarity: null,
      strength: null,
      focusClarity: null,
      changeFirst: null,
      mostGained: null,
      options: [],
      vanishing: [],
      shades: [],
      leftOut: { uneven: [], unseen: [], shared: [] },
    });
  });

  test("nothing to gain: no colour comes first", async () => {
    expect(await reportOf(stripes("#ffffff", "#12235c"))).toMatchObject({
      clarity: 100,
      changeFirst: null,
    });
  });

  test("what is no opaque colour in the palette is passed over", async () => {
    const palette = new Map([
      ["white", "#ffffff"],
      ["wrong", "no colour"],
      ["glass", "#ffffff80"],
    ]);
    const { options } = await reportOf(stripes("#c8202f", "#0b7a3b"), { palette });
    expect(new Set(options.filter(({ kind }) => kind === "palette").map(({ name }) => name))).toEqual(
      new Set(["white"]),
    );
  });

  test("an empty palette leaves the flag's own colours and shades", async () => {
    const { options } = await reportOf(stripes("#1f56a8", "#000000", "#ffffff"), { palette: new Map() });
    expect(new Set(options.map(({ kind }) => kind))).toEqual(new Set(["own", "keptHue"]));
  });

  test("a palette without end is cut, and that is said", async () => {
    const palette = new Map(Array.from({ length: 100 }, (_, n) => [`shade ${n}`, `rgb(${2 * n} 90 30)`]));
    const { options, leftOut } = await reportOf(stripes("#c8202f", "#ffffff"), { palette });
    expect(new Set(options.filter(({ kind }) => kind === "palette").map(({ name }) => name)).size).toBe(64);
    expect(leftOut.palette).toEqual({ paints: 64, of: 100 });
  });

  test("a drawing that cannot be read is a problem and no report", async () => {
    const { value, problems } = await optionsOf("a.svg", bytesOf("no drawing"), settings);
    expect(value).toBeUndefined();
    expect(problems.length).toBeGreaterThan(0);
  });
});
