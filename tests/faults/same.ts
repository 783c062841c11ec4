// Test support. One gallery is built in many surroundings, each in a process of its own.
import { execFile } from "node:child_process";
import { readdir, stat } from "node:fs/promises";
import path from "node:path";
import { pathToFileURL } from "node:url";

export interface Surroundings {
  readonly name: string;
  /** The working folder, from the room; the content and the output are named from there. */
  readonly folder?: string;
  readonly environment?: Readonly<Record<string, string>>;
  /** Whether measurements are kept; the second time they are there already. */
  readonly cache?: boolean;
}

/** Builds `room/content` to `room/NAME` with `room/programs` and returns that folder. Rejects with what the process said. */
export async function buildIn(room: string, surroundings: Surroundings): Promise<string> {
  const { name, folder, environment = {}, cache = false } = surroundings;
  const site = path.join(room, name);
  const at = folder === undefined ? undefined : path.join(room, folder);
  const shown = (file: string): string => (at === undefined ? file : path.relative(at, file) || ".");
  const words = [shown(path.join(room, "content")), shown(site), cache ? path.join(room, "cache") : "-"];
  const world = pathToFileURL(path.join(import.meta.dirname, "world.mjs")).href;
  await new Promise<void>((resolve, reject) => {
    const env = { ...process.env, ...environment, NODE_OPTIONS: `--import ${world}` };
    const options = { env, timeout: 120_000, ...(at === undefined ? {} : { cwd: at }) };
    execFile(process.execPath, [path.join(room, "programs/once.mjs"), ...words], options, (error, _, said) =>
      error === null ? resolve() : reject(new Error(`${name}: ${said || error.message}`)),
    );
  });
  return site;
}

/** Every file and folder of a site with its mode, sorted. */
export async function listModes(site: string): Promise<readonly string[]> {
  const entries = await readdir(site, { recursive: true, withFileTypes: true });
  const lines = entries.map(async (entry) => {
    const file = path.join(entry.parentPath, entry.name);
    return `${path.relative(site, file)} ${((await stat(file)).mode & 0o777).toString(8)}`;
  });
  return (await Promise.all(lines)).sort();
}
