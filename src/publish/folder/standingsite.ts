// Floor 9. The site that stands, file by file, where it was published here and is as it was written.
import { readRegular } from "../../content/disk/readfile.ts";
import { describeFile, readDigests } from "./manifest.ts";
import { isRecorded } from "./publishedrecord.ts";
import type { Place } from "./siteplace.ts";

/** Larger files are not taken over, in bytes: pictures have some hundred KB. */
const mostBytes = 16 * 1024 * 1024;

export interface StandingSite {
  /** The paths of its files. */
  readonly paths: readonly string[];
  /** Returns the bytes of one of them, or undefined where they are not those that were written. */
  read(path: string): Promise<Uint8Array | undefined>;
}

/** Returns the addresses of the pages among the files of a site. */
export function listPages(files: readonly string[]): readonly string[] {
  const page = "index.html";
  return files.flatMap((file) =>
    file === page || file.endsWith(`/${page}`) ? [`/${file.slice(0, -page.length)}`] : [],
  );
}

/** Opens the published site, or undefined where there is none, or one that was not published here with the secret. */
export async function openStanding(place: Place): Promise<StandingSite | undefined> {
  const { target } = place;
  if (!(await isRecorded(target, place))) return undefined;
  const digests = await readDigests(target);
  if (digests === undefined) return undefined;
  return {
    paths: [...digests.keys()],
    read: async (path) => {
      const read = await readRegular(target, path, mostBytes);
      return "bytes" in read && describeFile(path, read.bytes).sha256 === digests.get(path)
        ? read.bytes
        : undefined;
    },
  };
}
