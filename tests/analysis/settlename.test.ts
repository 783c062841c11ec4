import { describe, expect, test } from "vitest";
import { checkNames, settleNames } from "../../src/analysis/settlename.ts";

const palette = new Map([
  ["Gold", "#f4c430"],
  ["dark blue", "#16285c"],
]);

describe("settleNames", () => {
  test("the palette's own word for the new colour is its name, a word that the tool gives itself is not", () => {
    const settled = (next: string) => [...settleNames({ replace: "red", with: next }, { palette })];
    expect(settled("gold")).toEqual([["#f4c430", "Gold"]]);
    expect(settled("dark blue")).toEqual([]);
    expect(settled("#f4c430")).toEqual([]);
  });

  test("the names of the study stay, also for that colour", () => {
    const names = new Map([["#f4c430", "straw"]] as const);
    expect(settleNames({ replace: "red", with: "gold" }, { palette, names })).toEqual(names);
  });
});

describe("checkNames", () => {
  const colours = [
    { hex: "#1b2a5c", name: "dark blue" },
    { hex: "#ffffff", name: "white" },
  ] as const;
  const change = { replace: "white", with: "Gold" };

  test("what is in the drawing, or put into it, is named", () => {
    const names = new Map([
      ["#1b2a5c", "navy"],
      ["#f4c430", "straw"],
    ] as const);
    expect(checkNames(change, colours, { palette, names })).toEqual([]);
  });

  test("another colour is told, with its place and the nearest that is there", () => {
    const names = new Map([["#1b2a5d", "navy"]] as const);
    const [problem] = checkNames(change, colours, { palette, names });
    expect(problem).toMatchObject({ rule: "study/name-absent", severity: "warning", at: "names.#1b2a5d" });
    expect(problem?.hint).toContain('"#1b2a5c"');
  });
});
