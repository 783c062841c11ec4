// Floor 9. What was published → addresses.txt of the content folder: the one file there that publishing writes.
import { randomBytes } from "node:crypto";
import path from "node:path";
import { describeRefusal, findRefusal } from "../content/disk/machinelimit.ts";
import { kindOf } from "../content/disk/readfile.ts";
import {
  type AddressNotes,
  addAddresses,
  addressBytes,
  addressFile,
  readAddressList,
  tooManyAddresses,
} from "../content/folder/addressfile.ts";
import { isAddress } from "../content/folder/addressline.ts";
import { loadSettings, showFolder } from "../content/folder/loadgallery.ts";
import { compareText, type Problem, report } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import { listPages, type StandingSite } from "./folder/standingsite.ts";
import { type Disk, disk as realDisk } from "./folder/writedisk.ts";

/**
 * Adds to the list of `contentDir` what it lacks of `published`. A list that cannot be read is left as it is: loading tells of
 * it. Returns `address/file-size` where it has no room, the warning `address/not-written` where the system refuses; it is
 * as it was then.
 */
export async function keepAddresses(
  contentDir: string,
  published: AddressNotes,
  disk: Pick<Disk, "write" | "rename" | "remove"> = realDisk,
): Promise<Problem | undefined> {
  const { value: source } = await readAddressList(path.resolve(contentDir), showFolder(contentDir));
  if (source === undefined) return undefined;
  const text = addAddresses(source, published);
  if (text === source.text) return undefined;
  if (Buffer.byteLength(text) > addressBytes) return tooManyAddresses(source.file);
  const fresh = path.join(contentDir, `.addresses-${randomBytes(6).toString("hex")}`);
  try {
    await disk.write(fresh, text);
    await disk.rename(fresh, path.join(contentDir, addressFile));
  } catch (error) {
    await disk.remove(fresh).catch(() => undefined);
    const refusal = findRefusal(error);
    if (refusal === undefined) throw error;
    const reason = `The new addresses could not be added to the list. ${describeRefusal(refusal).reason}`;
    const hint = "Publish again where the content folder can be written to, so that each goes on answering.";
    return report("address/not-written", source.file, { reason, hint }, "warning");
  }
  return undefined;
}

/**
 * Begins the list where there is none yet, with the pages of the site that stands if it is of this gallery, by its title: they
 * are published. Two galleries may be published to one folder in turn.
 */
export async function beginAddresses(contentDir: string, standing: StandingSite | undefined): Promise<void> {
  const isThere = (await kindOf(path.join(contentDir, addressFile))) !== undefined;
  if (isThere || standing === undefined || (await kindOf(contentDir)) !== "folder") return;
  const { value: gallery } = await loadSettings(contentDir);
  if ((await readTitle(standing)) !== gallery.title) return;
  await keepAddresses(contentDir, new Map(listPages(standing.paths).map((address) => [address, {}])));
}

/** The title that the data of a site have, which this program wrote; undefined where there are none. */
async function readTitle(standing: StandingSite): Promise<unknown> {
  const bytes = await standing.read("studies.json");
  return bytes && JSON.parse(Buffer.from(bytes).toString("utf8")).title;
}

/** Returns the warning `address/lacking` where a list that is kept has not all of `published`. */
export function findLacking(
  contentDir: string,
  listed: AddressNotes | undefined,
  published: Iterable<string>,
): Problem | undefined {
  if (listed === undefined) return undefined;
  const lacking = [...published]
    .filter((address) => isAddress(address) && !listed.has(address))
    .sort(compareText);
  const [first] = lacking;
  if (first === undefined) return undefined;
  const count = lacking.length === 1 ? "an address" : `${lacking.length} addresses`;
  const reason = `The list lacks ${count} of this gallery: ${quoteText(first)}${lacking.length === 1 ? "" : " and so on"}.`;
  const hint = "Type: counterchange publish\nThat adds them; keep the file with the content.";
  return report("address/lacking", `${showFolder(contentDir)}/${addressFile}`, { reason, hint }, "warning");
}
