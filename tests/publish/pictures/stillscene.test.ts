import { expect, test } from "vitest";
import type { PictureScene } from "../../../src/publish/pictures/picturescene.ts";
import { arrangeStep } from "../../../src/publish/pictures/stillscene.ts";
import { listSteps } from "../../../src/views/show/showsteps.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, studyResult } from "../sample.ts";

const steps = listSteps(studyResult, gallery, "/studies/a-square/show/", createFormat("en"));
const find = () => ({ drawing: studyResult.drawings.original, proportions: [2, 3] as const });
const sizes = [
  { width: 1920, height: 1080 },
  { width: 640, height: 360 },
  { width: 1080, height: 1350 },
];
const textsOf = ({ items }: PictureScene) => items.flatMap((item) => (item.kind === "text" ? [item] : []));

// Source of the margins: SMPTE ST 2046-1, 2009, safe title area.
test.each(sizes)(
  "at $width × $height nothing that is said stands in the outer twentieth, nor under a fortieth high",
  (size) => {
    const unit = Math.min(size.height, (size.width * 3) / 4) / 40;
    for (const step of steps) {
      const scene = arrangeStep(step, size, createFormat("en"), find);
      for (const item of textsOf(scene)) {
        const share = { start: 0, middle: 0.5, end: 1 }[item.anchor];
        const where = `${step.name}: ${item.text}`;
        expect(item.pixels / unit, where).toBeGreaterThanOrEqual(0.95);
        expect(item.y / size.height, where).toBeGreaterThanOrEqual(0.0499);
        expect((item.y + item.pixels) / size.height, where).toBeLessThanOrEqual(0.951);
        if (item.anchor !== "middle")
          expect((item.x - share * item.width) / size.width, where).toBeGreaterThanOrEqual(0.0499);
        if (item.anchor !== "middle")
          expect((item.x + (1 - share) * item.width) / size.width, where).toBeLessThanOrEqual(0.951);
      }
      for (const item of scene.items)
        if (item.kind === "flag") {
          expect(item.x / size.width, step.name).toBeGreaterThanOrEqual(0.0499);
          expect((item.x + item.width) / size.width, step.name).toBeLessThanOrEqual(0.951);
          expect((item.y + item.height) / size.height, step.name).toBeLessThanOrEqual(0.951);
        }
    }
  },
);

test("every step says its heading, its words, and that it is unofficial", () => {
  for (const step of steps) {
    const said = textsOf(arrangeStep(step, { width: 1920, height: 1080 }, createFormat("en"), find)).map(
      ({ text }) => text,
    );
    expect(said).toContain(step.heading);
    expect(said).toContain(step.says);
    expect(said).toContain("Unofficial study, for discussion");
  }
});

test("where lines run from right to left, they begin at the right", () => {
  const [first] = steps;
  if (first === undefined) throw new Error("no step");
  const [heading] = textsOf(arrangeStep(first, { width: 1000, height: 600 }, createFormat("ar"), find));
  expect([heading?.x, heading?.anchor]).toEqual([950, "end"]);
});
