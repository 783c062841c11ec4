// Test support. Whole builds are killed at any moment while another process reads what is published.
import { type ChildProcess, fork } from "node:child_process";
import { lstat, readdir } from "node:fs/promises";
import path from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { openStore } from "../../src/analysis/store/resultstore.ts";
import { buildSite } from "../../src/publish/buildsite.ts";
import { translateModules } from "./child.ts";
import type { disks } from "./disk.ts";
import { makeContent, makeLargerContent, writeContent } from "./gallery.ts";
import { makeRandom, message, pick, type Tally } from "./tally.ts";
import type { Order, Phase } from "./victim.ts";
import type { Sightings } from "./watcher.ts";
import { checkWhole } from "./whole.ts";

type Way = keyof typeof disks;

export interface KillOptions {
  /** An empty folder. */
  readonly room: string;
  readonly kills: number;
  readonly seed: number;
  readonly way?: Way;
  /** Where the builds keep, the key beside it; default a folder in `room`. */
  readonly cache?: string;
  readonly onKill?: (done: number) => void;
}

const start = (file: string, words: readonly string[] = []): ChildProcess => {
  const child = fork(file, words, { stdio: ["ignore", "ignore", "pipe", "ipc"] });
  child.stderr?.pipe(process.stderr);
  return child;
};

/** How a process ended. */
interface End {
  readonly status: number | null;
  readonly signal: NodeJS.Signals | null;
}

interface Started {
  readonly child: ChildProcess;
  /** Resolves once it is loaded, or has ended before. */
  readonly ready: Promise<unknown>;
  readonly ended: Promise<End>;
}

function startVictim(file: string): Started {
  const child = start(file);
  const ended = new Promise<End>((resolve) =>
    child.once("exit", (status, signal) => resolve({ status, signal })),
  );
  const ready = Promise.race([new Promise((resolve) => child.once("message", resolve)), ended]);
  return { child, ready, ended };
}

/** Builds, of which the next is always loaded already. */
class Victims {
  private readonly file: string;
  private next: Started;

  constructor(file: string) {
    this.file = file;
    this.next = startVictim(file);
  }

  /** Lets one begin; `hear` gets the process and how far it has come. Resolves when it has ended. */
  async send(order: Order, hear: (child: ChildProcess, phase: Phase) => void): Promise<End> {
    const { child, ready, ended } = this.next;
    await ready;
    child.on("message", (phase: Phase) => hear(child, phase));
    if (child.connected) child.send(order);
    this.next = startVictim(this.file);
    return ended;
  }

  end(): void {
    this.next.child.kill("SIGKILL");
  }
}

/** What the kills were aimed by: the clock alone, the clock from a step on, or the number of a call. */
type Aim = "any time" | "after a step" | "call";

/**
 * Returns what is wrong with the end of a build that was to be killed, or undefined: it was killed, or was done before that.
 * One that ended in another way failed by itself, and that is no kill.
 */
export function judgeEnd({ status, signal }: End, phase: Phase): string | undefined {
  if (signal === "SIGKILL" || (status === 0 && phase === "done")) return undefined;
  return `it was not killed and ended by itself with ${status === null ? `the signal ${signal}` : `status ${status}`}`;
}

/**
 * Publishes two galleries in turn over each other, and kills the build each time: at a random time of its run, soon after it
 * began to write or to swap, or before a random call to the disk. What is published is checked after each, and read all the
 * time by another process. At last a build is left alone, and the workshop must be clean.
 */
export async function runKills(options: KillOptions): Promise<Tally> {
  const { room, kills, seed, way = "exchange", cache = path.join(room, "cache"), onKill } = options;
  const random = makeRandom(seed);
  const site = path.join(room, "_site");
  const variants = await makeModels(room, cache);
  const digests = variants.map(({ model }) => checkWhole(model));
  const programs = path.join(room, "programs");
  await translateModules(programs, ["victim", "watcher"]);
  const victims = new Victims(path.join(programs, "victim.mjs"));
  await victims.send({ content: variants[0].content, site, way, cache }, () => undefined);
  const watcher = start(path.join(programs, "watcher.mjs"), [site, ...variants.map(({ model }) => model)]);
  await new Promise((resolve) => watcher.once("message", resolve));
  const lost: string[] = [];
  const phases = new Map<Phase, number>();
  const aims: Record<Aim, number> = { "any time": 0, "after a step": 0, call: 0 };
  let crashes = 0;
  let longest = 2_000;
  let published = checkWhole(site);
  const otherOf = (found: string): Variant => variants[digests.indexOf(found) === 0 ? 1 : 0];
  let done = 0;
  for (let build = 1; done < kills && crashes < 5; build += 1) {
    const order = { content: otherOf(published).content, site, way };
    const words = build % 10 === 0 ? order : { ...order, cache };
    // At any time by the clock at least every second kill.
    const aim = aims["any time"] <= aims.call + aims["after a step"] ? "any time" : pick(random, others);
    const { phase, took, end } = await kill(victims, words, { aim, longest, random });
    const crash = judgeEnd(end, phase);
    if (crash !== undefined) {
      crashes += 1;
      lost.push(`build ${build} (${phase}): ${crash}`);
    } else if (phase === "done") {
      // One that was done before it could be killed is no kill.
      longest = 0.8 * longest + 0.2 * took;
    } else {
      done += 1;
      aims[aim] += 1;
    }
    phases.set(phase, (phases.get(phase) ?? 0) + 1);
    try {
      published = await readStanding(site, way);
      if (!digests.includes(published)) lost.push(`build ${build} (${phase}): a site that was never built`);
    } catch (error) {
      lost.push(`build ${build} (${phase}): ${message(error)}`);
    }
    if (phase !== "done" && crash === undefined) onKill?.(done);
  }
  const last = otherOf(published);
  const { status } = await victims.send({ content: last.content, site, way, cache }, () => undefined);
  victims.end();
  if (status !== 0) lost.push(`the build after the last kill ended with ${status}`);
  else if (checkWhole(site) !== digests[variants.indexOf(last)])
    lost.push("the last build was not published");
  lost.push(...(await findLeavings(room, way)));
  const sightings = await endWatcher(watcher);
  lost.push(...judge(sightings, way));
  const when = [...phases].map(([phase, count]) => `${count} ${phase}`).join(", ");
  const { whole, single, absent } = sightings;
  const clock = aims["any time"] + aims["after a step"];
  const how = `${clock} at a random time (${aims["any time"]} of the whole run, ${aims["after a step"]} after it began to write or to swap), ${aims.call} before a random call`;
  const note = `killed ${how}; came to: ${when}; read whole ${whole} times, single files ${single} times, absent ${absent} times`;
  return { name: `kills, swap by ${way}`, tried: done, lost, note };
}

function judge({ lost, absent, seen }: Sightings, way: Way): readonly string[] {
  return [
    ...lost.map((line) => `seen: ${line}`),
    ...(way !== "move" && absent > 0 ? [`${absent} times there was no site`] : []),
    ...(seen.length < 2 ? ["the watcher did not see both sites"] : []),
  ];
}

interface Variant {
  readonly content: string;
  readonly model: string;
}

async function makeModels(room: string, cache: string): Promise<readonly [Variant, Variant]> {
  const make = async (name: string, content: ReturnType<typeof makeContent>): Promise<Variant> => {
    const variant = { content: path.join(room, name, "content"), model: path.join(room, name, "_site") };
    await writeContent(variant.content, content);
    const store = await openStore({ folder: cache, secretFile: path.join(cache, "../key") });
    await buildSite(variant.content, variant.model, store === undefined ? {} : { store });
    await store?.close();
    return variant;
  };
  return [await make("small", makeContent()), await make("large", makeLargerContent())];
}

const others: readonly Aim[] = ["after a step", "call"];

interface Shot {
  readonly aim: Aim;
  /** How long a build takes, in milliseconds. */
  readonly longest: number;
  readonly random: () => number;
}

/** Starts a build and kills it. Returns how far it had come, after how many milliseconds it ended, and how. */
async function kill(
  victims: Victims,
  order: Omit<Order, "last">,
  { aim, longest, random }: Shot,
): Promise<{ readonly phase: Phase; readonly took: number; readonly end: End }> {
  const step = pick(random, ["writing", "swapping", "swapping"]);
  // Publishing this gallery takes about 430 calls; the last 11 or fewer of them swap.
  const last =
    step === "writing"
      ? { call: 1 + Math.floor(random() * 430), from: "started" as const }
      : { call: 1 + Math.floor(random() * (order.way === "link" ? 8 : 11)), from: "swapping" as const };
  let phase: Phase = "ready";
  let began = 0;
  const shoot = (child: ChildProcess, delay: number): void =>
    void setTimeout(() => child.kill("SIGKILL"), delay);
  const end = await victims.send(aim === "call" ? { ...order, last } : order, (child, told) => {
    phase = told;
    if (phase === "started") {
      began = performance.now();
      if (aim === "any time") shoot(child, random() * longest * 1.1);
    }
    if (aim !== "after a step" || phase !== step) return;
    shoot(child, phase === "writing" ? random() * 0.3 * longest : random() * random() * 60);
  });
  return { phase, took: performance.now() - began, end };
}

/** With two renames a kill between them leaves nothing for a moment: then the next build has to mend it, and does. */
async function readStanding(site: string, way: Way): Promise<string> {
  if (
    way === "move" &&
    !(await lstat(site).then(
      () => true,
      () => false,
    ))
  ) {
    return checkWhole(path.join(path.dirname(site), ".counterchange-_site/outgoing"));
  }
  return checkWhole(site);
}

async function findLeavings(room: string, way: Way): Promise<readonly string[]> {
  const expected = new Set([".gitignore", "previous", "published", ...(way === "link" ? ["version"] : [])]);
  const names = await readdir(path.join(room, ".counterchange-_site"));
  return names
    .map((name) => name.replace(/-[0-9a-f]{12}$/, ""))
    .filter((name) => !expected.delete(name))
    .map((name) => `${name} was left in the workshop`);
}

async function endWatcher(watcher: ChildProcess): Promise<Sightings> {
  // A last look at what is published now.
  await sleep(200);
  const answer = new Promise<Sightings>((resolve, reject) => {
    watcher.once("message", resolve);
    watcher.once("exit", () => reject(new Error("the watcher ended")));
  });
  watcher.send("stop");
  return answer;
}
