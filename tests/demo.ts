// Test support. The demo as it is published: built once in a run, by whoever asks first, for all who only look at it.
import { existsSync } from "node:fs";
import { cp, mkdir, rename, rm } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { inject } from "vitest";
import { buildSite } from "../src/publish/buildsite.ts";
import { openKept } from "./kept.ts";

export const demoContent = join(import.meta.dirname, "../content");

/** The path under which the built demo stands. */
export const demoBase = "/counterchange/";

/** Returns the folder of the built demo: to be read, never to be written to. */
export async function openDemo(): Promise<string> {
  const site = join(inject("kept"), "demo");
  while (!existsSync(site)) {
    const isFirst = await mkdir(`${site}-lock`).then(
      () => true,
      () => false,
    );
    if (isFirst) await makeDemo(site).finally(() => rm(`${site}-lock`, { recursive: true }));
    else await sleep(100);
  }
  return site;
}

async function makeDemo(site: string): Promise<void> {
  if (existsSync(site)) return;
  const fresh = `${site}-fresh`;
  await buildSite(demoContent, fresh, { base: demoBase, store: await openKept() });
  await rename(fresh, site);
}

/** Copies the demo's content to `folder`, of its studies these alone, and no series, votes, pages and addresses, which would miss the others. */
export async function copyDemo(folder: string, slugs: readonly string[]): Promise<void> {
  const isWanted = (file: string): boolean => {
    const [top, slug] = relative(demoContent, file).split(sep);
    return (
      !/^(?:series|votes|pages|addresses\.txt)$/.test(top ?? "") &&
      (top !== "studies" || slug === undefined || slugs.includes(slug))
    );
  };
  await cp(demoContent, folder, { recursive: true, filter: isWanted });
}
