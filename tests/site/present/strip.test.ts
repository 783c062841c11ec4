import { expect, test } from "vitest";
import { linkFrom } from "../../../src/site/address.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { formatStripFile, presentStrip, stripSize } from "../../../src/site/present/strip.ts";
import { compared, type Focus } from "../compared.ts";

const path = "/studies/a-square/";
const paints = [{ name: "white", hex: "#ffffff" } as const];
const focus: Focus = {
  lastsTo: 80,
  clarity: [50, 90],
  from: { 80: [0.999, 40, 90], 160: [0.42, 41.2, 60], 320: [0, null, null] },
};
const strip = (seen?: Focus) =>
  presentStrip(compared(paints, [], seen), linkFrom(path), path, createFormat("en-GB"));

test("six steps, original over redesign, each with its own file and words", () => {
  const { steps } = strip(focus);
  expect(steps.map(({ distance }) => distance)).toEqual(["10", "20", "40", "80", "160", "320"]);
  expect(steps[2]?.plates.map(({ src }) => src)).toEqual(["from-40-original.png", "from-40-redesign.png"]);
  expect(
    new Set(steps.flatMap(({ plates }) => plates.map(({ label, description }) => `${label}. ${description}`)))
      .size,
  ).toBe(12);
});

test("each picture says how blurred it is and how clear the focus; the whole says how far it lasts", () => {
  const { steps, description } = strip(focus);
  // An eye's 0.5 arcminutes of the 21.4859 that a flag fills from 160 heights, 2·atan(1/320) by hand: 2.3 percent.
  expect(steps[4]?.plates[0]).toMatchObject({
    label: "Original from 160 flag heights",
    description: "Blurred by 2.3 percent of its height; focus clarity 41%.",
  });
  expect(strip().steps[4]?.plates[1]).toMatchObject({
    label: "Redesign from 160 flag heights",
    description: "Blurred by 2.3 percent of its height.",
  });
  expect(description).toBe(
    "Both flags as they look from 10, 20, 40, 80, 160 and 320 flag heights, softer and softer. By its size the focus lasts to 80.",
  );
});

test("under the pictures: focus clarity before and after, and what is left; nothing without a focus", () => {
  expect(strip(focus).steps.map((step) => step.focus)).toEqual([
    { clarity: ["50%", "90%"], left: "100% left" },
    { clarity: ["50%", "90%"], left: "100% left" },
    { clarity: ["50%", "90%"], left: "100% left" },
    { clarity: ["40%", "90%"], left: "over 99% left" },
    { clarity: ["41%", "60%"], left: "42% left" },
    { clarity: undefined, left: "nothing left" },
  ]);
  expect(strip(focus).steps[5]?.plates[0].description).toMatch(/; of the focus nothing left\.$/);
  expect(strip().steps.every((step) => step.focus === undefined)).toBe(true);
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
