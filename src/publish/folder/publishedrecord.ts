// Floor 9. Which sites were published here with this user's secret: by the digests of their manifests, in the hidden folder.
// A manifest that came with a folder says whatever its writer liked, and costs nobody a file.
import { createHash } from "node:crypto";
import path from "node:path";
import { signText } from "../../analysis/store/signature.ts";
import { readRegular } from "../../content/disk/readfile.ts";
import { quoteText } from "../../problem/quote.ts";
import { OutputError } from "./diskfailure.ts";
import { readManifestFile } from "./manifest.ts";
import { nameIn, type Place } from "./siteplace.ts";
import type { Disk } from "./writedisk.ts";

/** A line for each site, in hex. */
export const recordFile = "published";

/** So many sites are remembered: the one that is published, the one before, and what killed builds left. */
const most = 16;

/** Remembers the site in `folder`, before it is published. */
export async function addRecord(folder: string, place: Place, disk: Disk): Promise<void> {
  const signed = await sign(folder, place);
  if (signed === undefined)
    throw new OutputError(
      `The site cannot be published: what was written to ${quoteText(folder)} cannot be read again. What is published is as it was.`,
      "Look after the disk, and publish again.",
    );
  const before = (await readRecord(place)).filter((line) => line !== signed).slice(1 - most);
  const fresh = nameIn(place, "fresh");
  await disk.write(fresh, `${[...before, signed].join("\n")}\n`);
  await disk.rename(fresh, path.join(place.workshop, recordFile));
}

/** Returns whether the site in `folder` was published here. */
export async function isRecorded(folder: string, place: Place): Promise<boolean> {
  const signed = await sign(folder, place);
  return signed !== undefined && (await readRecord(place)).includes(signed);
}

async function sign(folder: string, { secret }: Place): Promise<string | undefined> {
  const manifest = await readManifestFile(folder);
  if (manifest === undefined) return undefined;
  return signText(secret, `site ${createHash("sha256").update(manifest).digest("hex")}`);
}

async function readRecord({ workshop }: Place): Promise<readonly string[]> {
  const read = await readRegular(workshop, recordFile, 65 * 2 * most);
  const text = "bytes" in read ? Buffer.from(read.bytes).toString("latin1") : "";
  return text.split("\n").filter((line) => /^[0-9a-f]{64}$/.test(line));
}
