// One drawing through the whole sequence, in full (distance 0). Figures by hand: white 85, red 22.008, blue 10.776,
// yellow 79.224 and black 5 percent of the light on the usual cloth; contrast 125 · difference / (sum + 25).
import { describe, expect, test } from "vitest";
import { compareDrawing, measureDrawing } from "../../src/analysis/analyse.ts";
import { measureStudy } from "../../src/analysis/jobs/studyjob.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import { defaultPalette } from "../../src/content/gallery/palette.ts";
import type { Change } from "../../src/content/study/study.ts";
import { parseText, writeStudy } from "./fixture.ts";
import { here } from "./here.ts";

const options = {
  cloth: defaultCloth,
  distance: 0,
  palette: new Map([["sun", "#ffff00"]]),
};
const draw = (body: string): Uint8Array =>
  new TextEncoder().encode(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20">${body}</svg>`);
const part = (x: number, width: number, fill: string, id = ""): string =>
  `<rect${id && ` id="${id}"`} x="${x}" width="${width}" height="20" fill="${fill}"/>`;

/** Hoist red, a quarter; the rest white. */
const bicolour = draw(part(0, 7.5, "red", "hoist") + part(7.5, 22.5, "white"));

async function measure(bytes: Uint8Array) {
  const { value, problems } = await measureDrawing("a.svg", bytes, options);
  if (value === undefined) throw new Error(problems.map(({ rule }) => rule).join(" "));
  return value;
}

async function compare(bytes: Uint8Array, change: Change) {
  const { value, problems } = await compareDrawing("a.svg", bytes, change, options);
  if (value === undefined) throw new Error(problems.map(({ rule }) => rule).join(" "));
  return value;
}

const rulesOf = async (bytes: Uint8Array, change: Change): Promise<readonly string[]> =>
  (await compareDrawing("a.svg", bytes, change, options)).problems.map(({ rule }) => rule);

describe("measureDrawing", () => {
  test("two colours", async () => {
    const value = await measure(bicolour);
    expect(value).toMatchObject({
      file: "a.svg",
      proportions: [2, 3],
      distance: 0,
      clearEdgeShare: 1,
      clarity: 100,
      warnings: [],
    });
    expect(value.colours.map(({ id, hex, name }) => [id, hex, name])).toEqual([
      ["p1", "#ffffff", "white"],
      ["p2", "#ff0000", "red"],
    ]);
    expect(value.colours[1]?.share).toBeCloseTo(0.25, 3);
    expect(value.edges).toHaveLength(1);
    expect(value.edges[0]).toMatchObject({
      a: "p1",
      b: "p2",
      names: ["white", "red"],
      length: 1,
      grade: "clear",
      hueOnly: false,
      tincture: null,
    });
    expect(value.edges[0]?.contrast).toBeCloseTo(59.6479, 4);
    expect(value.weakestEdge).toEqual({
      a: "p1",
      b: "p2",
      contrast: value.edges[0]?.contrast,
    });
  });

  test("one colour: no edges to measure", async () => {
    expect(await measure(draw(part(0, 30, "red")))).toMatchObject({
      edges: [],
      clearEdgeShare: null,
      clarity: null,
      weakestEdge: null,
    });
  });

  test("transparent parts belong to no flag and have no edge", async () => {
    const value = await measure(draw(part(0, 15, "red")));
    expect(value).toMatchObject({ edges: [], colours: [{ share: 1 }] });
  });

  test.each([
    ["nothing drawn", draw(""), "study/nothing-drawn"],
    ["everything outside the viewBox", draw(part(100, 30, "red")), "study/nothing-drawn"],
    ["no fill", draw(part(0, 30, "none")), "study/nothing-drawn"],
    ["no SVG", new TextEncoder().encode("<html/>"), "svg/not-svg"],
    ["no text", new Uint8Array(), "svg/empty"],
  ])("%s", async (_, bytes, rule) => {
    const { value, problems } = await measureDrawing("a.svg", bytes, options);
    expect(value).toBeUndefined();
    expect(problems.map((problem) => [problem.rule, problem.severity])).toEqual([[rule, "error"]]);
  });

  test("warnings about the file come with the value", async () => {
    const { value, problems } = await measureDrawing(
      "a.svg",
      draw(`<text>a</text>${part(0, 30, "red")}`),
      options,
    );
    expect(value).toBeDefined();
    expect(problems.map(({ rule }) => rule)).toEqual(["svg/text"]);
  });
});

describe("compareDrawing", () => {
  test.each([
    ["hard stops", '<stop offset=".5" stop-color="#000"/><stop offset=".5" stop-color="#010101"/>'],
    ["a ramp", '<stop offset=".5" stop-color="#000"/><stop offset=".501" stop-color="#060606"/>'],
  ])(
    "two near colours of one gradient, %s, of which one changes, would meet in an edge that is not measured",
    async (_, stops) => {
      const body = `${part(0, 30, "white")}<linearGradient id="g">${stops}</linearGradient>${part(5, 20, "url(#g)")}${part(0, 2, "#000")}`;
      expect(await rulesOf(draw(body), { replace: "#000000", with: "sun" })).toEqual(["study/colour-lost"]);
    },
  );

  test("near shades of very many, of which one is changed, would be measured as it", async () => {
    const stripes = Array.from({ length: 60 }, (_, at) =>
      part(at / 4, 30 - at / 4, `#0000${(at + 16).toString(16)}`),
    );
    const change = { replace: "#000010", with: "sun" };
    expect(await rulesOf(draw(stripes.join("")), change)).toEqual(["study/colour-lost"]);
  });

  test("a faint near-white shape over what was white and is changed would not be measured", async () => {
    const body = `${part(0, 30, "white")}${part(5, 5, "#000")}${part(15, 10, "#fefefe").replace("/>", ' opacity="0.4"/>')}`;
    expect(await rulesOf(draw(body), { replace: "#ffffff", with: "sun" })).toEqual(["study/colour-lost"]);
    expect(await rulesOf(draw(body), { replace: "#000000", with: "sun" })).toEqual([]);
  });

  test("red to yellow: the edge is lost, and so the flag is less clear", async () => {
    const { comparison, change } = await compare(bicolour, {
      replace: "red",
      with: "sun",
    });
    expect(change).toEqual({ replace: "#ff0000", with: "#ffff00" });
    // 59.6 to 125 · 5.776 / 189.224
    expect(comparison.edges).toEqual([
      {
        a: "p1",
        b: "p2",
        names: [
          ["white", "red"],
          ["white", "sun"],
        ],
        length: 1,
        contrast: [expect.closeTo(59.6479, 4), expect.closeTo(3.8156, 4)],
        outcome: "lost",
      },
    ]);
    expect(comparison).toMatchObject({
      verdict: "less clear",
      clearEdgeShare: [1, 0],
    });
    // 3.8156 / 45
    expect(comparison.clarity[1]).toBeCloseTo(8.479, 3);
  });

  test("ids stay those of the original, whatever the new colour is", async () => {
    const { comparison } = await compare(bicolour, {
      replace: "#ff0000",
      with: "#000000",
    });
    expect(comparison.after.colours.map(({ id, hex }) => [id, hex])).toEqual([
      ["p1", "#ffffff"],
      ["p2", "#000000"],
    ]);
  });

  test("where nothing merges, the after figures are those of the redesign measured by itself", async () => {
    const { comparison, redesign } = await compare(
      draw(part(0, 7.5, "red") + part(7.5, 10, "blue") + part(17.5, 12.5, "white")),
      { replace: "red", with: "#ffff00" },
    );
    const alone = await measure(new TextEncoder().encode(redesign));
    expect(comparison.clarity[1]).toBeCloseTo(alone.clarity ?? Number.NaN, 9);
    expect(comparison.clearEdgeShare[1]).toBeCloseTo(alone.clearEdgeShare ?? Number.NaN, 9);
    expect(comparison.after.colours.map(({ hex, share }) => [hex, share])).toEqual(
      expect.arrayContaining(alone.colours.map(({ hex, share }) => [hex, share])),
    );
  });

  test("a merged edge counts as 0, though the redesign by itself knows nothing of it", async () => {
    const tricolour = draw(part(0, 10, "red") + part(10, 10, "blue") + part(20, 10, "white"));
    const { comparison, redesign } = await compare(tricolour, {
      replace: "red",
      with: "blue",
    });
    expect(comparison.edges.map(({ outcome }) => outcome).sort()).toEqual(["merged", "same"]);
    // Before (24.2974 / 45 + 1) / 2; after (0 + 1) / 2.
    expect(comparison.clarity[0]).toBeCloseTo(76.997, 2);
    expect(comparison.clarity[1]).toBeCloseTo(50, 9);
    expect((await measure(new TextEncoder().encode(redesign))).clarity).toBe(100);
  });

  test("only: the selected part gets its own id and the edge it parts has no before", async () => {
    const { comparison, change } = await compare(
      draw(part(0, 10, "red", "a") + part(10, 10, "red", "b") + part(20, 10, "white")),
      { replace: "red", with: "sun", only: "#a" },
    );
    expect(change.only).toBe("#a");
    expect(comparison.edges).toContainEqual(
      expect.objectContaining({
        a: "p1",
        b: "p1s",
        length: 1,
        contrast: [null, expect.closeTo(56.6576, 4)],
        outcome: "parted",
      }),
    );
    expect(comparison.before.edges).toHaveLength(1);
    expect(comparison.after.edges).toHaveLength(2);
  });

  test("a translucent paint is looked at again after the change", async () => {
    // 60 % of red over white is #ff6666; 60 % of blue is #6666ff.
    const bytes = draw(`${part(0, 30, "white")}<rect width="15" height="20" fill="red" fill-opacity="0.6"/>`);
    const { comparison } = await compare(bytes, {
      replace: "#ff0000",
      with: "#0000ff",
    });
    expect(comparison.before.colours.map(({ hex }) => hex)).toContain("#ff6666");
    expect(comparison.after.colours.map(({ hex }) => hex)).toContain("#6666ff");
  });

  test("a stop of a gradient can be replaced", async () => {
    const bytes = draw(
      `<linearGradient id="l"><stop stop-color="#820000"/><stop offset="1" stop-color="#800000"/></linearGradient>${part(0, 20, "url(#l)")}${part(20, 10, "white")}`,
    );
    const { redesign } = await compare(bytes, {
      replace: "#800000",
      with: "#7e0000",
    });
    expect(redesign).toContain('stop-color="#7e0000"');
  });

  test("the redesign says that it is a proposal; the original does not", async () => {
    const { original, redesign } = await compare(bicolour, {
      replace: "red",
      with: "sun",
    });
    expect(redesign).toMatch(/<metadata>[^<]*nofficial study[^<]*<\/metadata>/);
    expect(original).not.toContain("metadata");
    expect(original).toContain('fill="#ff0000"');
    expect(redesign).toContain('fill="#ffff00"');
  });

  test.each([
    ["a colour that is not there", { replace: "#00ff00", with: "sun" }, "study/colour-absent"],
    ["a new colour that is none", { replace: "red", with: "sunn" }, "study/wrong-colour"],
    ["the same colour", { replace: "red", with: "#ff0000" }, "study/nothing-changes"],
    ["a selector that is none", { replace: "red", with: "sun", only: "#[" }, "study/wrong-selector"],
    ["a selector without a match", { replace: "red", with: "sun", only: "#fly" }, "study/selects-nothing"],
    [
      "a selector for another colour",
      { replace: "white", with: "sun", only: "#hoist" },
      "study/selects-nothing",
    ],
  ])("%s", async (_, change, rule) => {
    expect(await rulesOf(bicolour, change)).toContain(rule);
    expect((await compareDrawing("a.svg", bicolour, change, options)).value).toBeUndefined();
  });

  test("one showing of a shape is recoloured, and the other keeps its colour", async () => {
    const bytes = draw(
      '<style>rect{fill:red}</style><defs><rect id="r" width="15" height="20"/></defs><use id="u" href="#r"/><use href="#r" x="15"/>',
    );
    const { value, problems } = await compareDrawing(
      "a.svg",
      bytes,
      { replace: "red", with: "#ffff00", only: "#u" },
      options,
    );
    expect(problems).toEqual([]);
    expect(value?.redesign).toContain(
      '<g id="u"><rect width="15" height="20" fill="#ffff00"/></g><use href="#r" x="15"/>',
    );
  });
});

describe("analyseStudy", () => {
  const gallery = {
    title: "Flags of the Sound",
    description: "",
    address: "https://flags.example/",
    language: "en",
    viewingDistance: 0,
    cloth: defaultCloth,
    palette: defaultPalette,
  };
  const wheel = draw(`${part(0, 30, "#7a1020")}<circle cx="15" cy="10" r="5" fill="#ffffff"/>`);

  function studyOf(...lines: readonly string[]) {
    const { value } = parseText(writeStudy(...lines));
    if (value === undefined) throw new Error("the study must be right");
    return value;
  }

  test("gives the comparison and drawings of all kinds of vision", async () => {
    const { value, problems } = await measureStudy(here, studyOf(), wheel, gallery);
    expect(problems).toEqual([]);
    expect(value?.change).toEqual({ replace: "#7a1020", with: "#f4c430" });
    // White 85; #f4c430 has Y 0.5904, 52.2: 125 · 32.8 / 162.2 = 25.3 where it was strong before.
    expect(value?.comparison.verdict).toBe("less clear");
    // Machado 2009 and grey keep white as it is; grey makes every colour a grey.
    const seen = value?.drawings.seen;
    expect(Object.keys(seen ?? {})).toEqual(["protan", "deutan", "tritan", "grey"]);
    expect(seen?.protan.original).toContain("#ffffff");
    for (const [, pair] of (seen?.grey.redesign ?? "").matchAll(/fill="#([0-9a-f]{6})"/g))
      expect(pair).toMatch(/^(..)\1\1$/);
  });

  test("what is wrong with the change is placed in study.md", async () => {
    const { value, problems } = await measureStudy(
      here,
      studyOf('change: { replace: "#123456", with: "#f4c430" }'),
      wheel,
      gallery,
    );
    expect(value).toBeUndefined();
    expect(problems).toEqual([
      expect.objectContaining({
        rule: "study/colour-absent",
        file: "ferry/study.md",
        place: expect.objectContaining({ line: 4 }),
      }),
    ]);
  });
});
