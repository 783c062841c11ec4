// Floor 6. The process that publishes one part of a large site: reads the index, makes the part's files, writes them, says what
// it wrote. It ends when its parent does.
import { readFile } from "node:fs/promises";
import { deserialize } from "node:v8";
import type { GalleryResult } from "../study/result.ts";
import { openSpilled, type SpilledResult } from "../study/spill.ts";
import { openStore, type StoreOptions } from "../study/store.ts";
import { disk } from "./disk.ts";
import type { Lettering } from "./lettering.ts";
import type { ManifestEntry } from "./manifest.ts";
import { listPart } from "./part.ts";
import type { SitePart } from "./present/site.ts";
import { writePart } from "./writing.ts";

/** What is to be written where. `others` are the letters of the parts before. */
export interface PartOrder {
  readonly index: string;
  readonly base: string | undefined;
  readonly fresh: string;
  readonly store: StoreOptions | undefined;
  readonly part: SitePart;
  readonly others: readonly Lettering[];
}

export interface WrittenPart {
  readonly entries: readonly ManifestEntry[];
  readonly pages: number;
  readonly lettering: Lettering;
}

process.on("message", (order: PartOrder) => {
  write(order).then(
    (written) => tell({ written }),
    (error: unknown) =>
      tell({ error: error instanceof Error ? (error.stack ?? error.message) : String(error) }),
  );
});
process.on("disconnect", () => process.kill(process.pid, "SIGKILL"));

/** A parent that was killed hears nothing any more; nor is anyone to hear of that. */
function tell(message: object): void {
  process.send?.(message, undefined, undefined, () => undefined);
}

async function write({ index, base, fresh, store: options, part, others }: PartOrder): Promise<WrittenPart> {
  const store = options && (await openStore(options));
  // The parent wrote it a moment ago, in a folder that is its own.
  const { studies, ...rest } = deserialize(await readFile(index)) as Omit<GalleryResult, "studies"> & {
    readonly studies: readonly SpilledResult[];
  };
  const result = { ...rest, studies: studies.map(openSpilled) };
  const { files, pages, lettering } = await listPart(result, { base, store }, part, others);
  const entries = await writePart(files, fresh, disk);
  await store?.close();
  return { entries, pages, lettering };
}
