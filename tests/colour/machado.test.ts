import { filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit } from "culori";
import { describe, expect, test } from "vitest";
import { machadoMatrices } from "../../src/colour/machado.ts";
import { machadoRows } from "../reference/vision.ts";

// culori carries a transcription of its own; its filters multiply it with whatever numbers they are given.
const otherTranscription = {
  protan: filterDeficiencyProt,
  deutan: filterDeficiencyDeuter,
  tritan: filterDeficiencyTrit,
};

describe.each(["protan", "deutan", "tritan"] as const)("%s", (deficiency) => {
  const matrices = machadoMatrices[deficiency];

  test("has eleven matrices and begins with the identity", () => {
    expect(matrices.length).toBe(11);
    expect(matrices[0]).toEqual([
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ]);
  });

  test("each row sums to 1, within 1e-6: greys stay", () => {
    for (const row of matrices.flat()) {
      expect(Math.abs(row[0] + row[1] + row[2] - 1)).toBeLessThan(1.0001e-6);
    }
  });

  test("each matrix is the one in culori's transcription", () => {
    matrices.forEach((matrix, step) => {
      const filter = otherTranscription[deficiency](step / 10);
      const columns = [
        filter({ mode: "rgb", r: 1, g: 0, b: 0 }),
        filter({ mode: "rgb", r: 0, g: 1, b: 0 }),
        filter({ mode: "rgb", r: 0, g: 0, b: 1 }),
      ] as unknown as readonly { r: number; g: number; b: number }[];
      columns.forEach((column, index) => {
        expect([column.r, column.g, column.b]).toEqual(
          matrix.map((row) => expect.closeTo(row[index] ?? Number.NaN, 12)),
        );
      });
    });
  });
});

test.each(machadoRows)("%s at step %i is as published", (deficiency, step, rows) => {
  expect(machadoMatrices[deficiency][step]).toEqual(rows);
});
