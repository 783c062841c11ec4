// Test support, a process of its own: one whole build, which tells its parent how far it has come and may be killed at any
// moment. It loads everything, then waits for its order.
import path from "node:path";
import { openStore } from "../../src/analysis/store/resultstore.ts";
import { buildSite } from "../../src/publish/buildsite.ts";
import { disks, watchDisk } from "./disk.ts";

export type Phase = "ready" | "started" | "writing" | "swapping" | "done";

export interface Order {
  readonly content: string;
  readonly site: string;
  readonly way: keyof typeof disks;
  /** The folder of the cache, if one is used. */
  readonly cache?: string;
  /** The call to the disk before which it kills itself, counted from 1 at the beginning, or where it begins to swap. */
  readonly last?: { readonly call: number; readonly from: "started" | "swapping" };
}

async function run({ content, site, way, cache, last }: Order): Promise<void> {
  const store =
    cache === undefined
      ? undefined
      : await openStore({ folder: cache, secretFile: path.join(cache, "../key") });
  const calls = { started: 0, swapping: 0 };
  let phase: Phase = "ready";
  const tell = (next: Phase): void => {
    if (next === phase) return;
    phase = next;
    process.send?.(next);
  };
  tell("started");
  const disk = watchDisk((call, at) => {
    if (call === "write" && at.includes("/fresh-")) tell("writing");
    // The first of the renames, or the probe before them.
    if (phase === "writing" && (at.includes("/probe-") || call === "rename")) tell("swapping");
    calls.started += 1;
    if (phase === "swapping") calls.swapping += 1;
    if (last !== undefined && calls[last.from] === last.call) process.kill(process.pid, "SIGKILL");
  }, disks[way]);
  await buildSite(content, site, { disk, ...(store === undefined ? {} : { store }) });
  await store?.close();
  tell("done");
}

process.once("message", (order: Order) => {
  run(order).then(
    () => process.exit(0),
    (error: unknown) => {
      process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
      process.exit(1);
    },
  );
});
process.send?.("ready");
