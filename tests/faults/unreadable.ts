// Test support. Content that is there and cannot be read: without permission, or on a disk with a fault. What cannot be read
// is named, and nothing else is lost by it.
import { type ChildProcess, fork } from "node:child_process";
import { chmod, chown, cp, readdir, rm, stat } from "node:fs/promises";
import path from "node:path";
import type { Store } from "../../src/analysis/store/resultstore.ts";
import { buildSite } from "../../src/publish/buildsite.ts";
import { translateModules } from "./child.ts";
import { makeContent, writeContent } from "./gallery.ts";
import type { Answer, Order } from "./reader.ts";
import { message, type Tally } from "./tally.ts";
import { checkWhole, readListed } from "./whole.ts";

interface Target {
  /** From the top of the content folder. */
  readonly path: string;
  /** Studies that cannot be published then; where it is all of them, the old site must stay. */
  readonly costs: readonly string[];
}

const both = ["low-tide", "noon-gun"];
const targets: readonly Target[] = [
  { path: "studies/low-tide/original.svg", costs: ["low-tide"] },
  { path: "studies/low-tide/study.md", costs: ["low-tide"] },
  { path: "studies/low-tide", costs: ["low-tide"] },
  { path: "flags/buoy.svg", costs: [] },
  { path: "flags", costs: [] },
  { path: "gallery.yaml", costs: both },
  { path: "studies", costs: both },
  { path: "", costs: both },
];

/** Nobody: a user that owns nothing. Root reads whatever its permissions say. */
const nobody = 65_534;

/** How a target is made unreadable; `undefined` is without any permission, in the eyes of the system itself. */
type Way = "EIO" | "EACCES" | undefined;

/** Builds for each target and each way to make it unreadable. A way that is not possible here is not counted, and said. */
export async function runUnreadable(
  room: string,
  only: readonly string[] = targets.map((t) => t.path),
  store?: Store,
): Promise<Tally> {
  const lost: string[] = [];
  const counts = { tried: 0, published: 0, whole: 0 };
  let skipped = "";
  await writeContent(path.join(room, "content"), makeContent());
  await buildSite(path.join(room, "content"), path.join(room, "model/_site"), { store });
  // Where the system cannot be made to refuse, its word for it is made up.
  const programs = path.join(room, "programs");
  await translateModules(programs, ["reader"]);
  const ways: Way[] = ["EIO", undefined];
  for (const way of ways) {
    const reader = await startReader(programs, way === undefined ? nobody : undefined);
    if (reader === undefined) {
      ways.push("EACCES");
      skipped =
        "; NOT tried: real permissions, as another user cannot be used or cannot read the sources here";
      continue;
    }
    for (const target of targets.filter((other) => only.includes(other.path))) {
      const found = await tryOnce(room, reader, target, way);
      counts.tried += 1;
      counts[found.isPublished ? "published" : "whole"] += 1;
      const what = `${target.path === "" ? "the content folder" : target.path}, ${way ?? "mode 000"}`;
      lost.push(...found.lost.map((line) => `${what}: ${line}`));
    }
    reader.disconnect();
  }
  const note = `${counts.published} published without it, ${counts.whole} refused with the old site whole, each with words that name it${skipped}`;
  return { name: "inputs that cannot be read", tried: counts.tried, lost, note };
}

/** Returns a process that builds, as `user` where there is one and we are root; or undefined where it cannot be. */
async function startReader(programs: string, user: number | undefined): Promise<ChildProcess | undefined> {
  const isRoot = process.getuid?.() === 0;
  if (user !== undefined && process.platform === "win32") return undefined;
  const child = fork(path.join(programs, "reader.mjs"), {
    stdio: ["ignore", "ignore", user === undefined ? "inherit" : "ignore", "ipc"],
    // That user has no home.
    env: { ...process.env, COUNTERCHANGE_KEY: "faults" },
    ...(user !== undefined && isRoot ? { uid: user, gid: user } : {}),
  });
  const isReady = await new Promise<boolean>((resolve) => {
    child.once("message", () => resolve(true));
    child.once("exit", () => resolve(false));
    child.once("error", () => resolve(false));
  });
  return isReady ? child : undefined;
}

async function tryOnce(room: string, reader: ChildProcess, target: Target, way: Way) {
  const [content, site] = [path.join(room, "content"), path.join(room, "out/_site")];
  await give(room, 0);
  await writeContent(content, makeContent());
  await rm(path.dirname(site), { recursive: true, force: true });
  await cp(path.join(room, "model/_site"), site, { recursive: true });
  const before = checkWhole(site);
  const unreadable = path.join(content, target.path).replace(/\/$/, "");
  const { mode } = await stat(unreadable);
  const cache = path.join(room, "cache");
  const order: Order = {
    ...{ content, site, cache, path: unreadable },
    ...(way === undefined ? {} : { code: way }),
  };
  if (way === undefined) await give(room, nobody);
  if (way === undefined) await chmod(unreadable, 0);
  try {
    const answer = await ask(reader, order);
    const isPublished = checkWhole(site) !== before;
    const lost = judge(answer, { ...target, isPublished, name: unreadable, site });
    return {
      isPublished,
      lost: answer.failed > 0 || way === undefined ? lost : [...lost, "it was not read"],
    };
  } catch (error) {
    return { isPublished: false, lost: [message(error)] };
  } finally {
    await chmod(unreadable, mode);
  }
}

interface Case {
  /** The path that could not be read. */
  readonly name: string;
  readonly costs: readonly string[];
  readonly isPublished: boolean;
  readonly site: string;
}

/** Returns what is wrong with an answer. A folder of flags costs a warning, all else an error. */
function judge({ status, said }: Answer, { name, costs, isPublished, site }: Case): readonly string[] {
  const lost: string[] = [];
  const shown = said.replace(/\s+/g, " ").slice(0, 300);
  if (/fault of/.test(said) || status < 0) lost.push(`no calm message: ${shown}`);
  // Itself, and not only a path that begins with it.
  if (
    !said
      .split(name)
      .slice(1)
      .some((after) => !after.startsWith("/"))
  )
    lost.push(`it is not named: ${shown}`);
  if (status === 0 && costs.length > 0) lost.push("the exit status is 0");
  if (isPublished && costs.length === both.length) lost.push("the old site was replaced");
  const files = readListed(site).files.map((file) => file.path);
  for (const slug of both)
    if ((!isPublished || !costs.includes(slug)) && !files.includes(`studies/${slug}/index.html`))
      lost.push(`the study ${slug} is gone`);
  return lost;
}

function ask(reader: ChildProcess, order: Order): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const end = () => reject(new Error("the build ended without an answer"));
    reader.once("exit", end);
    reader.once("message", (answer: Answer) => {
      reader.off("exit", end);
      resolve(answer);
    });
    reader.send(order);
  });
}

/** Gives the room and all in it to a user, where we are root and can. */
async function give(room: string, user: number): Promise<void> {
  if (process.getuid?.() !== 0) return;
  await chown(room, user, user);
  await chmod(room, 0o755);
  for (const entry of await readdir(room, { recursive: true, withFileTypes: true }))
    if (!entry.isSymbolicLink()) await chown(path.join(entry.parentPath, entry.name), user, user);
}
