// Test support. The cache while the Nth call to the system fails: the answers are the same, slower at worst, and nothing is
// thrown.
import { readdir, rm } from "node:fs/promises";
import path from "node:path";
import { openStore } from "../../src/analysis/store/resultstore.ts";
import { failSystem } from "./system.ts";
import { message, type Tally } from "./tally.ts";

const questions = Array.from({ length: 4 }, (_, n) => ({
  kind: "measure",
  bytes: new Uint8Array([n, 1, 2]),
}));
const answerTo = (n: number): string => `answer ${n} `.repeat(200);

interface Asked {
  /** Those of the answers that were other than they should be. */
  readonly wrong: readonly number[];
  /** How often the work was done. */
  readonly worked: number;
}

/** Asks all questions, as a new process does: the secret is read, the entries, then what is new is written. */
async function ask(room: string): Promise<Asked> {
  const store = await openStore({ folder: path.join(room, "kept"), secretFile: path.join(room, "home/key") });
  const wrong: number[] = [];
  let worked = 0;
  for (const [n, question] of questions.entries()) {
    const work = async () => {
      worked += 1;
      return { value: answerTo(n), problems: [] };
    };
    const outcome = store === undefined ? await work() : await store.recall(question, work);
    if (outcome.value !== answerTo(n) || outcome.problems.length > 0) wrong.push(n);
  }
  await store?.close();
  return { wrong, worked };
}

/**
 * Fails call after call, or every `step`th, until one is not reached, with a cache that is empty, and with one that holds
 * all answers. With a sound disk the answers must be the same after it, and be kept then.
 */
export async function runAsked(room: string, codes: readonly string[], step = 1): Promise<Tally> {
  const lost: string[] = [];
  const counts = { tried: 0, slower: 0 };
  for (const isWarm of [false, true])
    for (const code of codes)
      for (const forGood of [false, true])
        for (let at = 1; ; at += step) {
          const found = await tryOnce(room, { isWarm, code, forGood, at });
          if (found.count < at) break;
          counts.tried += 1;
          if (found.isSlower) counts.slower += 1;
          const what = `${isWarm ? "warm" : "cold"}, ${code} at call ${at}${forGood ? " and after" : ""}`;
          lost.push(...found.lost.map((line) => `${what}: ${line}`));
        }
  // An entry is written in three calls, and read in three.
  if (counts.tried < (40 * codes.length) / step) lost.push(`only ${counts.tried} calls were there to fail`);
  if (counts.slower === 0) lost.push("no failure cost any work");
  const note = `the same answers; ${counts.slower} times with work done again, then or by the next`;
  return { name: "the cache, and the Nth call to the system fails", tried: counts.tried, lost, note };
}

interface Trial {
  readonly isWarm: boolean;
  readonly code: string;
  readonly forGood: boolean;
  readonly at: number;
}

async function tryOnce(room: string, { isWarm, code, forGood, at }: Trial) {
  for (const name of await readdir(room)) await rm(path.join(room, name), { recursive: true, force: true });
  if (isWarm) await ask(room);
  const { count, value, error } = await failSystem({ within: room, at, code, forGood }, () => ask(room));
  const lost: string[] = [];
  if (value === undefined) lost.push(`thrown: ${message(error)}`);
  else if (value.wrong.length > 0) lost.push(`${value.wrong.length} answers are others`);
  const next = await ask(room);
  if (next.wrong.length > 0) lost.push(`${next.wrong.length} answers are others the next time`);
  const last = await ask(room);
  if (last.worked > 0) lost.push(`${last.worked} answers are not kept by the one after`);
  const isSlower = next.worked > 0 || (value?.worked ?? 0) > (isWarm ? 0 : questions.length);
  return { count, isSlower, lost };
}
