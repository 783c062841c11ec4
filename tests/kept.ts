// Test support. What several files measure alike, above all the demo, is measured once in a run: each file opens the same
// store, which the run makes empty and deletes. What keeping itself promises is tested with stores of their own.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject } from "vitest";
import type { TestProject } from "vitest/node";
import { openStore, type Store } from "../src/analysis/store/resultstore.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** The folder of what is kept during the run. */
    readonly kept: string;
  }
}

/** Called once at the beginning of a run; what it returns is called at the end. */
export default async function makeKept(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), "counterchange-kept-"));
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
