// Same input, same bytes: whatever the surroundings of the build.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { translateModules } from "./child.ts";
import { makeContent, writeContent } from "./gallery.ts";
import { buildIn, listModes, type Surroundings } from "./same.ts";
import { checkWhole, readListed } from "./whole.ts";

vi.setConfig({ testTimeout: 240_000 });

const plain: Surroundings = {
  name: "plain",
  environment: { TZ: "UTC", LC_ALL: "C", LANG: "C", WORLD_UMASK: "022" },
};

const others: readonly Surroundings[] = [
  {
    name: "far-away",
    folder: "content",
    environment: {
      TZ: "Pacific/Kiritimati",
      LC_ALL: "tr_TR.UTF-8",
      LANG: "tr_TR.UTF-8",
      WORLD_UMASK: "077",
      WORLD_CORES: "4",
      WORLD_ORDER: "shuffled",
    },
    cache: true,
  },
  {
    name: "one-core",
    folder: "",
    environment: {
      TZ: "America/St_Johns",
      LC_ALL: "ar_EG.UTF-8",
      WORLD_CORES: "1",
      WORLD_ORDER: "reversed",
    },
    cache: true,
  },
];

let room: string;
let model: string;
beforeAll(async () => {
  room = await mkdtemp(path.join(tmpdir(), "counterchange-same-"));
  await writeContent(path.join(room, "content"), makeContent());
  await translateModules(path.join(room, "programs"), ["once"]);
  model = await buildIn(room, plain);
});
afterAll(() => rm(room, { recursive: true, force: true }));

// Many cores keep what they measured, one core finds it: a cold cache and a warm one.
test.each(others)("built in $name", async (surroundings) => {
  const site = await buildIn(room, surroundings);
  checkWhole(site);
  const odd = readListed(site).files.filter(
    ({ path: file, sha256 }) =>
      readListed(model).files.find((other) => other.path === file)?.sha256 !== sha256,
  );
  expect(odd.map((file) => file.path)).toEqual([]);
  expect(readListed(site).text).toBe(readListed(model).text);
  expect(await listModes(site)).toEqual(await listModes(model));
});
