import { expect, test } from "vitest";
import type { ComparedEdge } from "../../../src/measure/comparison.ts";
import { findEdgeFigure } from "../../../src/site/present/figure.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { comparison } from "../sample.ts";

const find = (edge: string) => findEdgeFigure(edge, comparison, createFormat("en"))?.key;

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
  expect(findEdgeFigure("dark blue / red", parted, createFormat("en"))).toBeUndefined();
});
