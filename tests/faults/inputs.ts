// Test support. What a build reads vanishes, or turns into something else, while it is being read.
import { lstat, mkdir, rename, rm, symlink, truncate, writeFile } from "node:fs/promises";
import path from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { openStore, type Store } from "../../src/analysis/store/resultstore.ts";
import { buildSite } from "../../src/publish/buildsite.ts";
import { OutputError } from "../../src/publish/folder/diskfailure.ts";
import { makeContent, writeContent } from "./gallery.ts";
import { makeRandom, message, pick, type Tally } from "./tally.ts";
import { checkWhole } from "./whole.ts";

const targets = [
  "studies/low-tide",
  "studies/low-tide/original.svg",
  "studies/low-tide/study.md",
  "studies/noon-gun/original.svg",
  "flags/buoy.svg",
  "flags",
  "gallery.yaml",
  "studies",
  "",
];

const deeds: Readonly<Record<string, (file: string) => Promise<void>>> = {
  deleted: (file) => rm(file, { recursive: true, force: true }),
  "turned into a folder": async (file) => {
    await rm(file, { recursive: true, force: true });
    await mkdir(file);
  },
  "turned into a file": async (file) => {
    await rm(file, { recursive: true, force: true });
    await writeFile(file, "?");
  },
  "turned into a link to itself": async (file) => {
    await rm(file, { recursive: true, force: true });
    await symlink(path.basename(file), file);
  },
  "cut short": (file) => truncate(file, 20),
  "renamed and back": async (file) => {
    await rename(file, `${file}~`);
    await sleep(5);
    await rename(`${file}~`, file);
  },
};

/** What tells whether something was done to a file: its number, kind, size, and when it was last changed in any way. */
async function lookAt(file: string): Promise<string> {
  const found = await lstat(file, { bigint: true }).catch(() => undefined);
  return found === undefined ? "nothing" : `${found.ino} ${found.mode} ${found.size} ${found.ctimeNs}`;
}

/** Every deed for every target that it can be done to: a folder cannot be cut short. */
const pairs = targets.flatMap((target) =>
  Object.entries(deeds)
    .filter(([name]) => name !== "cut short" || path.extname(target) !== "")
    .map(([name, deed]) => ({ target, name, deed })),
);

/**
 * Builds again and again while something of the content is taken away at a random moment. Each build must end: with a
 * whole site, new or old, and with problems that name files; never with a fault of the program. With `kept` every build finds
 * its measurements there.
 */
export async function runInputs(room: string, tries: number, seed: number, kept?: Store): Promise<Tally> {
  const random = makeRandom(seed);
  const content = path.join(room, "content");
  const site = path.join(room, "_site");
  const own = { folder: path.join(room, "cache"), secretFile: path.join(room, "key") };
  const store = kept ?? (await openStore(own));
  await writeContent(content, makeContent());
  await buildSite(content, site, { store });
  const lost: string[] = [];
  const counts = { tried: 0, deeds: 0, published: 0, refused: 0, problems: 0 };
  let longest = 1_000;
  // A deed that comes too late, or does nothing, counts for nothing: it is tried again, though not for ever.
  while (counts.deeds < tries && counts.tried < 3 * tries + 10) {
    counts.tried += 1;
    await writeContent(content, makeContent());
    const { target, name, deed } = pick(random, pairs);
    const file = path.join(content, target);
    const what = `${target === "" ? "the content folder" : target} ${name}`;
    const began = performance.now();
    let hasEnded = false;
    const act = sleep(random() * random() * longest).then(async () => {
      const before = await lookAt(file);
      await deed(file);
      if (!hasEnded && (await lookAt(file)) !== before) counts.deeds += 1;
    });
    try {
      // Every second one finds its measurements, and is done so much sooner.
      const { result } = await buildSite(content, site, kept || counts.tried % 2 === 1 ? { store } : {});
      counts.published += 1;
      counts.problems += result.problems.length;
      const faults = result.problems.filter(({ rule, file }) => rule === "study/fault" || file === "");
      lost.push(...faults.map(({ reason }) => `${what}: ${reason}`));
    } catch (error) {
      counts.refused += 1;
      if (!(error instanceof OutputError)) lost.push(`${what}: ${message(error)}`);
    }
    hasEnded = true;
    longest = 0.8 * longest + 0.2 * (performance.now() - began);
    await act.catch((error: unknown) => lost.push(`${what}: it could not be done: ${message(error)}`));
    try {
      checkWhole(site);
    } catch (error) {
      lost.push(`${what}: ${message(error)}`);
    }
  }
  if (store !== kept) await store?.close();
  if (counts.deeds < tries) lost.push(`only ${counts.deeds} of ${counts.tried} deeds were done in time`);
  const note = `${counts.deeds} deeds done before a build ended, in ${counts.tried} builds; ${counts.published} published with ${counts.problems} problems named, ${counts.refused} refused`;
  return { name: "inputs vanish while building", tried: counts.tried, lost, note };
}
