// Floor 9. The list of what a build wrote: it stands in the published folder, says which files are ours, and lets anyone
// check that the whole has arrived.
import { createHash } from "node:crypto";
import path from "node:path";
import { nameFailure } from "../../content/disk/filefailure.ts";
import { readRegular } from "../../content/disk/readfile.ts";
import { walkTree } from "../../content/disk/walkfolder.ts";
import { quoteText } from "../../problem/quote.ts";
import { OutputError } from "./diskfailure.ts";

/** The manifest's own name in the published folder. A folder without it is not ours. */
export const manifestName = ".counterchange-site";

/** Larger lists are not read, in bytes: that of 3,000 studies has some 30 MB. */
const mostBytes = 256 * 1024 * 1024;

export interface ManifestEntry {
  /** As in SiteFile: from the top of the site, with `/` between folders. */
  readonly path: string;
  /** In bytes. */
  readonly size: number;
  /** SHA-256 in 64 hexadecimal digits. Source: FIPS 180-4. */
  readonly sha256: string;
}

export function describeFile(sitePath: string, bytes: string | Uint8Array): ManifestEntry {
  const buffer = typeof bytes === "string" ? Buffer.from(bytes, "utf8") : bytes;
  return {
    path: sitePath,
    size: buffer.length,
    sha256: createHash("sha256").update(buffer).digest("hex"),
  };
}

/** Returns the manifest's text: JSON with a line for each file, in code unit order of the paths, without itself. */
export function formatManifest(entries: readonly ManifestEntry[]): string {
  const sorted = [...entries].sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0));
  const lines = sorted.map(({ path: file, size, sha256 }) => JSON.stringify({ path: file, size, sha256 }));
  const head = `"schemaVersion": 1, "schema": "schemas/manifest.schema.json"`;
  return `{ ${head}, "files": [\n${lines.join(",\n")}\n] }\n`;
}

/** Returns the paths of the files that the manifest in `folder` names, with its own, as `readDigests`. */
export async function readManifest(folder: string): Promise<ReadonlySet<string> | undefined> {
  const digests = await readDigests(folder);
  return digests === undefined ? undefined : new Set([...digests.keys(), manifestName]);
}

/**
 * Returns the SHA-256 of each file that the manifest in `folder` names, by path, or undefined where there is none that can be
 * read. Before version 0.2 it was a list of paths, a path a line: that is read as well, and has no digests.
 */
export async function readDigests(folder: string): Promise<ReadonlyMap<string, string> | undefined> {
  const text = (await readManifestFile(folder))?.toString("utf8");
  if (text === undefined) return undefined;
  return text.startsWith("{") ? parseFiles(text) : new Map(text.split("\n").map((line) => [line, ""]));
}

/** Returns the bytes of the manifest in `folder`, whatever they are. */
export async function readManifestFile(folder: string): Promise<Buffer | undefined> {
  const read = await readRegular(folder, manifestName, mostBytes);
  return "bytes" in read ? Buffer.from(read.bytes) : undefined;
}

function parseFiles(text: string): ReadonlyMap<string, string> | undefined {
  try {
    const found: unknown = JSON.parse(text);
    if (typeof found !== "object" || found === null || !("files" in found) || !Array.isArray(found.files))
      return undefined;
    const files: readonly unknown[] = found.files;
    return new Map(
      files.flatMap((file) =>
        typeof file === "object" && file !== null && "path" in file && typeof file.path === "string"
          ? [[file.path, "sha256" in file && typeof file.sha256 === "string" ? file.sha256 : ""]]
          : [],
      ),
    );
  } catch {
    return undefined;
  }
}

/** Every file under `folder`, as paths with `/`, in code unit order. Links are listed, never followed. Throws OutputError. */
export async function listFiles(folder: string): Promise<readonly string[]> {
  return listSome(folder, (_, kind) => kind !== "folder", Number.POSITIVE_INFINITY);
}

/** What a file manager leaves where someone has looked: nobody's work. */
const leftByLooking = /(?:^|\/)(?:\.DS_Store|\._[^/]*|Thumbs\.db|desktop\.ini)$/;

/**
 * Returns the files under `folder` that are not among `ours`, sorted; where there are more than `most`, so many of them.
 * Where nothing is known to be ours, somebody made its empty folders too, and they count: `notes/`.
 */
export async function listForeign(
  folder: string,
  ours?: ReadonlySet<string>,
  most = Number.POSITIVE_INFINITY,
): Promise<readonly string[]> {
  const isWanted: IsWanted = (file, kind) =>
    kind === "folder" ? ours === undefined : ours?.has(file) !== true && !leftByLooking.test(file);
  return listSome(folder, isWanted, most);
}

type IsWanted = (path: string, kind: string) => boolean;

async function listSome(folder: string, isWanted: IsWanted, most: number): Promise<readonly string[]> {
  const files: string[] = [];
  for await (const found of walkTree(folder)) {
    if ("failure" in found)
      throw new OutputError(
        `${quoteText(path.join(folder, found.path))} could not be read: ${nameFailure(found.failure)}. What is published is as it was.`,
        "Check that you may open it and list what is in it.",
      );
    if (isWanted(found.path, found.kind)) files.push(found.kind === "folder" ? `${found.path}/` : found.path);
    if (files.length >= most) break;
  }
  return files.sort();
}
