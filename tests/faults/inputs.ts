// Test support. What a build reads vanishes, or turns into something else, while it is being read.
import { mkdir, rename, rm, symlink, truncate, writeFile } from "node:fs/promises";
import path from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { buildSite } from "../../src/site/build.ts";
import { OutputError } from "../../src/site/failure.ts";
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

/**
 * Builds again and again while something of the content is taken away at a random moment. Each build must end: with a
 * whole site, new or old, and with problems that name files; never with a fault of the program.
 */
export async function runInputs(room: string, tries: number, seed: number): Promise<Tally> {
  const random = makeRandom(seed);
  const content = path.join(room, "content");
  const site = path.join(room, "_site");
  await writeContent(content, makeContent());
  await buildSite(content, site);
  const lost: string[] = [];
  const counts = { published: 0, refused: 0, problems: 0 };
  let longest = 1_000;
  for (let done = 0; done < tries; done += 1) {
    await writeContent(content, makeContent());
    const [target, deed] = [pick(random, targets), pick(random, Object.keys(deeds))];
    const what = `${target === "" ? "the content folder" : target} ${deed}`;
    const began = performance.now();
    // A deed that is not possible there, as cutting a folder, is none.
    const act = sleep(random() * random() * longest).then(() =>
      deeds[deed]?.(path.join(content, target)).catch(() => undefined),
    );
    try {
      const { result } = await buildSite(content, site);
      counts.published += 1;
      counts.problems += result.problems.length;
      const faults = result.problems.filter(({ rule, file }) => rule === "study/fault" || file === "");
      lost.push(...faults.map(({ reason }) => `${what}: ${reason}`));
    } catch (error) {
      counts.refused += 1;
      if (!(error instanceof OutputError)) lost.push(`${what}: ${message(error)}`);
    }
    longest = 0.8 * longest + 0.2 * (performance.now() - began);
    await act;
    try {
      checkWhole(site);
    } catch (error) {
      lost.push(`${what}: ${message(error)}`);
    }
  }
  const note = `${counts.published} published with ${counts.problems} problems named, ${counts.refused} refused`;
  return { name: "inputs vanish while building", tried: tries, lost, note };
}
