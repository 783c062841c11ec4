import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { type EdgeMetric, edgeMetrics } from "../../src/measure/edgemetric.ts";
import { createFormat } from "../../src/words/format.ts";
import { describeEdgeSchema, metricIds, wordsOf } from "../../src/words/metricwords.ts";

const metrics: readonly EdgeMetric[] = edgeMetrics;
const metric = (id: string): EdgeMetric => {
  const found = metrics.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no metric ${id}`);
  return found;
};

test("the schema of an edge is the one that the metrics make: npm run schemas", () => {
  const file = path.resolve(import.meta.dirname, "../../src/cli/schema/measure.schema.json");
  expect(JSON.parse(readFileSync(file, "utf8")).$defs.edge).toEqual(describeEdgeSchema());
});

test.each([
  ["contrastRatio", 4.449, "4.4:1"],
  ["deltaE00", 19.96, "19.96"],
  ["hueOnly", true, "yes"],
  ["tincture", null, "not against it"],
])("%s of %j on a page: %s", (id, value, says) => {
  expect(wordsOf(metric(id)).page?.(value, createFormat("en"))).toBe(says);
});

test("in the command's table a figure is a cell, and what is true a note", () => {
  expect(wordsOf(metric("contrastRatio")).cell?.(4.449)).toBe("4.45");
  expect(wordsOf(metric("hueOnly")).note?.(true, "hue only")).toBe("hue only");
  expect(wordsOf(metric("hueOnly")).note?.(false, "hue only")).toBe("");
});

test("every metric with a name is shown on pages and under a head of the table, and has a source", () => {
  for (const one of metrics) {
    const { page, cell, note } = wordsOf(one);
    const isNamed = Object.hasOwn(metricIds, one.id);
    expect(one.head !== undefined, one.id).toBe(isNamed);
    if (isNamed) expect(page, one.id).toBeDefined();
    if (one.head !== undefined) expect(cell ?? note, one.id).toBeDefined();
    expect(one.source, one.id).not.toBe("");
  }
});
