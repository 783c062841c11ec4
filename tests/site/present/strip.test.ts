import { expect, test } from "vitest";
import { linkFrom } from "../../../src/site/address.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { formatStripFile, presentStrip, stripSize } from "../../../src/site/present/strip.ts";
import { compared } from "../compared.ts";

const path = "/studies/a-square/";
const paints = [{ name: "white", hex: "#ffffff" } as const];
const strip = (reads?: readonly [number | null, number | null]) =>
  presentStrip(compared(paints, [], reads), linkFrom(path), path, createFormat("en-GB"));

test("six steps, original over redesign, each with its own file and words", () => {
  const { steps } = strip([20, null]);
  expect(steps.map(({ distance }) => distance)).toEqual(["10", "20", "40", "80", "160", "320"]);
  expect(steps[2]?.plates.map(({ src }) => src)).toEqual(["from-40-original.png", "from-40-redesign.png"]);
  expect(new Set(steps.flatMap(({ plates }) => plates.map(({ alt }) => alt))).size).toBe(12);
});

test("says from where the focus reads, or nothing where there is none", () => {
  expect(strip([20, null]).steps.map(({ reads }) => reads?.[0])).toEqual([
    "reads",
    "reads",
    ...Array(4).fill("does not read"),
  ]);
  expect(strip([20, null]).steps.every(({ reads }) => reads?.[1] === "does not read")).toBe(true);
  expect(strip().steps.every(({ reads }) => reads === undefined)).toBe(true);
});

test.each([
  [[2, 3], { width: 240, height: 160 }],
  [[1, 1], { width: 160, height: 160 }],
  [[1, 4], { width: 320, height: 80 }],
] as const)("a flag of %j is drawn %j", (proportions, size) => {
  expect(stripSize(proportions)).toEqual(size);
});

test("files are named by distance", () => {
  expect(formatStripFile(10, "redesign")).toBe("from-10-redesign.png");
});
