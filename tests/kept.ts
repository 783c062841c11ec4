// Test support. What several files measure alike, above all the demo, is measured once in a run: each file opens the same
// store, which begins with what building the demo in this checkout kept, if it did, and which the run deletes. Entries of
// other sources answer nothing. What keeping itself promises is tested with stores of their own.
import { cp, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject } from "vitest";
import type { TestProject } from "vitest/node";
import { openStore, type Store } from "../src/analysis/store/resultstore.ts";
import { findHome } from "../src/analysis/store/signature.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** The folder of what is kept during the run. */
    readonly kept: string;
  }
}

/** Called once at the beginning of a run; what it returns is called at the end. */
export default async function makeKept(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), "counterchange-kept-"));
  await cp(join(findHome(), "key"), join(folder, "key")).catch(() => undefined);
  await cp(join(import.meta.dirname, "../.cache/counterchange"), join(folder, "entries"), {
    recursive: true,
  }).catch(() => undefined);
  project.provide("kept", folder);
  return () => rm(folder, { recursive: true, force: true });
}

/** Opens the store of the run. Whoever measures anew what another file measured is not faster, and not wrong. */
export async function openKept(): Promise<Store> {
  const store = await openStore({
    folder: join(inject("kept"), "entries"),
    secretFile: join(inject("kept"), "key"),
  });
  if (store === undefined) throw new Error("nothing can be kept");
  return store;
}
