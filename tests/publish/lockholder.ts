// Test support, a process of its own: takes the lock in a folder and keeps it until it is killed.
import { writeFile } from "node:fs/promises";
import { takeLock } from "../../src/publish/folder/lock.ts";

takeLock(process.argv[2] ?? "", {
  secret: new Uint8Array(32),
  prepare: async () => undefined,
  write: (file, text) => writeFile(file, text, { flag: "wx" }),
}).then(() => {
  process.send?.("taken");
  setInterval(() => undefined, 1_000);
});
