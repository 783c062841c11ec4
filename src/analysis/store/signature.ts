// Floor 6. What is kept gets a seal that only this user can make: an entry that was damaged, renamed or written by somebody
// else does not open.
import { createHash, createHmac, randomBytes, randomUUID, timingSafeEqual } from "node:crypto";
import { link, rename, rm, writeFile } from "node:fs/promises";
import { homedir } from "node:os";
import { basename, dirname, join } from "node:path";
import { makeFolders } from "../../content/disk/makefolder.ts";
import { readRegular } from "../../content/disk/readfile.ts";

const secretBytes = 32;
const head = Buffer.from("counterchange 1\n");
const sealBytes = 32;

/** The variable that holds a key of several machines, which then count as one user. */
export const keyVariable = "COUNTERCHANGE_KEY";

/** The folder in the user's home that holds the secret, in the file `key`. */
export function findHome(): string {
  return join(process.env["XDG_CACHE_HOME"] || join(homedir(), ".cache"), "counterchange");
}

/**
 * Returns the secret made of the key of several machines where there is one, else that in `file`, which is made where there
 * is none, unless `isReadOnly`. Undefined where it can be neither read nor made: then nothing can be kept.
 */
export async function readSecret(file: string, isReadOnly = false): Promise<Uint8Array | undefined> {
  const key = process.env[keyVariable];
  if (key) return createHash("sha256").update(key).digest();
  const found = await readKey(file);
  if (found !== undefined || isReadOnly) return found;
  const secret = randomBytes(secretBytes);
  const fresh = `${file}.${randomUUID()}.tmp`;
  try {
    await makeFolders(dirname(file), 0o700);
    await writeFile(fresh, secret, { mode: 0o600, flag: "wx" });
    // Of two that make one at the same time the first has made it for both; what is there and is no key is replaced.
    await link(fresh, file).catch(() => undefined);
    const made = await readKey(file);
    if (made === undefined) await rename(fresh, file);
    return made ?? secret;
  } catch {
    return undefined;
  } finally {
    await rm(fresh, { force: true }).catch(() => undefined);
  }
}

async function readKey(file: string): Promise<Uint8Array | undefined> {
  const found = await readRegular(dirname(file), basename(file), secretBytes);
  return "bytes" in found && found.bytes.length === secretBytes ? found.bytes : undefined;
}

/** Returns the entry of `payload` under the name `key`. */
export function sealEntry(secret: Uint8Array, key: string, payload: Uint8Array): Buffer {
  return Buffer.concat([head, sign(secret, key, payload), payload]);
}

/** Returns the payload of an entry, or undefined where it is not whole, not ours, or not the entry of `key`. */
export function openEntry(secret: Uint8Array, key: string, entry: Buffer): Buffer | undefined {
  const start = head.length + sealBytes;
  if (entry.length < start || !entry.subarray(0, head.length).equals(head)) return undefined;
  const payload = entry.subarray(start);
  return timingSafeEqual(entry.subarray(head.length, start), sign(secret, key, payload))
    ? payload
    : undefined;
}

/** Returns a mark in hex that nobody can make for `text` without the secret. */
export function signText(secret: Uint8Array, text: string): string {
  return sign(secret, text, new Uint8Array()).toString("hex");
}

/** HMAC-SHA-256. Source: RFC 2104. */
function sign(secret: Uint8Array, key: string, payload: Uint8Array): Buffer {
  return createHmac("sha256", secret).update(`${key} ${payload.length}\n`).update(payload).digest();
}
