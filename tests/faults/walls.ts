// Test support. Each wall taken down on purpose, in a copy of the project, to see that the tests stand behind it.
import { execFile } from "node:child_process";
import { cp, mkdir, readFile, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { promisify } from "node:util";
import type { Tally } from "./tally.ts";

const home = path.resolve(import.meta.dirname, "../..");
const run = promisify(execFile);

/** What holds the wall, what takes it down, and the test file that has to fail then. */
interface Wall {
  readonly name: string;
  readonly file: string;
  readonly holds: string;
  readonly instead: string;
  readonly test: string;
}

const walls: readonly Wall[] = [
  {
    name: "one canonical drawing: what is written is read again",
    file: "src/svg/gate/sanitise.ts",
    holds: "  if (reason === undefined) return { value: text, problems: [] };",
    instead: "  if (reason !== null) return { value: text, problems: [] };",
    test: "tests/hostile/svg.test.ts",
  },
  {
    name: "one canonical drawing: no selector but those of the set",
    file: "src/svg/style/stylesheet.ts",
    holds: '  if (kind === "selector") {',
    instead: '  if (kind === "selector") {\n    return;',
    test: "tests/svg/style/stylesheet.test.ts",
  },
  {
    name: "one canonical drawing: nothing but what renderers draw alike",
    file: "src/svg/gate/elementform.ts",
    holds: "    form === undefined ? undefined : Object.keys",
    instead: "    true ? undefined : Object.keys",
    test: "tests/svg/gate/elementform.test.ts",
  },
  {
    name: "behind a wall: a template that throws costs one study",
    file: "src/publish/settlepages.ts",
    holds: "    if (faults.size === 0) throw error;",
    instead: "    throw error;",
    test: "tests/publish/settlepages.test.ts",
  },
  {
    name: "behind a wall: a child that holds too much memory is killed",
    file: "src/analysis/jobs/childprocess.ts",
    holds: "measureResident(this.child.pid) > this.limits.megabytes",
    instead: "Number.NaN > this.limits.megabytes",
    test: "tests/analysis/jobs/pool.test.ts",
  },
  {
    name: "budgets: 48 colours",
    file: "src/analysis/drawing/smallcolour.ts",
    holds: "export const mostColours = 48",
    instead: "export const mostColours = 4800",
    test: "tests/analysis/drawing/smallcolour.test.ts",
  },
  {
    name: "budgets: twenty messages of a kind",
    file: "src/problem/tally.ts",
    holds: "const mostOfKind = 20",
    instead: "const mostOfKind = 20_000",
    test: "tests/problem/tally.test.ts",
  },
  {
    name: "one way to the file system: where a file really lies",
    file: "src/content/disk/readfile.ts",
    holds: 'fold(really.replace(/ \\(deleted\\)$/, ""))',
    instead: "fold(place)",
    test: "tests/content/disk/readfile.test.ts",
  },
  {
    name: "one way to the file system: nobody else reads",
    file: "src/publish/folder/lock.ts",
    holds: "\nimport ",
    instead: '\nimport { readFile } from "node:fs/promises";\nvoid readFile;\nimport ',
    test: "tests/structure/floors.test.ts",
  },
  {
    name: "linear text: a window of each line",
    file: "src/problem/locate.ts",
    holds: "if (line.length <= longest)",
    instead: "if (line.length >= 0)",
    test: "tests/problem/locate.test.ts",
  },
  {
    name: "linear text: no pattern that takes the square of a text",
    file: "src/content/text/cleantext.ts",
    holds: "const directionControl = ",
    instead: "export const square = /(?:a+)+$/;\nconst directionControl = ",
    test: "tests/structure/linear.test.ts",
  },
];

/** Takes every wall down, one at a time. Lost: one after which its test passes, or whose place is not there. */
export async function runWalls(room: string): Promise<Tally> {
  const copy = path.join(room, "project");
  await mkdir(copy);
  for (const entry of [
    "src",
    "tests",
    "templates",
    "content",
    "package.json",
    "tsconfig.json",
    "eleventy.config.ts",
  ])
    await cp(path.join(home, entry), path.join(copy, entry), { recursive: true });
  await symlink(path.join(home, "node_modules"), path.join(copy, "node_modules"));
  const lost: string[] = [];
  for (const wall of walls) {
    const file = path.join(copy, wall.file);
    const text = await readFile(file, "utf8");
    if (!text.includes(wall.holds)) {
      lost.push(`${wall.name}: ${wall.file} has no "${wall.holds.trim()}"`);
      continue;
    }
    if (!(await passes(copy, wall.test))) lost.push(`${wall.name}: ${wall.test} fails while the wall stands`);
    await writeFile(
      file,
      text.replace(wall.holds, () => wall.instead),
    );
    if (await passes(copy, wall.test)) lost.push(`${wall.name}: ${wall.test} passes without it`);
    await writeFile(file, text);
  }
  return { name: "walls taken down", tried: walls.length, lost, note: "each was seen by its test" };
}

async function passes(folder: string, test: string): Promise<boolean> {
  const command = path.join(folder, "node_modules/vitest/vitest.mjs");
  return run(process.execPath, [command, "run", "--config", "tests/vitest.config.ts", test], {
    cwd: folder,
  }).then(
    () => true,
    () => false,
  );
}
