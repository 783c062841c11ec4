// Floor 5. Results of a large gallery on the disk: what only a study's own pages show is read back when it is asked for, so
// that memory holds a small index of all studies and no more.
import { readFileSync } from "node:fs";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { deserialize, serialize } from "node:v8";
import type { StudyLikeness } from "./near.ts";
import type { StudyResult } from "./result.ts";

/** Studies whose results are held in memory whole. A result has some 100 KB. */
export const mostInMemory = 40;

/** What lies on the disk: nine tenths of a result. */
const bulky = ["drawings", "edgeLines", "ranking"] as const;
type Bulk = Pick<StudyResult, (typeof bulky)[number]>;

/** A result whose bulk lies in a file, as plain data: for a process that opens it again. */
export interface SpilledResult {
  readonly slim: Omit<StudyResult, keyof Bulk>;
  readonly file: string;
}

const files = new WeakMap<StudyResult, string>();

/** A folder for results, made when the first one comes. Nobody else can write there. */
export class Spill {
  private folder: Promise<string> | undefined;

  /** Returns the path of a file called `name` in the folder. */
  async place(name: string): Promise<string> {
    this.folder ??= mkdtemp(join(tmpdir(), "counterchange-results-"));
    return join(await this.folder, name);
  }

  /** Writes a result down and returns it without its bulk in memory. */
  async put(result: StudyResult): Promise<StudyResult> {
    const { drawings, edgeLines, ranking, ...slim } = result;
    const file = await this.place(`${result.study.slug}.result`);
    await writeFile(file, serialize({ drawings, edgeLines, ...(ranking && { ranking }) }));
    return openSpilled({ slim, file });
  }

  async remove(): Promise<void> {
    if (this.folder !== undefined) await rm(await this.folder, { recursive: true, force: true });
  }
}

/** Returns a result that reads its bulk when asked for it. It must not be spread: that would read it for good. */
export function openSpilled({ slim, file }: SpilledResult): StudyResult {
  const result = Object.defineProperties(
    { ...slim },
    Object.fromEntries(
      bulky.map((key) => [key, { get: () => readBulk(file)[key], enumerable: true, configurable: true }]),
    ),
  ) as StudyResult;
  files.set(result, file);
  return result;
}

/** Returns the plain data of a result that was spilled, or undefined for one that was not. */
export function closeSpilled(result: StudyResult): SpilledResult | undefined {
  const file = files.get(result);
  if (file === undefined) return undefined;
  const own = Object.entries(Object.getOwnPropertyDescriptors(result)).filter(([, { get }]) => !get);
  return {
    slim: Object.fromEntries(own.map(([key, { value }]) => [key, value])) as SpilledResult["slim"],
    file,
  };
}

/** Returns the result with its likeness, spilled where it was. */
export function addLikeness(result: StudyResult, likeness: StudyLikeness): StudyResult {
  const spilled = closeSpilled(result);
  if (spilled === undefined) return { ...result, likeness };
  return openSpilled({ ...spilled, slim: { ...spilled.slim, likeness } });
}

/** Pages of one study ask for its bulk again and again; the last one that was read is at hand. */
let last: { readonly file: string; readonly bulk: Bulk } | undefined;

function readBulk(file: string): Bulk {
  // We wrote it in this run, in a folder that is ours alone.
  if (last?.file !== file) last = { file, bulk: deserialize(readFileSync(file)) as Bulk };
  return last.bulk;
}
