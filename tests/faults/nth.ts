// Test support. Publishing with a disk on which the Nth call fails, for every N, with every error a disk gives.
import { readdir, readFile, rm } from "node:fs/promises";
import path from "node:path";
import { OutputError } from "../../src/publish/folder/diskfailure.ts";
import { withOutput } from "../../src/publish/folder/output.ts";
import { fileOf, type SiteFile } from "../../src/publish/folder/sitefile.ts";
import type { Disk } from "../../src/publish/folder/writedisk.ts";
import { type Call, disks, failingDisk } from "./disk.ts";
import { message, type Tally } from "./tally.ts";
import { checkWhole } from "./whole.ts";

type Way = keyof typeof disks;

export interface NthOptions {
  /** An empty folder. */
  readonly room: string;
  readonly codes: readonly string[];
  readonly ways: readonly Way[];
  /** Whether the disk fails once, or from then on. */
  readonly lasting: readonly boolean[];
  readonly calls?: readonly Call[];
  readonly files?: number;
  /** Of how many calls one fails: 1 is every one. */
  readonly step?: number;
}

const makeFiles = (mark: string, count: number): readonly SiteFile[] =>
  Array.from({ length: count }, (_, n) =>
    fileOf(n % 3 === 0 ? `page-${n}.html` : `studies/${mark}-${n % 2}/file-${n}.txt`, () => `${mark} ${n}`),
  );

/**
 * Publishes a second site over a first, with the Nth call failing, for every N until one is not reached. Where it is
 * refused, the first must stand whole and the reason be a calm one; where it is not, the second. Then a sound disk must
 * publish a third, and leave nothing of the failure behind.
 */
export async function runNth(options: NthOptions): Promise<Tally> {
  const { room, codes, ways, lasting, files = 4, step = 1 } = options;
  const lost: string[] = [];
  const counts = { tried: 0, refused: 0, mended: 0 };
  for (const way of ways)
    for (const code of codes)
      for (const forGood of lasting)
        for (let at = 1; ; at += step) {
          const failing = failingDisk(at, code, {
            forGood,
            on: disks[way],
            ...(options.calls === undefined ? {} : { calls: options.calls }),
          });
          const what = `${way}, ${code} at call ${at}${forGood ? " and after" : ""}`;
          const state = await tryOnce({ room, way, files, disk: failing.disk });
          if (failing.count() < at) break;
          counts.tried += 1;
          if (state.wasRefused) counts.refused += 1;
          if (state.wasMended) counts.mended += 1;
          lost.push(...state.lost.map((line) => `${what}: ${line}`));
        }
  const note = `${counts.refused} refused with the old site whole, ${counts.tried - counts.refused} published all the same; ${counts.mended} mended by the next build`;
  return { name: "the Nth call to the disk fails", tried: counts.tried, lost, note };
}

interface Trial {
  readonly room: string;
  readonly way: Way;
  readonly files: number;
  readonly disk: Disk;
}

interface State {
  readonly wasRefused: boolean;
  readonly wasMended: boolean;
  readonly lost: readonly string[];
}

async function tryOnce({ room, way, files, disk }: Trial): Promise<State> {
  const site = path.join(room, "_site");
  for (const name of await readdir(room)) await rm(path.join(room, name), { recursive: true, force: true });
  const publish = (mark: string, on: Disk) =>
    withOutput(site, { keepOut: [], disk: on }, (output) => output.publish(makeFiles(mark, files)));
  await publish("first", disks[way]);
  const lost: string[] = [];
  const failure: unknown = await publish("second", disk).then(
    () => undefined,
    (error: unknown) => error,
  );
  const wasRefused = failure !== undefined;
  if (wasRefused && !(failure instanceof OutputError)) lost.push(`no calm message: ${message(failure)}`);
  const expected = wasRefused ? "first 0" : "second 0";
  const found = await look(site, expected);
  // Two renames, and the second and its undoing both fail: the old site waits in the workshop.
  const isOut =
    found !== undefined &&
    way === "move" &&
    wasRefused &&
    (await look(path.join(room, ".counterchange-_site/outgoing"), expected)) === undefined;
  if (found !== undefined && !isOut) lost.push(found);
  const after: unknown = await publish("third", disks[way]).catch((error: unknown) => error);
  if (after instanceof Error) lost.push(`the next build failed: ${after.message}`);
  const third = await look(site, "third 0");
  if (third !== undefined) lost.push(`after the next build: ${third}`);
  const names = (await readdir(path.join(room, ".counterchange-_site"))).map((name) =>
    name.replace(/-.*/, ""),
  );
  const allowed = [".gitignore", "previous", "published", "version"];
  lost.push(...names.filter((name) => !allowed.includes(name)).map((name) => `${name} was left`));
  return { wasRefused, wasMended: isOut, lost };
}

/** Returns what is wrong with the site in `folder`, or undefined. */
async function look(folder: string, expected: string): Promise<string | undefined> {
  try {
    checkWhole(folder);
    const found = await readFile(path.join(folder, "page-0.html"), "utf8");
    return found === expected ? undefined : `“${found}” stands where “${expected}” should`;
  } catch (error) {
    return message(error);
  }
}
