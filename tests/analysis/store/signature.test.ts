// Entries that are not whole, or not ours, must not open, whatever was done to them.
import { randomBytes } from "node:crypto";
import { mkdir, readdir, readFile, stat, writeFile } from "node:fs/promises";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openEntry, readSecret, sealEntry } from "../../../src/analysis/store/signature.ts";
import { makeFolder } from "../../content/folder.ts";

const secret = randomBytes(32);
const payload = Buffer.from("figures of a flag");
const entry = sealEntry(secret, "key", payload);

describe("an entry", () => {
  test("opens with its name and the secret it was sealed with", () => {
    expect(openEntry(secret, "key", entry)?.toString()).toBe("figures of a flag");
    expect(openEntry(secret, "key", sealEntry(secret, "key", new Uint8Array()))?.length).toBe(0);
  });

  test("does not open under another name, with another secret, or made by somebody who knows how", () => {
    expect(openEntry(secret, "kez", entry)).toBeUndefined();
    expect(openEntry(randomBytes(32), "key", entry)).toBeUndefined();
    expect(openEntry(secret, "key", sealEntry(new Uint8Array(32), "key", payload))).toBeUndefined();
  });

  test("does not open with any bit turned", () => {
    for (let bit = 0; bit < entry.length * 8; bit += 1) {
      const turned = Buffer.from(entry);
      turned[bit >> 3] = (turned[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      expect(openEntry(secret, "key", turned)).toBeUndefined();
    }
  });

  test("does not open cut off, drawn out, or made of anything else", () => {
    for (let length = 0; length < entry.length; length += 1)
      expect(openEntry(secret, "key", entry.subarray(0, length))).toBeUndefined();
    expect(openEntry(secret, "key", Buffer.concat([entry, Buffer.from([0])]))).toBeUndefined();
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(openEntry(secret, "key", Buffer.from(bytes))).toBeUndefined();
      }),
    );
  });
});

describe("readSecret", () => {
  test("makes a secret that nobody else may read, and finds it again", async () => {
    const file = join(await makeFolder({}), "a/b/key");
    const made = await readSecret(file);
    expect(made).toHaveLength(32);
    expect((await stat(file)).mode & 0o777).toBe(0o600);
    expect(await readSecret(file)).toEqual(made);
    expect(await readSecret(join(await makeFolder({}), "key"))).not.toEqual(made);
  });

  test("those who begin at the same time have one secret, and leave nothing beside it", async () => {
    const folder = await makeFolder({});
    const made = await Promise.all(Array.from({ length: 10 }, () => readSecret(join(folder, "key"))));
    expect(new Set(made.map((secret) => Buffer.from(secret ?? []).toString("hex"))).size).toBe(1);
    expect(await readdir(folder)).toEqual(["key"]);
  });

  test("read only, it makes none", async () => {
    const folder = await makeFolder({});
    expect(await readSecret(join(folder, "key"), true)).toBeUndefined();
    await expect(stat(join(folder, "key"))).rejects.toThrow("ENOENT");
  });

  test("a secret that is damaged is made anew", async () => {
    const folder = await makeFolder({ key: "short" });
    const made = await readSecret(join(folder, "key"));
    expect(await readFile(join(folder, "key"))).toEqual(made);
  });

  test("where it cannot be there is none", async () => {
    const folder = await makeFolder({ file: "x" });
    expect(await readSecret(join(folder, "file/key"))).toBeUndefined();
    await mkdir(join(folder, "key"));
    await writeFile(join(folder, "key/x"), "x");
    expect(await readSecret(join(folder, "key"))).toBeUndefined();
  });
});
