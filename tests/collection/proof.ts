// npm run proof: the whole proof over all 798 drawings of the two collections, printed as tables, and the tests that the
// suite makes of every eighth or fourth of them. Takes minutes. -- FOLDER: of the drawings in another folder alone, which are
// accepted and which not.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { openGround } from "../browser/alike.ts";
import { launchBrowser } from "../browser/browser.ts";
import { proveFile } from "./faithful.ts";
import { listCollection, listFolder } from "./files.ts";
import { floors } from "./floor.ts";
import { largestDifference, longSide, proveShown } from "./shown.ts";
import { countPasses, formatTable, rules } from "./table.ts";
import { formatVerdicts, judgeFile, leastAccepted } from "./verdict.ts";

const folder = process.argv[2];
const files = folder === undefined ? listCollection() : listFolder(folder);
const verdicts = [];
for (const file of files) verdicts.push(await judgeFile(file));
process.stdout.write(`${formatVerdicts(verdicts)}\n`);
if (verdicts.filter(({ kind }) => kind !== "refused").length < leastAccepted * files.length)
  process.exitCode = 1;
if (folder !== undefined) process.exit();

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

const browser = await launchBrowser();
const ground = await openGround(browser, { width: longSide, height: longSide }, 4, 4);
let alike = 0;
for (let from = 0; from < files.length; from += 16) {
  for (const { name, browser: published, measured } of await proveShown(
    ground,
    files.slice(from, from + 16),
  )) {
    const most = Math.max(published, measured);
    if (most <= largestDifference) alike += 1;
    else process.stderr.write(`${name}: ${(100 * most).toFixed(2)} % of the flag is shown otherwise\n`);
  }
}
await browser.close();
process.stdout.write(`shown alike by a browser, as published and as measured: ${alike} of ${files.length}\n`);
if (alike < files.length) process.exitCode = 1;

const root = join(import.meta.dirname, "../..");
const { status } = spawnSync(
  process.execPath,
  [
    "node_modules/vitest/vitest.mjs",
    "run",
    "--config",
    "tests/vitest.config.ts",
    "tests/collection/open-data.test.ts",
    "tests/svg/gate/sanitise-purify.test.ts",
  ],
  { cwd: root, stdio: "inherit", env: { ...process.env, EVERY_DRAWING: "yes" } },
);
if (status !== 0) process.exitCode = 1;
