// Floor 6. A gallery that is too large for one process → its files: some studies at a time, each time in a process of its own
// that writes into the same fresh folder; then what shows the gallery as a whole.
import { fork } from "node:child_process";
import { writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { fileURLToPath, pathToFileURL } from "node:url";
import { serialize } from "node:v8";
import { runOrdered } from "../study/queue.ts";
import type { GalleryResult } from "../study/result.ts";
import { closeSpilled, type Spill } from "../study/spill.ts";
import type { Store } from "../study/store.ts";
import type { Lettering } from "./lettering.ts";
import type { ManifestEntry } from "./manifest.ts";
import type { PartOrder, WrittenPart } from "./partworker.ts";
import { orderStudies } from "./present/card.ts";
import type { SitePart } from "./present/site.ts";

/** Put in by cli/translate.mjs: where the worker lies as JavaScript. */
declare const translatedPartWorker: string | undefined;

/** What a process may take for its part, in MB of JavaScript's own memory. */
const megabytes = 2048;

/** Processes at once: each draws with threads of its own. */
const atOnce = Math.min(2, availableParallelism());

export interface ChunkOptions {
  readonly base: string | undefined;
  readonly store: Store | undefined;
  readonly spill: Spill;
  /** Studies for one process. */
  readonly chunk: number;
  /** The folder that the files are written to. */
  readonly fresh: string;
}

/** Writes every file of the site. Throws what went wrong in a process, with its message. */
export async function publishChunks(
  result: GalleryResult,
  { base, store, spill, chunk, fresh }: ChunkOptions,
): Promise<{ readonly entries: readonly ManifestEntry[]; readonly pages: number }> {
  const index = await writeIndex(result, spill);
  const common = { index, base, fresh, store: store?.options };
  const slugs = orderStudies(result.studies).map(({ study }) => study.slug);
  const parts = Array.from(
    { length: Math.ceil(slugs.length / chunk) },
    (_, at): SitePart => ({ slugs: slugs.slice(at * chunk, (at + 1) * chunk), isShared: false }),
  );
  const entries: ManifestEntry[] = [];
  const lettering: Lettering[] = [];
  let pages = 0;
  const take = (written: WrittenPart): void => {
    for (const entry of written.entries) entries.push(entry);
    lettering.push(written.lettering);
    pages += written.pages;
  };
  await runOrdered(parts, atOnce, (part) => runPart({ ...common, part, others: [] }), take);
  take(await runPart({ ...common, part: { slugs: [], isShared: true }, others: lettering }));
  return { entries, pages };
}

/** All that every process knows of the gallery, without what only a study's own pages need. */
async function writeIndex({ studies, ...rest }: GalleryResult, spill: Spill): Promise<string> {
  const spilled = [];
  for (const study of studies) spilled.push(closeSpilled(study) ?? closeSpilled(await spill.put(study)));
  const file = await spill.place("index");
  await writeFile(file, serialize({ ...rest, problems: [], studies: spilled }));
  return file;
}

function runPart(order: PartOrder): Promise<WrittenPart> {
  const { file, loader } = findWorker();
  const child = fork(file, [], {
    serialization: "advanced",
    stdio: ["ignore", "ignore", "inherit", "ipc"],
    execArgv: [...loader, `--max-old-space-size=${megabytes}`],
  });
  const kill = (): void => void child.kill("SIGKILL");
  process.on("exit", kill);
  return new Promise<WrittenPart>((resolve, reject) => {
    child.on("message", (answer: { readonly written?: WrittenPart; readonly error?: string }) => {
      if (answer.written !== undefined) resolve(answer.written);
      else reject(new Error(answer.error));
    });
    child.on("error", reject);
    child.on("exit", (code, signal) => reject(new Error(`a part of the site ended with ${signal ?? code}`)));
    child.send(order, (error) => error !== null && reject(error));
  }).finally(() => {
    process.off("exit", kill);
    kill();
  });
}

/** The worker, and what Node needs to read it: nothing where this code was translated together with it. */
function findWorker(): { readonly file: string; readonly loader: readonly string[] } {
  if (typeof translatedPartWorker === "string") return { file: translatedPartWorker, loader: [] };
  const loader = pathToFileURL(createRequire(import.meta.url).resolve("tsx")).href;
  return { file: fileURLToPath(new URL("./partworker.ts", import.meta.url)), loader: ["--import", loader] };
}
