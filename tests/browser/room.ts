// Test support. The sites of one test file: made and served before its tests, with a browser beside them, and cleared away.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import type { GalleryResult } from "../../src/analysis/result.ts";
import { publishGallery } from "../../src/publish/publishgallery.ts";
import { openKept } from "../kept.ts";
import { launchBrowser } from "./browser.ts";
import { type SiteServer, serveSite } from "./server.ts";

/** Publishes a gallery under `base`, its pictures those of other files that show the same drawings. */
export async function publishKept(result: GalleryResult, folder: string, base?: string): Promise<void> {
  await publishGallery(result, folder, { base, keepOut: [], store: await openKept() });
}

let launched: Promise<Browser> | undefined;

/** Returns the browser of this process: every file finds the one that the first has launched. It ends with the process. */
export function shareBrowser(): Promise<Browser> {
  launched ??= launchBrowser();
  return launched;
}

/** All of it is there once the tests begin, and not before. */
export interface Room<Name extends string> {
  /** Where each site lies. */
  readonly folders: Readonly<Record<Name, string>>;
  readonly browser: Browser;
  readonly sites: Readonly<Record<Name, SiteServer>>;
}

/**
 * Has each site made by its function, one after the other, and serves it under `base`. A maker is given a folder for it, and
 * may return the folder of a site that is there already.
 */
export function openRoom<Name extends string>(
  makers: Readonly<Record<Name, (folder: string) => Promise<unknown>>>,
  base = "/",
): Room<Name> {
  const room = { sites: {}, folders: {} } as { -readonly [Key in keyof Room<Name>]: Room<Name>[Key] };
  const sites: Partial<Record<Name, SiteServer>> = room.sites;
  const folders: Partial<Record<Name, string>> = room.folders;
  let own = "";
  beforeAll(async () => {
    own = await mkdtemp(path.join(tmpdir(), "counterchange-pages-"));
    for (const name of Object.keys(makers) as Name[]) {
      const folder = path.join(own, name);
      const made = await makers[name](folder);
      folders[name] = typeof made === "string" ? made : folder;
      sites[name] = await serveSite(folders[name], base);
    }
    room.browser = await shareBrowser();
  }, 180_000);
  afterAll(async () => {
    await Promise.all(room.browser?.contexts().map((context) => context.close()) ?? []);
    await Promise.all(Object.values<SiteServer>(room.sites).map((site) => site.close()));
    await rm(own, { recursive: true, force: true });
  });
  return room;
}
