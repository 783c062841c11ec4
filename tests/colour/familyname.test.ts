import { describe, expect, test } from "vitest";
import type { Hex } from "../../src/colour/colour.ts";
import { nameFamily } from "../../src/colour/familyname.ts";

const greens: readonly Hex[] = Array.from({ length: 30 }, (_, index): Hex => {
  const part = (from: number): string => (from + index * 2).toString(16).padStart(2, "0");
  return `#${part(8)}${part(110)}${part(40)}`;
});

describe("nameFamily", () => {
  test("names that are there are kept and not given twice", () => {
    const names = new Map<Hex, string>([["#00843d", "green"]]);
    nameFamily(
      "green",
      [
        { hex: "#1a8335", plain: "green" },
        { hex: "#00843d", plain: "green" },
      ],
      names,
    );
    expect([...names.values()]).toEqual(["green", "yellower green"]);
  });

  test("a name that a colour of another family was given is not given again", () => {
    const names = new Map<Hex, string>([["#1b2a5c", "white"]]);
    nameFamily("white", [{ hex: "#ffffff", plain: "white" }], names);
    nameFamily(
      "white",
      [
        { hex: "#ffffff", plain: "white" },
        { hex: "#f7f3e8", plain: "white" },
      ],
      names,
    );
    expect(names.get("#ffffff")).toBe("second white");
    expect(new Set(names.values()).size).toBe(3);
  });

  test("thirty near shades: all named apart, the smallest by number at the very last", () => {
    const names = new Map<Hex, string>();
    nameFamily(
      "green",
      greens.map((hex) => ({ hex, plain: "green" })),
      names,
    );
    expect(new Set(names.values()).size).toBe(30);
    expect([...names.values()].slice(0, 15).join(" ")).not.toMatch(/\d/);
  });
});
