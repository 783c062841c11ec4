// Test support. The sites of one test file: made and served before its tests, with a browser beside them, and cleared away.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { launchBrowser } from "./browser.ts";
import { type SiteServer, serveSite } from "./server.ts";

/** All of it is there once the tests begin, and not before. */
export interface Room<Name extends string> {
  /** Each site lies in the folder of its name in here. */
  readonly folder: string;
  readonly browser: Browser;
  readonly sites: Readonly<Record<Name, SiteServer>>;
}

/** Has each site made by its function, which is given the folder for it, one after the other. */
export function openRoom<Name extends string>(
  makers: Readonly<Record<Name, (folder: string) => Promise<unknown>>>,
): Room<Name> {
  const room = { sites: {} } as { -readonly [Key in keyof Room<Name>]: Room<Name>[Key] };
  const sites: Partial<Record<Name, SiteServer>> = room.sites;
  beforeAll(async () => {
    room.folder = await mkdtemp(path.join(tmpdir(), "counterchange-pages-"));
    for (const name of Object.keys(makers) as Name[]) {
      const folder = path.join(room.folder, name);
      await makers[name](folder);
      sites[name] = await serveSite(folder);
    }
    room.browser = await launchBrowser();
  }, 180_000);
  afterAll(async () => {
    await room.browser?.close();
    await Promise.all(Object.values<SiteServer>(room.sites).map((site) => site.close()));
    await rm(room.folder, { recursive: true, force: true });
  });
  return room;
}
