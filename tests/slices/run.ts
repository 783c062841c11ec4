// npm run slices [-- --studies N]: a gallery divided among the tasks of engines that exist, each slice in a folder of its own,
// by the very lines of the guide: GNU parallel, and a job array of Slurm of which one task is killed and requeued. The folders
// are merged and published, and the site has to have the bytes of a single build. Prints versions, times and sizes. Ends with 1
// where a site differs, with 2 where an engine is not installed.
import { cp, mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { writeGallery } from "../bench/gallery.ts";
import { textOf } from "../guide/block.ts";
import { findVersions, runLines } from "./engine.ts";
import { measureKept, readSite } from "./site.ts";
import { runArray } from "./slurm.ts";

const { values } = parseArgs({ options: { studies: { type: "string", default: "12" } } });
const studies = Number(values.studies);
const top = await mkdtemp(join(tmpdir(), "counterchange-slices-"));
let status = 0;

const say = (line: string): void => void process.stdout.write(`${line}\n`);

/** A working folder with the gallery, in which `npx counterchange` is this checkout. */
async function makeRoom(name: string): Promise<string> {
  const room = join(top, name);
  await mkdir(join(room, "node_modules/.bin"), { recursive: true });
  await writeFile(join(room, "package.json"), '{ "private": true }\n');
  const start = join(import.meta.dirname, "../../src/cli/start.mjs");
  const command = `#!/bin/sh\nexec "${process.execPath}" "${start}" "$@"\n`;
  await writeFile(join(room, "node_modules/.bin/counterchange"), command, { mode: 0o755 });
  await cp(join(top, "content"), join(room, "content"), { recursive: true });
  return room;
}

/** Does something, and says how long it took. */
async function time(what: string, work: () => Promise<unknown>): Promise<void> {
  const began = performance.now();
  await work();
  say(`  ${((performance.now() - began) / 1000).toFixed(1).padStart(6)} s  ${what}`);
}

/** Merges and publishes as the guide says, and compares with the single build. */
async function finish(room: string, single: ReadonlyMap<string, string>): Promise<void> {
  const [merge = "", publish = ""] = textOf("sh merge")
    .trimEnd()
    .split(/\n(?=npx)/);
  await time("merged", () => runLines(room, merge));
  const { entries, bytes } = await measureKept(join(room, "merged"));
  say(
    `            ${entries} entries, ${Math.round(bytes / 1000)} KB; a study ${(entries / studies).toFixed(1)} and ${Math.round(bytes / 1000 / studies)} KB`,
  );
  await time("published from the merged folder", () => runLines(room, publish));
  const site = await readSite(join(room, "published"));
  const other = [...new Set([...site.keys(), ...single.keys()])].filter(
    (path) => site.get(path) !== single.get(path),
  );
  if (other.length > 0) status = 1;
  say(
    other.length === 0
      ? `  holds: all ${site.size} files have the bytes of the single build`
      : `  FAILS: ${other.length} files differ, such as ${other.slice(0, 3).join(", ")}`,
  );
}

function lacks(engine: string, packages: string, missing: readonly string[]): void {
  if (status === 0) status = 2;
  say(`  not tried: ${missing.join(", ")} not found. Install ${engine}: apt-get install ${packages}`);
}

try {
  say(
    `${studies} studies of invented flags in 4 slices; ${availableParallelism()} processors, Node ${process.versions.node}`,
  );
  await writeGallery(join(top, "content"), studies, 0);

  say("single build");
  const alone = await makeRoom("single");
  await time("published, nothing kept before", () =>
    runLines(alone, "npx counterchange publish content --cache off"),
  );
  const single = await readSite(join(alone, "published"));

  const parallel = findVersions({ parallel: "--version" });
  say(`GNU parallel: ${parallel.found.join(", ") || "not installed"}`);
  if (parallel.missing.length > 0 || !/GNU/.test(parallel.found.join()))
    lacks("GNU parallel", "parallel", ["parallel of GNU"]);
  else {
    const room = await makeRoom("parallel");
    await time("four slices", () => runLines(room, textOf("sh parallel")));
    await finish(room, single);
  }

  const slurm = findVersions({
    slurmctld: "-V",
    slurmd: "-V",
    sbatch: "-V",
    scontrol: "-V",
    squeue: "-V",
    munged: "--version",
  });
  say(`Slurm: ${slurm.found.join(", ") || "not installed"}`);
  if (slurm.missing.length > 0) lacks("Slurm", "slurm-wlm munge", slurm.missing);
  else {
    const room = await makeRoom("slurm");
    await time("four slices, one of them killed and requeued", () =>
      runArray(room, join(top, "engine"), textOf("sh slurm"), say),
    );
    await finish(room, single);
  }
} finally {
  await rm(top, { recursive: true, force: true });
}
process.exitCode = status;
