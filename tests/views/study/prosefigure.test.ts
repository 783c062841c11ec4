import { expect, test } from "vitest";
import { figureKinds } from "../../../src/content/study/figurekind.ts";
import type { ComparedEdge, Comparison } from "../../../src/measure/comparison.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { presentGain, rankGains } from "../../../src/views/front/gainchart.ts";
import { presentMatrix } from "../../../src/views/study/matrixview.ts";
import { createFigures } from "../../../src/views/study/prosefigure.ts";
import { presentStudy } from "../../../src/views/study/studypage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { matrix, ranked } from "../../publish/ranked.ts";
import { comparison, gallery, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const shown = presentStudy(studyResult, gallery, format);
const figures = (numbers: Comparison = comparison) => createFigures(shown, numbers, format);
const find = (edge: string, numbers?: Comparison) => {
  const found = figures(numbers)({ kind: "edge", edge });
  return found?.kind === "edge" ? found.edge.key : undefined;
};

test("finds an edge by its two names, in either order, whatever the case and the space", () => {
  expect(find("dark blue / red")).toBe("p1-p2");
  expect(find("Red/Dark Blue")).toBe("p1-p2");
  expect(find("white / dark blue")).toBe("p1-p3");
});

test("finds nothing by names after the change, by one name, or by the same name twice", () => {
  for (const edge of ["dark blue / yellow", "red", "red / red", "red / white", "", "a / b / c"]) {
    expect(find(edge), edge).toBeUndefined();
  }
});

test("an edge that was not there before has no name to be found by", () => {
  const edge = comparison.edges[1] as ComparedEdge;
  const parted = { ...comparison, edges: [{ ...edge, contrast: [null, 67.2] as const }] };
  expect(find("dark blue / red", parted)).toBeUndefined();
});

test("every figure has an anchor of its own, and a second showing another", () => {
  const ask = figures();
  const ids = ["edge map", "edge map", "true size"].map((kind) => {
    const known = figureKinds.find((one) => one === kind);
    return known && ask({ kind: known })?.id;
  });
  expect(ids).toEqual(["figure-edge-map", "figure-edge-map-2", "figure-true-size"]);
  const edges = ["dark blue / red", "red / dark blue"].map((edge) => ask({ kind: "edge", edge })?.id);
  expect(edges).toEqual(["figure-edge-p1-p2", "figure-edge-p1-p2-2"]);
});

test("each says in words what it shows", () => {
  const says = (kind: (typeof figureKinds)[number]) => figures()({ kind })?.says;
  expect(says("edge map")).toBe(
    "Edge map. Original: Strong, 43% of all edge length: dark blue / white. Weak, 57%: dark blue / red. Redesign: Strong, 100% of all edge length: dark blue / white and dark blue / yellow.",
  );
  expect(says("contrast ruler")).toBe(
    "Contrast ruler. dark blue / red, 2.00 flag heights: contrast 25% to 67%, weak to strong; gained; dark blue / white, 1.50 flag heights: contrast 84%, strong; same.",
  );
  expect(says("true size")).toBe(
    "Both flags as small as they look from a distance, at arm’s length: 20 flag heights, 80 flag heights, and 320 flag heights.",
  );
  expect(says("distance strip")).toMatch(
    /^Distance strip. Both flags as they look from afar, softer and softer: 20 flag heights, 80 flag heights/,
  );
  expect(says("seen otherwise")).toContain("Protan: clarity of the whole flag 74% → 100%.");
  expect(says("original")).toMatch(/^Original: mostly dark blue/);
  expect(figures()({ kind: "edge", edge: "dark blue / red" })?.says).toBe(
    "Dark blue / red: contrast 25% (weak) before, 67% (strong) after; gained.",
  );
});

test("the gain chart is the gallery's, made only where it is asked for", () => {
  let made = 0;
  const gain = () => {
    made += 1;
    return presentGain(rankGains([studyResult], format), linkFrom("/studies/a-square/"), format, "a-square");
  };
  const ask = createFigures(shown, comparison, format, { gain });
  ask({ kind: "edge map" });
  expect(made).toBe(0);
  expect(ask({ kind: "gain chart" })).toMatchObject({
    id: "figure-gain-chart",
    says: "What each change does to clarity. 1 study: clarity rises in 1. It rises most in “A lighter square”, from 74% to 100%.",
    gain: { rows: [{ slug: "a-square", address: undefined }] },
  });
  expect(figures()({ kind: "gain chart" })).toBeUndefined();
});

test("what has nothing to show is left out: no focus, no edges", () => {
  expect(figures()({ kind: "lasts to" })).toBeUndefined();
  const plain = figures({ ...comparison, edges: [] });
  expect(figureKinds.filter((kind) => plain({ kind }) !== undefined)).toEqual([
    "original",
    "redesign",
    "true size",
    "seen otherwise",
  ]);
});

test("the matrix is shown where the options were ranked, and in words by its caption", () => {
  expect(figures()({ kind: "matrix" })).toBeUndefined();
  const link = linkFrom("/studies/a-square/");
  const withMatrix = { ...shown, matrix: presentMatrix(ranked({ matrix }), link, format) };
  const figure = createFigures(withMatrix, comparison, format)({ kind: "matrix" });
  expect(figure?.id).toBe("figure-matrix");
  expect(figure?.says).toMatch(/^Every change of one colour\. A row changes one colour of the flag, /);
});
