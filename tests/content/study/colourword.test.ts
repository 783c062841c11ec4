import { describe, expect, test } from "vitest";
import { defaultPalette } from "../../../src/content/gallery/palette.ts";
import { resolveReplace, resolveWith } from "../../../src/content/study/colourword.ts";

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
    expect(resolveReplace(text, colours, at, palette)).toEqual({ hex });
  });

  test("the drawing's own name comes before the CSS colour of that name, and says so where it has both", () => {
    // CSS gold is #ffd700.
    const both = [...colours, { hex: "#ffd700", name: "yellow" } as const];
    const { hex, problem } = resolveReplace("gold", both, at, new Map());
    expect(hex).toBe("#f0c030");
    expect(problem).toMatchObject({
      rule: "study/two-meanings",
      severity: "warning",
      ...at,
    });
    expect(problem?.reason).toMatch(/#f0c030.*#ffd700/);
    expect(resolveReplace("gold", both, at, palette)).toEqual({ hex: "#f0c030" });
  });

  test("a colour so near that the eye sees none other is taken, with a warning", () => {
    const { hex, problem } = resolveReplace("#7b1020", colours, at, palette);
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
      const { hex, problem } = resolveReplace(text, colours, at, palette);
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
    expect(resolveReplace("red", [], at, palette).problem?.rule).toBe("study/colour-absent");
  });
});

test("a name that CSS has too is no question where the drawing has the CSS colour not", () => {
  const { hex, problem } = resolveReplace("gold", colours, at, palette);
  expect([hex, problem]).toEqual(["#f0c030", undefined]);
});

describe("resolveWith", () => {
  test.each([
    ["a name of the palette", "signal red", { hex: "#d01c1f", called: "signal red" }],
    ["in capitals", "Signal Red", { hex: "#d01c1f", called: "signal red" }],
    ["a name that the palette writes with a capital", "gold", { hex: "#f4c430", called: "Gold" }],
    ["a name that CSS has for another colour", "blue", { hex: "#003580", called: "blue" }],
    ["a CSS name that is not in the palette", "Lime", { hex: "#00ff00", called: "lime" }],
    ["any CSS colour", "hsl(0 100% 50%)", { hex: "#ff0000" }],
  ])("%s", (_, text, resolved) => {
    expect(resolveWith(text, { palette }, at)).toEqual(resolved);
  });

  test("a slip of the pen gets the nearest name", () => {
    const { hex, problem } = resolveWith("signal rde", { palette }, at);
    expect(hex).toBeUndefined();
    expect(problem).toMatchObject({
      rule: "study/wrong-colour",
      severity: "error",
      ...at,
    });
    expect(problem?.hint).toBe("Type “signal red”, if that is meant.");
    expect(resolveWith("glod", { palette: new Map() }, at).problem?.hint).toBe(
      "Type “gold”, if that is meant.",
    );
  });

  test("something else gets the whole palette", () => {
    expect(resolveWith("xyzzy", { palette }, at).problem?.hint).toContain("signal red, Gold, blue");
  });
});

describe("resolveWith, and what the flag's colours are called", () => {
  const own = [{ hex: "#15244a", name: "blue" }] as const;

  test("what the study calls a colour comes first, and is what any spelling of that colour is called", () => {
    const names = new Map([["#1b2a5c", "Blue"]] as const);
    expect(resolveWith("blue", { palette, names }, at, own)).toEqual({ hex: "#1b2a5c", called: "Blue" });
    expect(resolveWith("#1B2A5C", { palette, names }, at, own)).toEqual({ hex: "#1b2a5c", called: "Blue" });
  });

  test("the gallery's own palette comes before the drawing, the usual one behind it, and no question is asked", () => {
    expect(resolveWith("Blue", { palette }, at, own)).toEqual({ hex: "#003580", called: "blue" });
    expect(resolveWith("Blue", { palette: defaultPalette }, at, own)).toEqual({
      hex: "#15244a",
      called: "blue",
    });
  });

  test("a name of the drawing comes before CSS, and says so where no palette has it", () => {
    expect(resolveWith("dark red", { palette }, at, colours)).toEqual({ hex: "#7a1020", called: "dark red" });
    const { hex, problem } = resolveWith("lime", { palette }, at, [{ hex: "#32cd32", name: "lime" }]);
    expect(hex).toBe("#32cd32");
    expect(problem).toMatchObject({ rule: "study/two-meanings", severity: "warning" });
    expect(problem?.reason).toBe("“lime” means #32cd32 of the drawing here, not #00ff00 of CSS.");
    expect(problem?.hint).toBe('Type "#32cd32" or "#00ff00" to be sure.');
  });

  test("what try offers in the place of the colour is read, and asked for only where nothing else is meant", () => {
    let asked = 0;
    const offer = (replace: string) => {
      asked += 1;
      return replace === "#7a1020" ? [{ hex: "#c03040", name: "lighter red" } as const] : [];
    };
    expect(resolveWith("blue", { palette, offer }, at, colours, "#7a1020").hex).toBe("#003580");
    expect(resolveWith("signal rde", { palette, offer }, at, colours, "#7a1020").hex).toBeUndefined();
    expect(asked).toBe(0);
    expect(resolveWith("lighter red", { palette, offer }, at, colours, "#7a1020")).toEqual({
      hex: "#c03040",
      called: "lighter red",
    });
    expect(resolveWith("lighter red", { palette, offer }, at, colours, "#ffffff").problem?.rule).toBe(
      "study/wrong-colour",
    );
  });
});
