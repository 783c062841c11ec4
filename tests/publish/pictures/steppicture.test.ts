import { expect, test } from "vitest";
import { arrangePicture } from "../../../src/publish/pictures/steppicture.ts";
import { listSteps } from "../../../src/views/show/showsteps.ts";
import { createFormat } from "../../../src/words/format.ts";
import { matrix, ranked } from "../ranked.ts";
import { gallery, studyResult } from "../sample.ts";

const box = { x: 50, y: 60, width: 900, height: 400 };
const find = () => ({ drawing: studyResult.drawings.original, proportions: [2, 3] as const });

test("whatever a step shows stays in its box", () => {
  const steps = listSteps(ranked({ matrix }), gallery, "/studies/a-square/show/", createFormat("en"));
  const kinds = new Set(steps.map(({ picture }) => picture.kind));
  expect([...kinds].sort()).toEqual(["afar", "edge", "flag", "matrix", "pair", "ruler", "seen"]);
  for (const { name, picture } of steps)
    for (const item of arrangePicture(picture, box, 12, find, createFormat("en"))) {
      if (item.kind === "shape" || (item.kind === "text" && item.anchor !== "start")) continue;
      expect(item.x, name).toBeGreaterThanOrEqual(box.x);
      expect(item.x + item.width, name).toBeLessThanOrEqual(box.x + box.width + 0.01);
      const low = item.kind === "text" ? item.pixels : item.height;
      expect(item.y + low, name).toBeLessThanOrEqual(box.y + box.height + 0.01);
    }
});

test("flags of a strip stand in rows, none beside nothing", () => {
  const plate = { src: "a.svg" };
  const strip = { kind: "strip", plates: Array.from({ length: 7 }, () => plate) } as never;
  const tops = arrangePicture(strip, box, 12, find, createFormat("en")).map((item) =>
    "y" in item ? Math.round(item.y) : 0,
  );
  expect([...new Set(tops)].map((top) => tops.filter((one) => one === top).length)).toEqual([4, 3]);
});
