// Every sixteenth of the 798 drawings: what proof.ts shows for all of them still holds.
import { expect, test } from "vitest";
import { proveFile } from "./faithful.ts";
import { listCollection } from "./files.ts";
import { floors } from "./floor.ts";
import { countPasses, formatTable, rules } from "./table.ts";

test("reading, writing and recolouring are faithful to real drawings", {
  timeout: 400_000,
}, async () => {
  const files = listCollection();
  expect(files).toHaveLength(798);
  const proofs = [];
  for (const file of files.filter((_, index) => index % 16 === 0)) proofs.push(await proveFile(file));
  const passes = countPasses(proofs);
  process.stdout.write(`${formatTable(proofs, 3)}\n`);
  for (const [index, rule] of rules.entries()) {
    expect(passes[index], rule.name).toBeGreaterThanOrEqual(floors.sample[index] ?? Number.POSITIVE_INFINITY);
  }
});
