import { expect, test } from "vitest";
import { drawingMissing } from "../../../src/content/folder/absent.ts";
import { parseText, writeStudy } from "../../analysis/fixture.ts";

test("of many drawings twelve are named", () => {
  const { value: study } = parseText(writeStudy());
  if (!study) throw new Error("the test's own study is wrong");
  const names = Array.from({ length: 15 }, (_, index) => `z${String(index).padStart(2, "0")}.svg`);
  expect(drawingMissing(study, [...names, "study.md"].reverse()).hint).toBe(
    "The drawings there are: z00.svg, z01.svg, z02.svg, z03.svg, z04.svg, z05.svg, z06.svg, z07.svg, z08.svg, z09.svg, z10.svg, z11.svg and 3 more",
  );
});
