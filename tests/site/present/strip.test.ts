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
  expect(
    new Set(steps.flatMap(({ plates }) => plates.map(({ label, description }) => `${label}. ${description}`)))
      .size,
  ).toBe(12);
});

test("each picture says how blurred it is and whether the focus reads; the whole says it once", () => {
  const { steps, description } = strip([20, null]);
  // An eye's 0.5 arcminutes of the 21.4859 that a flag fills from 160 heights, 2·atan(1/320) by hand: 2.3 percent.
  expect(steps[4]?.plates[0]).toMatchObject({
    label: "Original from 160 flag heights",
    description: "Blurred by 2.3 percent of its height; the focus does not read.",
  });
  expect(strip().steps[4]?.plates[1]).toMatchObject({
    label: "Redesign from 160 flag heights",
    description: "Blurred by 2.3 percent of its height.",
  });
  expect(description).toBe(
    "Both flags as they look from 10, 20, 40, 80, 160 and 320 flag heights, softer and softer. The focus of the original reads to 20, that of the redesign to under 10.",
  );
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
