// Test support. What several files measure alike, above all the demo, is measured once in a run: each file opens the same
// store, which begins with what building the demo in this checkout kept, if it did, and which the run deletes. Entries of
// other sources answer nothing. What keeping itself promises is tested with stores of their own.
import { cp, mkdtemp, rm, symlink } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inject } from "vitest";
import type { TestProject } from "vitest/node";
import { openStore, type Store } from "../src/analysis/store/resultstore.ts";
import { findHome } from "../src/analysis/store/signature.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** The folder of what is kept during the run: a home for keeping, as `XDG_CACHE_HOME` names it. */
    readonly kept: string;
  }
}

/** Called once at the beginning of a run; what it returns is called at the end. */
export default async function makeKept(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), "counterchange-kept-"));
  const [key, entries] = placesIn(folder);
  await cp(join(findHome(), "key"), key).catch(() => undefined);
  await cp(join(import.meta.dirname, "../.cache/counterchange"), entries, { recursive: true }).catch(
    () => undefined,
  );
  project.provide("kept", folder);
  return () => rm(folder, { recursive: true, force: true });
}

/** Opens the store of the run. Whoever measures anew what another file measured is not faster, and not wrong. */
export async function openKept(): Promise<Store> {
  const [secretFile, folder] = placesIn(inject("kept"));
  const store = await openStore({ folder, secretFile });
  if (store === undefined) throw new Error("nothing can be kept");
  return store;
}

/** Where its entries lie, for processes of the tests that open it themselves: the key lies beside their folder. */
export const findKept = (): string => placesIn(inject("kept"))[1];

/** Where commands have the key and the entries that they keep in a home. */
function placesIn(home: string): readonly [key: string, entries: string] {
  return [join(home, "counterchange/key"), join(home, "counterchange/kept")];
}

/**
 * Lets a command that works in `folder` keep where `openKept` does, while `use` runs: where `.cache` is a link, commands go to
 * the home. Not where a test has a home of its own, or `folder` a cache.
 */
export async function shareKept<T>(
  folder: string,
  use: (environment: Readonly<Record<string, string>>) => Promise<T>,
): Promise<T> {
  const link = join(folder, ".cache");
  const isShared =
    process.env["XDG_CACHE_HOME"] !== "" &&
    (await symlink("none", link).then(
      () => true,
      () => false,
    ));
  return use(isShared ? { XDG_CACHE_HOME: inject("kept") } : {}).finally(() => isShared && rm(link));
}
