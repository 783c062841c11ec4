// Floor 5. Measurements that were made before, kept in a folder. Whatever happens to the folder, at any time, the answers
// are the same: slower at worst.
import { randomUUID } from "node:crypto";
import { constants } from "node:fs";
import { mkdir, open, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { deserialize, serialize } from "node:v8";
import type { Outcome } from "../problem/problem.ts";
import { findEdition } from "./edition.ts";
import { fingerprint } from "./fingerprint.ts";
import { openEntry, readSecret, sealEntry } from "./seal.ts";
import { entryEnding, isDue, sweep, unfinishedEnding } from "./sweep.ts";

export interface StoreOptions {
  /** Where measurements are kept; made when the first one is. */
  readonly folder: string;
  /** The file with this user's secret; made where there is none. */
  readonly secretFile: string;
  /** Looks up and keeps nothing. */
  readonly isReadOnly?: boolean;
  /** Most bytes of all entries together; default 500 MB. */
  readonly most?: number;
}

/** Larger entries are neither kept nor read. */
const mostEntry = 32 * 1024 * 1024;

/** After so many in a row that could not be written, as on a full disk, nothing more is tried. */
const mostFailures = 8;

/** An entry that is used gets a new date once a day, in milliseconds: the oldest are deleted first. */
const day = 86_400_000;

/** Opens a store, or returns undefined where nothing can be kept safely. Never throws, and says nothing. */
export async function openStore(options: StoreOptions): Promise<Store | undefined> {
  const secret = await readSecret(options.secretFile, options.isReadOnly === true);
  return secret === undefined ? undefined : new Store(options, secret);
}

function nameQuestion(question: unknown): string {
  return fingerprint([findEdition(), question]);
}

// Who can write here? Whoever made the working folder, such as a stranger whose pull request is checked out and carries
// a `.cache`; and what is read here is published. So an entry opens only with a secret that lies in the user's home.
export class Store {
  private readonly options: StoreOptions;
  private readonly secret: Uint8Array;
  private readonly writing = new Set<Promise<void>>();
  /** What is being answered, by the name of its question. */
  private readonly asked = new Map<string, Promise<Outcome<unknown>>>();
  private failures = 0;
  private written = 0;

  constructor(options: StoreOptions, secret: Uint8Array) {
    this.options = options;
    this.secret = secret;
  }

  /**
   * Returns what `work` gave for the same `question` before, or does it and keeps the answer. An answer without a value is
   * not kept: what failed may have failed for want of time or memory. Of those who ask the same at once, as for two studies
   * of one drawing, one has the work done. `question` is plain data.
   */
  async recall<T>(question: unknown, work: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
    const name = nameQuestion(question);
    const begun = this.asked.get(name);
    if (begun !== undefined) {
      const shared = await begun.catch(() => undefined);
      if (shared?.value !== undefined) return shared as Outcome<T>;
    }
    const answer = this.answer(name, work);
    this.asked.set(name, answer);
    try {
      return await answer;
    } finally {
      if (this.asked.get(name) === answer) this.asked.delete(name);
    }
  }

  private async answer<T>(name: string, work: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
    // It has our seal, so it is what was answered to this question.
    const kept = (await this.read(name)) as Outcome<T> | undefined;
    if (kept !== undefined) return kept;
    const outcome = await work();
    this.keep(name, outcome);
    return outcome;
  }

  /** Returns the answer to `question` that was kept, if there is one. */
  async find<T>(question: unknown): Promise<Outcome<T> | undefined> {
    return (await this.read(nameQuestion(question))) as Outcome<T> | undefined;
  }

  /** Keeps an answer that has a value. */
  put(question: unknown, outcome: Outcome<unknown>): void {
    this.keep(nameQuestion(question), outcome);
  }

  /** Resolves once everything is written; where it is time, old entries are deleted. */
  async close(): Promise<void> {
    await Promise.all(this.writing);
    const { folder, most = 500 * 1024 * 1024 } = this.options;
    if (this.written === 0) return;
    const now = Date.now();
    if (this.written > most / 10 || (await isDue(folder, now))) await sweep(folder, most, now);
    this.written = 0;
  }

  private pathOf(key: string): string {
    return join(this.options.folder, key.slice(0, 2), `${key.slice(2)}${entryEnding}`);
  }

  private async read(key: string): Promise<unknown> {
    try {
      // A pipe would be waited for, a link might lead to something endless.
      const flags = constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0);
      const handle = await open(this.pathOf(key), flags);
      try {
        const stats = await handle.stat();
        if (!stats.isFile() || stats.size > mostEntry) return undefined;
        const payload = openEntry(this.secret, key, await handle.readFile());
        if (payload === undefined) return undefined;
        const now = Date.now();
        if (now - stats.mtimeMs > day && this.options.isReadOnly !== true)
          await handle.utimes(now / 1000, now / 1000).catch(() => undefined);
        return deserialize(payload);
      } finally {
        await handle.close();
      }
    } catch {
      return undefined;
    }
  }

  private keep(key: string, outcome: Outcome<unknown>): void {
    if (outcome.value === undefined || this.options.isReadOnly === true) return;
    if (this.failures >= mostFailures) return;
    const write = this.write(key, outcome).finally(() => this.writing.delete(write));
    this.writing.add(write);
  }

  private async write(key: string, outcome: Outcome<unknown>): Promise<void> {
    const target = this.pathOf(key);
    const fresh = `${target}.${randomUUID()}${unfinishedEnding}`;
    try {
      const entry = sealEntry(this.secret, key, serialize(outcome));
      if (entry.length > mostEntry) return;
      await mkdir(dirname(target), { recursive: true });
      await writeFile(fresh, entry, { flag: "wx" });
      await rename(fresh, target);
      this.failures = 0;
      this.written += entry.length;
    } catch {
      this.failures += 1;
      await rm(fresh, { force: true }).catch(() => undefined);
    }
  }
}
