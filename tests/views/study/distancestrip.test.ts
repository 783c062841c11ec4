import { expect, test } from "vitest";
import { linkFrom } from "../../../src/views/address.ts";
import { formatStripFile, presentStrip, stripSize } from "../../../src/views/study/distancestrip.ts";
import { createFormat } from "../../../src/words/format.ts";
import { compared, type Focus } from "../../publish/compared.ts";

const path = "/studies/a-square/";
const paints = [{ name: "white", hex: "#ffffff" } as const];
const focus: Focus = {
  lastsTo: 80,
  clarity: [50, 90],
  from: { 80: [0.42, 41.2, 60], 320: [0, null, null] },
};
const strip = (seen?: Focus) =>
  presentStrip(compared(paints, [], seen), linkFrom(path), path, createFormat("en-GB"));

test("three steps, original over redesign, each with its own file and words", () => {
  const { steps } = strip(focus);
  expect(steps.map(({ distance }) => distance)).toEqual([20, 80, 320]);
  expect(steps[1]?.plates.map(({ src }) => src)).toEqual(["from-80-original.webp", "from-80-redesign.webp"]);
  expect(
    new Set(steps.flatMap(({ plates }) => plates.map(({ label, description }) => `${label}. ${description}`)))
      .size,
  ).toBe(6);
});

test("each picture says how blurred it is and how clear what has to be seen; the whole says how far it lasts", () => {
  const { steps, description } = strip(focus);
  // An eye's 0.5 arcminutes of the 42.9713 that a flag fills from 80 heights, 2·atan(1/160) by hand: 1.2 percent.
  expect(steps[1]?.plates[0]).toMatchObject({
    label: "Original from 80 flag heights",
    description: "Blurred by 1.2 percent of its height; what has to be seen has a clarity of 41%.",
  });
  expect(strip().steps[1]?.plates[1]).toMatchObject({
    label: "Redesign from 80 flag heights",
    description: "Blurred by 1.2 percent of its height.",
  });
  expect(description).toBe(
    "Both flags as they look from afar, softer and softer: 20 flag heights, 80 flag heights and 320 flag heights. What has to be seen is large enough to be made out from up to 80 flag heights away, whatever its colours.",
  );
});

test("under the pictures: the clarity before and after as far as it lasts, then that it does not; nothing where nothing has to be seen", () => {
  const { steps, says } = strip(focus);
  expect(steps.map(({ clarity, lost }) => [clarity, lost])).toEqual([
    [["50%", "90%"], undefined],
    [["41%", "60%"], undefined],
    [undefined, "enlarged: at its real size too small to make out"],
  ]);
  expect(says[0]).toBe("Clarity is told only where what has to be seen can still be made out.");
  expect(steps[2]?.plates[0].description).toMatch(/; what has to be seen is too small to be made out\.$/);
  expect(strip().says).toEqual([]);
  expect(strip().steps.every(({ clarity, lost }) => clarity === undefined && lost === undefined)).toBe(true);
});

test("where clarity rises with distance the caption says why", () => {
  const rise =
    "It rises from further away where fine parts with weak edges can no longer be seen, and count no more.";
  expect(strip(focus).says).not.toContain(rise);
  expect(strip({ ...focus, clarity: [5, 90], from: { 80: [0.8, 8, 90] } }).says).toContain(rise);
});

test("clarity that is the same from everywhere is said once", () => {
  const { steps, says } = strip({ ...focus, from: {} });
  expect(steps.map(({ clarity }) => clarity)).toEqual([undefined, undefined, undefined]);
  expect(says).toEqual([
    "As far as it can be made out, what has to be seen has a clarity of 50% in the original and 90% in the redesign.",
    "What has to be seen is large enough to be made out from up to 80 flag heights away, whatever its colours.",
  ]);
});

test.each([
  [[2, 3], { width: 240, height: 160 }],
  [[1, 1], { width: 160, height: 160 }],
  [[1, 4], { width: 320, height: 80 }],
] as const)("a flag of %j is drawn %j", (proportions, size) => {
  expect(stripSize(proportions)).toEqual(size);
});

test("files are named by distance", () => {
  expect(formatStripFile(10, "redesign")).toBe("from-10-redesign.webp");
});
