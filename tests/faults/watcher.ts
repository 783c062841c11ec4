// Test support, a process of its own: reads a published folder without pause, in two ways, and counts what is wrong.
// Words: the folder; then a folder for each whole site that may be seen.
import { readFileSync, statSync } from "node:fs";
import path from "node:path";
import { checkWhole, digest, readListed } from "./whole.ts";

export interface Sightings {
  /** Whole readings of the folder as somebody who copies it reads: opened once, read to the end. */
  readonly whole: number;
  /** Single readings of a file by its full path, as a web server reads. */
  readonly single: number;
  /** Times there was no folder at all. */
  readonly absent: number;
  readonly lost: readonly string[];
  readonly seen: readonly string[];
}

const [site = "", ...models] = process.argv.slice(2);
const allowed = new Set(models.map((model) => checkWhole(model)));
/** Path → digests it may have, for the files that every model has. */
const common = new Map<string, Set<string>>();
for (const model of models) {
  for (const { path: file, sha256 } of readListed(model).files) {
    const found = common.get(file) ?? new Set();
    common.set(file, found.add(sha256));
  }
}
const everywhere = [...common.keys()].filter((file) =>
  models.every((model) => readListed(model).files.some((listed) => listed.path === file)),
);
const counts = { whole: 0, single: 0, absent: 0 };
const lost: string[] = [];
const seen = new Set<string>();
let isStopped = false;
let next = 0;

process.on("message", () => {
  isStopped = true;
});
process.on("disconnect", () => process.exit(0));
process.send?.("ready");
look();

function look(): void {
  readWhole();
  for (let n = 0; n < 20; n += 1) readSingle();
  if (!isStopped) setTimeout(look, 10);
  else {
    const sightings: Sightings = { ...counts, lost, seen: [...seen] };
    process.send?.(sightings, () => process.exit(0));
  }
}

/** The folder is entered: what it is called from then on, and whether it is replaced, is of no matter. */
function readWhole(): void {
  try {
    process.chdir(site);
  } catch {
    counts.absent += 1;
    return;
  }
  try {
    const found = checkWhole(".");
    seen.add(found);
    if (!allowed.has(found)) lost.push("a site that was never built");
  } catch (error) {
    lost.push(`entered: ${error instanceof Error ? error.message : String(error)}`);
  } finally {
    counts.whole += 1;
    process.chdir("/");
  }
}

function readSingle(): void {
  const file = everywhere[next % everywhere.length] ?? "index.html";
  next += 1;
  try {
    const found = digest(readFileSync(path.join(site, file)));
    if (common.get(file)?.has(found) !== true) lost.push(`${file} is of no site`);
    counts.single += 1;
  } catch (error) {
    try {
      statSync(site);
      lost.push(`${file}: ${error instanceof Error ? error.message : String(error)}`);
    } catch {
      counts.absent += 1;
    }
  }
}
