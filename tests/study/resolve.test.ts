import { describe, expect, test } from "vitest";
import { resolveReplace, resolveWith } from "../../src/study/resolve.ts";

const at = {
  file: "ferry/study.md",
  place: { line: 4, column: 12 },
  sourceLine: "change: …",
};
const colours = [
  { hex: "#7a1020", name: "dark red" },
  { hex: "#ffffff", name: "white" },
  { hex: "#f0c030", name: "gold" },
] as const;
const palette = new Map([
  ["signal red", "#d01c1f"],
  ["Gold", "#f4c430"],
  ["blue", "#003580"],
]);

describe("resolveReplace", () => {
  test.each([
    ["a name on the page", "dark red", "#7a1020"],
    ["in capitals, with space around it", "  Dark Red ", "#7a1020"],
    ["a hex of the drawing", "#7a1020", "#7a1020"],
    ["in capitals", "#7A1020", "#7a1020"],
    ["in rgb()", "rgb(122, 16, 32)", "#7a1020"],
    ["three digits", "#fff", "#ffffff"],
  ])("%s", (_, text, hex) => {
    expect(resolveReplace(text, colours, at)).toEqual({ hex });
  });

  test("the drawing's own name comes before the CSS colour of that name, and says so where it has both", () => {
    // CSS gold is #ffd700.
    const both = [...colours, { hex: "#ffd700", name: "yellow" } as const];
    const { hex, problem } = resolveReplace("gold", both, at);
    expect(hex).toBe("#f0c030");
    expect(problem).toMatchObject({
      rule: "study/two-meanings",
      severity: "warning",
      ...at,
    });
    expect(problem?.reason).toMatch(/#f0c030.*#ffd700/);
  });

  test("a colour so near that the eye sees none other is taken, with a warning", () => {
    const { hex, problem } = resolveReplace("#7b1020", colours, at);
    expect(hex).toBe("#7a1020");
    expect(problem).toMatchObject({
      rule: "study/colour-near",
      severity: "warning",
    });
    expect(problem?.hint).toContain("#7a1020");
  });

  test.each(["#00ff00", "red", "no colour", "", "url(#a)"])(
    "%j is not there: the colours that are, are listed",
    (text) => {
      const { hex, problem } = resolveReplace(text, colours, at);
      expect(hex).toBeUndefined();
      expect(problem).toMatchObject({
        rule: "study/colour-absent",
        severity: "error",
        ...at,
      });
      for (const colour of colours) expect(problem?.hint).toContain(`${colour.hex} ${colour.name}`);
    },
  );

  test("a drawing without colours", () => {
    expect(resolveReplace("red", [], at).problem?.rule).toBe("study/colour-absent");
  });
});

test("a name that CSS has too is no question where the drawing has the CSS colour not", () => {
  const { hex, problem } = resolveReplace("gold", colours, at);
  expect([hex, problem]).toEqual(["#f0c030", undefined]);
});

describe("resolveWith", () => {
  test.each([
    ["a name of the palette", "signal red", "#d01c1f"],
    ["in capitals", "Signal Red", "#d01c1f"],
    ["a name that the palette writes with a capital", "Gold", "#f4c430"],
    ["a CSS name that is not in the palette", "lime", "#00ff00"],
    ["any CSS colour", "hsl(0 100% 50%)", "#ff0000"],
  ])("%s", (_, text, hex) => {
    expect(resolveWith(text, palette, at).hex).toBe(hex);
  });

  test("the palette comes before CSS; that both have the name is said of the study as a whole", () => {
    expect(resolveWith("blue", palette, at)).toEqual({ hex: "#003580" });
  });

  test("a slip of the pen gets the nearest name", () => {
    const { hex, problem } = resolveWith("signal rde", palette, at);
    expect(hex).toBeUndefined();
    expect(problem).toMatchObject({
      rule: "study/wrong-colour",
      severity: "error",
      ...at,
    });
    expect(problem?.hint).toBe("Type “signal red”, if that is meant.");
  });

  test("something else gets the whole palette", () => {
    expect(resolveWith("xyzzy", palette, at).problem?.hint).toContain("signal red, Gold, blue");
  });
});

describe("resolveWith, and the colours of the drawing that stay", () => {
  test("the palette's colour is used, with a warning where the drawing calls another colour so", () => {
    const own = [{ hex: "#15244a", name: "blue" }] as const;
    const { hex, problem } = resolveWith("Blue", palette, at, own);
    expect(hex).toBe("#003580");
    expect(problem).toMatchObject({ rule: "study/two-meanings", severity: "warning" });
    expect(problem?.reason).toBe("“Blue” means #003580 of the palette here, not #15244a of the drawing.");
    expect(problem?.hint).toBe('Type "#003580" or "#15244a" to be sure.');
  });

  test("the same holds of a CSS name", () => {
    const { hex, problem } = resolveWith("lime", palette, at, [{ hex: "#32cd32", name: "lime" }]);
    expect(hex).toBe("#00ff00");
    expect(problem?.reason).toBe("“lime” means #00ff00 of CSS here, not #32cd32 of the drawing.");
  });

  test("one colour under one name is no question", () => {
    expect(resolveWith("signal red", palette, at, [{ hex: "#d01c1f", name: "signal red" }])).toEqual({
      hex: "#d01c1f",
    });
  });

  test("a name that the drawing alone has is not taken, and its hex is told", () => {
    const { hex, problem } = resolveWith("dark red", palette, at, colours);
    expect(hex).toBeUndefined();
    expect(problem?.hint).toBe('For “dark red” of the drawing type: "#7a1020"');
  });

  test("a slip in a name that only CSS has", () => {
    expect(resolveWith("glod", new Map(), at).problem?.hint).toBe("Type “gold”, if that is meant.");
  });
});
