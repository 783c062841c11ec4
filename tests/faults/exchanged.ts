// Test support. A folder of the content is exchanged with a link to a folder outside, and back, while the content is read:
// nothing of what lies outside may be read.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { renameSync, rmSync, symlinkSync } from "node:fs";
import path from "node:path";
import { listFolder, readListed } from "../../src/content/folder/flagfolder.ts";
import { loadGallery, readOriginal } from "../../src/content/folder/loadgallery.ts";
import { type Content, drawFlag, makeContent, writeContent } from "./gallery.ts";
import { watchSystem } from "./system.ts";
import type { Tally } from "./tally.ts";

const mark = "Not for you";
const secret = "#123456";

/** The same names as in the content, with other words and another drawing. */
function makeOutside(): Content {
  const drawing = drawFlag({ field: secret, charge: "#3a2a20" });
  return Object.fromEntries(
    Object.entries(makeContent()).map(([file, text]) => [
      file,
      file.endsWith(".svg") ? drawing : text.replace(/^title: .*/m, `title: ${mark}`),
    ]),
  );
}

/** Reads all that a build reads, and returns what came from outside. */
async function readAll(content: string): Promise<readonly string[]> {
  const { gallery, studies } = await loadGallery(content);
  const found: string[] = [gallery.title, ...studies.map(({ title }) => title)].filter(
    (title) => title === mark,
  );
  const isSecret = (bytes: Uint8Array | undefined) => Buffer.from(bytes ?? []).includes(secret);
  for (const study of studies)
    if (isSecret(await readOriginal(study).catch(() => undefined))) found.push(study.originalFile);
  const { value: flags } = await listFolder(content, "flags", true);
  for (const flag of flags ?? []) if (isSecret((await readListed(flag)).value)) found.push(flag.file);
  return found;
}

/** `away` holds the folder while a link to `outside` stands in its place. */
interface Exchange {
  readonly folder: string;
  readonly away: string;
  readonly link: string;
}

async function prepare(room: string, target: string): Promise<{ content: string; exchange: Exchange }> {
  const [content, outside] = [path.join(room, "content"), path.join(room, "outside")];
  await writeContent(content, makeContent());
  await writeContent(outside, makeOutside());
  const exchange = {
    folder: path.join(content, target),
    away: path.join(room, "away"),
    link: path.join(room, "link"),
  };
  for (const left of [exchange.away, exchange.link]) rmSync(left, { recursive: true, force: true });
  symlinkSync(path.join(outside, target), exchange.link);
  return { content, exchange };
}

function turn({ folder, away, link }: Exchange, isOut: boolean): void {
  renameSync(folder, isOut ? away : link);
  renameSync(isOut ? link : away, folder);
}

const all = ["studies/low-tide", "studies", "flags"];

/** Exchanges at the Nth call to the system and back at one of the next calls, for every N. */
export async function runExchangedAt(
  room: string,
  lengths: readonly number[] = [1, 2, 3, 50],
  targets: readonly string[] = all,
): Promise<Tally> {
  const lost: string[] = [];
  let tried = 0;
  for (const target of targets)
    for (const length of lengths)
      for (let at = 1, count = at; count >= at; at += 1) {
        const { content, exchange } = await prepare(room, target);
        count = 0;
        const before = () => {
          count += 1;
          if (count === at || count === at + length) turn(exchange, count === at);
        };
        const found = await watchSystem({ within: content, before }, () => readAll(content));
        tried += 1;
        lost.push(...found.map((one) => `${target}, a link from call ${at} to ${at + length}: ${one}`));
      }
  return {
    name: "folders exchanged with links, call by call",
    tried,
    lost,
    note: "nothing outside was read",
  };
}

/** Exchanges them as fast as another process can while the content is read again and again. */
export async function runExchanged(room: string, tries: number): Promise<Tally> {
  const lost: string[] = [];
  for (const target of all) {
    const { content, exchange } = await prepare(room, target);
    const script = `const { renameSync } = require("node:fs"); const { folder, away, link } = ${JSON.stringify(exchange)};
      process.stdout.write("began");
      for (;;) { renameSync(folder, away); renameSync(link, folder); renameSync(folder, link); renameSync(away, folder); }`;
    const other = spawn(process.execPath, ["-e", script], { stdio: ["ignore", "pipe", "ignore"] });
    const ended = once(other, "exit");
    try {
      await once(other.stdout, "data");
      for (let number = 0; number < tries / all.length; number += 1)
        lost.push(...(await readAll(content)).map((one) => `${target}: ${one}`));
    } finally {
      other.kill("SIGKILL");
      await ended;
    }
  }
  return {
    name: "folders exchanged with links, by another process",
    tried: tries,
    lost,
    note: "nothing outside was read",
  };
}
