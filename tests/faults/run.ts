// npm run faults: everything that can go wrong while a site is published, tried many times. Prints what was tried and what
// was lost; ends with status 1 if anything was. Words: a share of the whole, as 0.1, and a seed; both may be left out.
import { chmod, mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { runAsked } from "./asked.ts";
import { runExchanged, runExchangedAt } from "./exchanged.ts";
import { runFollowed } from "./followed.ts";
import { runInputs } from "./inputs.ts";
import { runDamages, runEdits } from "./kept.ts";
import { runKills } from "./kills.ts";
import { layingAlone, runLaid, wholeCommand } from "./laid.ts";
import { runNth } from "./nth.ts";
import { runSigns } from "./signs.ts";
import type { Tally } from "./tally.ts";
import { runUnreadable } from "./unreadable.ts";
import { runWalls } from "./walls.ts";

const share = Number(process.argv[2] ?? 1);
const seed = Number(process.argv[3] ?? 7);
const times = (number: number): number => Math.max(1, Math.round(number * share));
const codes = ["ENOSPC", "EACCES", "EIO", "EROFS", "EMFILE"];

const top = await mkdtemp(path.join(tmpdir(), "counterchange-faults-"));
// One of the builds runs as another user.
await chmod(top, 0o755);
const room = async (name: string): Promise<string> => {
  const folder = path.join(top, name);
  await mkdir(folder);
  return folder;
};
const onDone = (name: string) => (done: number) => {
  if (process.stderr.isTTY || done % 20 === 0) process.stderr.write(`  ${name}: ${done}\n`);
};

const parts: readonly (readonly [string, () => Promise<Tally>])[] = [
  [
    "nth",
    async () =>
      runNth({ room: await room("nth"), codes, ways: ["exchange", "link", "move"], lasting: [false, true] }),
  ],
  ["signs", async () => runSigns(await room("signs"), codes)],
  ["asked", async () => runAsked(await room("asked"), codes)],
  ["laid", async () => runLaid(await room("laid"), layingAlone, codes)],
  ["new", async () => runLaid(await room("new"), wholeCommand, ["EIO"])],
  ["unreadable", async () => runUnreadable(await room("unreadable"))],
  ["damages", async () => runDamages(await room("damages"), times(60), seed)],
  ["exchanged", async () => runExchangedAt(await room("exchanged"))],
  ["exchanged-live", async () => runExchanged(await room("exchanged-live"), times(3000))],
  ["inputs", async () => runInputs(await room("inputs"), times(60), seed)],
  ["edits", async () => runEdits(await room("edits"), times(100), seed, onDone("edits"))],
  [
    "addresses",
    async () => runFollowed(await room("addresses"), times(200), seed, undefined, onDone("addresses")),
  ],
  ["walls", async () => runWalls(await room("walls"))],
  ...(
    [
      ["exchange", 250],
      ["link", 50],
      ["move", 40],
    ] as const
  ).map(
    ([way, kills]) =>
      [
        `kills-${way}`,
        async () =>
          runKills({
            room: await room(way),
            kills: times(kills),
            seed,
            way,
            onKill: onDone(`kills, ${way}`),
          }),
      ] as const,
  ),
];

const only = process.argv[4];
let lost = 0;
try {
  for (const [name, run] of parts) {
    if (only !== undefined && !name.startsWith(only)) continue;
    const began = performance.now();
    const tally = await run();
    lost += tally.lost.length;
    const seconds = Math.round((performance.now() - began) / 1000);
    process.stdout.write(
      `${tally.name}: tried ${tally.tried}, lost ${tally.lost.length} (${seconds} s)\n  ${tally.note}\n`,
    );
    for (const line of tally.lost.slice(0, 20)) process.stdout.write(`  LOST ${line}\n`);
  }
} finally {
  await rm(top, { recursive: true, force: true });
}
process.stdout.write(`lost: ${lost}\n`);
process.exit(lost === 0 ? 0 : 1);
