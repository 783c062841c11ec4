import { expect, test } from "vitest";
import { arrangeMap, arrangeRuler, label } from "../../../src/publish/pictures/chartscene.ts";
import { listSteps } from "../../../src/views/show/showsteps.ts";
import { presentFigures } from "../../../src/views/study/studypage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, studyResult } from "../sample.ts";

const format = createFormat("en");
const steps = listSteps(studyResult, gallery, "/studies/a-square/show/", format);

test("a label is one line, a fortieth high", () => {
  expect(label("Words", 10, 20, 27, 300)).toMatchObject({ x: 10, y: 20, width: 300, pixels: 1.1 * 27 });
});

test("the map lies over the flag in pale, and has a line for each edge that is drawn", () => {
  const { edgeMap } = presentFigures(studyResult, gallery, (to) => to, format);
  const ground = { drawing: "", proportions: [2, 3] as const };
  const [paper, flag, lines] = arrangeMap(edgeMap, 0, ground, { x: 0, y: 0, width: 300, height: 200 });
  expect(paper?.kind).toBe("shape");
  expect(flag).toMatchObject({ kind: "flag", width: 300, height: 200, opacity: 0.2 });
  const drawn = lines?.kind === "shape" ? (lines.svg.match(/<path d="M/g) ?? []).length : 0;
  const banded = edgeMap.band === "" ? 0 : 1;
  expect(drawn).toBe(edgeMap.panels[0].lines.length + banded);
});

test("on the ruler a ring stands at the contrast of the original", () => {
  const picture = steps.find(({ name }) => name === "better-and-worse")?.picture;
  if (picture?.kind !== "ruler") throw new Error("no ruler");
  const box = { x: 0, y: 0, width: 1000, height: 400 };
  const shapes = arrangeRuler(picture.ruler, box, 20, format.say).flatMap((item) =>
    item.kind === "shape" ? [item.svg] : [],
  );
  const [row] = picture.ruler.rows;
  // The axis is the part of the box from 34 to 74 percent.
  const at = Math.round((340 + 4 * (row?.ring ?? 0)) * 10) / 10;
  expect(shapes[1]).toContain(`<circle cx="${at}"`);
});
