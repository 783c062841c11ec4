// Floor 6. Measurements that were made before, kept in a folder. Whatever happens to the folder, at any time, the answers
// are the same: slower at worst.
import { randomUUID } from "node:crypto";
import { constants } from "node:fs";
import { mkdir, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import { deserialize, serialize } from "node:v8";
import { makeFolders } from "../../content/disk/makefolder.ts";
import { kindOf, openBelow, readFolder, readRegular } from "../../content/disk/readfile.ts";
import type { Outcome } from "../../problem/problem.ts";
import { findEdition } from "./edition.ts";
import { entryEnding, isDue, sweep, unfinishedEnding } from "./evict.ts";
import { fingerprint } from "./fingerprint.ts";
import { openEntry, readSecret, sealEntry } from "./signature.ts";

export interface StoreOptions {
  /** Where measurements are kept; made when the first one is. */
  readonly folder: string;
  /** The file with this user's secret; made where there is none. */
  readonly secretFile: string;
  /** Looks up and keeps nothing. */
  readonly isReadOnly?: boolean;
  /** Most bytes of all entries together; default 500 MB. What one run uses stays, and be it more. */
  readonly most?: number;
  /** Hears where a folder was put that lay in the place of `folder` and was not made with the secret. */
  readonly onAside?: (aside: string) => void;
}

/** Larger entries are neither kept nor read. */
const mostEntry = 32 * 1024 * 1024;

/** After so many in a row that could not be written, as on a full disk, nothing more is tried. */
const mostFailures = 8;

/** An entry that is used gets a new date once a day, in milliseconds: the oldest are deleted first. */
const day = 86_400_000;

/** The file that says whose folder this is. */
const sealFile = "seal";

/**
 * Opens a store, or returns undefined where nothing can be kept safely. A folder that is not ours is put aside under a name
 * of its own; where other files than those of a store are in it, or with `isReadOnly`, it stays and is not used. Never
 * throws.
 */
export async function openStore(options: StoreOptions): Promise<Store | undefined> {
  const secret = await readSecret(options.secretFile, options.isReadOnly === true);
  if (secret === undefined || !(await clearWay(options, secret))) return undefined;
  return new Store(options, secret);
}

/** Returns whether the folder can be used: one that came with a checkout could lead our writing and deleting elsewhere. */
async function clearWay(
  { folder, isReadOnly = false, onAside }: StoreOptions,
  secret: Uint8Array,
): Promise<boolean> {
  const kind = await kindOf(folder);
  // Nothing can be kept in a file, and it may be somebody's.
  if (kind !== "folder" && kind !== "link") return true;
  const entries = kind === "folder" ? await readFolder(folder) : [];
  if ("kind" in entries) return false;
  if (kind === "folder") {
    const seal = await readRegular(folder, sealFile, 1024);
    if ("bytes" in seal && openEntry(secret, sealFile, Buffer.from(seal.bytes)) !== undefined) return true;
    // Somebody may be making it right now.
    if (entries.every(({ name, kind: inner }) => name.startsWith(sealFile) && inner === "file")) return true;
    if (entries.some(({ name }) => !/^(?:[0-9a-f]{2}|swept|seal.*)$/.test(name))) return false;
  }
  if (isReadOnly) return false;
  const aside = `${folder}-aside-${randomUUID().slice(0, 8)}`;
  const isMoved = await rename(folder, aside).then(
    () => true,
    () => false,
  );
  if (isMoved) onAside?.(aside);
  return isMoved;
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
  private sealing: Promise<void> | undefined;
  /** What is being answered, by the name of its question. */
  private readonly asked = new Map<string, Promise<Outcome<unknown>>>();
  private failures = 0;
  private written = 0;
  /** Bytes of the entries that were read or written. */
  private used = 0;
  private missed = 0;

  constructor(options: StoreOptions, secret: Uint8Array) {
    this.options = options;
    this.secret = secret;
  }

  /** The folder of what is kept. */
  get folder(): string {
    return this.options.folder;
  }

  /** How many answers could not be written. */
  get lost(): number {
    return this.missed;
  }

  /** Makes the folder before anything is kept in it; returns whether that can be. */
  async prepare(): Promise<boolean> {
    return this.makeSealed().then(
      () => true,
      () => false,
    );
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
    // A sweep leaves four fifths: all that this run used.
    const room = Math.max(most, 1.25 * this.used);
    if (this.written > most / 10 || (await isDue(folder, now))) await sweep(folder, room, now);
    this.written = 0;
  }

  private pathOf(key: string): string {
    return `${key.slice(0, 2)}/${key.slice(2)}${entryEnding}`;
  }

  private async read(key: string): Promise<unknown> {
    try {
      const opened = await openBelow(this.options.folder, this.pathOf(key));
      if ("kind" in opened) return undefined;
      const { handle, stats } = opened;
      try {
        if (!stats.isFile() || stats.size > mostEntry) return undefined;
        const payload = openEntry(this.secret, key, await handle.readFile());
        if (payload === undefined) return undefined;
        this.used += stats.size;
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
    if (this.failures >= mostFailures) {
      this.missed += 1;
      return;
    }
    const write = this.write(key, outcome).finally(() => this.writing.delete(write));
    this.writing.add(write);
  }

  private async write(key: string, outcome: Outcome<unknown>): Promise<void> {
    const { folder } = this.options;
    const target = this.pathOf(key);
    const fresh = `${target}.${randomUUID()}${unfinishedEnding}`;
    try {
      const entry = sealEntry(this.secret, key, serialize(outcome));
      if (entry.length > mostEntry) return;
      await this.makeSealed();
      await this.writeNew(fresh, entry);
      await rename(join(folder, fresh), join(folder, target));
      this.failures = 0;
      this.written += entry.length;
      this.used += entry.length;
    } catch {
      this.missed += 1;
      this.failures += 1;
      await rm(join(folder, fresh), { force: true }).catch(() => undefined);
    }
  }

  /** Once for all entries; after a failure, anew. */
  private async makeSealed(): Promise<void> {
    this.sealing ??= this.seal();
    try {
      await this.sealing;
    } catch (error) {
      this.sealing = undefined;
      throw error;
    }
  }

  /** Says whose folder it is, before anything else is in it. */
  private async seal(): Promise<void> {
    const { folder } = this.options;
    await makeFolders(folder);
    const found = await readRegular(folder, sealFile, 1024);
    if ("bytes" in found && openEntry(this.secret, sealFile, Buffer.from(found.bytes)) !== undefined) return;
    const fresh = `${sealFile}.${randomUUID()}${unfinishedEnding}`;
    await this.writeNew(fresh, sealEntry(this.secret, sealFile, new Uint8Array()));
    await rename(join(folder, fresh), join(folder, sealFile));
  }

  /** Writes a new file below the folder, and nowhere else. */
  private async writeNew(path: string, bytes: Uint8Array): Promise<void> {
    const { folder } = this.options;
    const [bucket, name] = path.split("/");
    if (name !== undefined) {
      await mkdir(join(folder, bucket ?? "")).catch(() => undefined);
      if ((await kindOf(join(folder, bucket ?? ""))) !== "folder") throw new Error(`${bucket} is no folder`);
    }
    const opened = await openBelow(folder, path, constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL);
    if ("kind" in opened) throw new Error(`${path} cannot be written: ${opened.kind}`);
    try {
      await opened.handle.writeFile(bytes);
    } finally {
      await opened.handle.close();
    }
  }
}
