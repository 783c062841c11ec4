// Floor 11. The folder for files of the moment, tried before any work begins that needs it.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describeRefusal, findRefusal } from "../content/disk/machinelimit.ts";
import { UsageError } from "./command.ts";

/** The fonts that pictures are set in have some 700 KB, in bytes. */
const needed = 1024 * 1024;

/** Throws UsageError where nothing can be written there, or there is no room. */
export async function checkTemporary(): Promise<void> {
  let folder: string | undefined;
  try {
    folder = await mkdtemp(join(tmpdir(), "counterchange-try-"));
    await writeFile(join(folder, "try"), new Uint8Array(needed));
  } catch (error) {
    const refusal = findRefusal(error);
    if (refusal === undefined) throw error;
    const { reason, hint } = describeRefusal({ path: tmpdir(), ...refusal });
    throw new UsageError(reason, hint);
  } finally {
    if (folder !== undefined) await rm(folder, { recursive: true, force: true }).catch(() => undefined);
  }
}
