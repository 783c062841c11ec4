import { expect, test } from "vitest";
import { planLesson } from "../../../src/publish/pictures/lesson.ts";
import { gallery, series, studyResult } from "../sample.ts";

const all = {
  gallery,
  studies: [studyResult],
  series: [{ ...series, slug: "quay", entries: [{ study: "a-square" }] }],
  problems: [],
  leftOut: [],
} as unknown as Parameters<typeof planLesson>[0];
const size = { width: 640, height: 360 };

test("a lesson has its stills first, then what goes with each study, and what to say", () => {
  const study = planLesson(all, "a-square", false, size);
  expect(study.files[0]?.path).toBe("01-the-flag.png");
  expect(study.files.at(-1)?.path).toBe("ruler.svg");
  expect(study.script).toMatch(/^# A lighter square\n/);
  const lesson = planLesson(all, "quay", true, size);
  expect(lesson.files[0]?.path).toBe("01-the-opening.png");
  expect(lesson.files.at(-1)?.path).toBe("a-square-ruler.svg");
});

test("what is not there has no lesson", () => {
  expect(() => planLesson(all, "gone", false, size)).toThrow("no steps of gone");
});
