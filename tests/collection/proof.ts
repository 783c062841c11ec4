// npm run proof: the whole proof over all 798 drawings of the two collections, printed as a table. Takes minutes.
import { proveFile } from "./faithful.ts";
import { listCollection } from "./files.ts";
import { floors } from "./floor.ts";
import { countPasses, formatTable, rules } from "./table.ts";

const files = listCollection();
const proofs = [];
for (const [index, file] of files.entries()) {
  proofs.push(await proveFile(file));
  if (index % 100 === 99) process.stderr.write(`${index + 1} of ${files.length}\n`);
}
process.stdout.write(`${formatTable(proofs)}\n`);
const passes = countPasses(proofs);
for (const [index, rule] of rules.entries()) {
  if ((passes[index] ?? 0) >= (floors.all[index] ?? Number.POSITIVE_INFINITY)) continue;
  process.stderr.write(`${rule.name}: ${passes[index]} pass, ${floors.all[index]} did\n`);
  process.exitCode = 1;
}
