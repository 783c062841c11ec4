import { expect, test } from "vitest";
import { listDrawn } from "../../../src/publish/pictures/drawingrecipe.ts";
import { collectSources } from "../../../src/publish/pictures/drawnsource.ts";
import { listFigures, listRuler } from "../../../src/publish/pictures/figurerecipe.ts";
import { makeAll } from "../making.ts";
import { matrix, ranked } from "../ranked.ts";
import { comparison, gallery, studyResult } from "../sample.ts";

const result = ranked({ matrix });
const list = (one: typeof studyResult) =>
  listFigures(one, gallery, collectSources([[one, listDrawn(one, gallery)]], undefined));

test("edge map, ruler and matrix say what they are, and that the redesign is unofficial", async () => {
  const made = await makeAll(list(result));
  expect([...made.keys()]).toEqual(["edge-map.svg", "ruler.svg", "matrix.svg"]);
  for (const [path, bytes] of made) {
    expect(String(bytes), path).toMatch(/^<svg [^>]*><title>[^<]+: A lighter square<\/title>/);
    expect(String(bytes), path).toMatch(/>Unofficial study: [^<]*<\/text>/);
    expect(String(bytes), path).not.toMatch(/href="(?!#|data:image\/png;base64,)/);
  }
});

test("the ruler alone is that of all figures", () => {
  const [, ruler] = list(result);
  expect(listRuler(result, gallery)).toEqual([ruler]);
});

test("a flag without an edge has neither map nor ruler", () => {
  const plain = { ...comparison, edges: [], before: { ...comparison.before, edges: [], weakestEdge: null } };
  expect(list({ ...studyResult, comparison: plain }).map(({ path }) => path)).toEqual([]);
  expect(listRuler({ ...studyResult, comparison: plain }, gallery)).toEqual([]);
});
