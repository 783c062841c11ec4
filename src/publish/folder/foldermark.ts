// Floor 9. Whose hidden folder this is: one that came with a checkout is neither followed nor emptied, and nothing of it is
// published. The mark is made with the user's secret for this folder alone, so that a copy of it counts nowhere else.
import { setTimeout as sleep } from "node:timers/promises";
import { signText } from "../../analysis/store/signature.ts";
import { statOf } from "../../content/disk/pathkind.ts";
import { kindOf, readFolder, readRegular } from "../../content/disk/readfile.ts";

/** It is nobody's work: neither are its files for a repository around it. The mark stands in a comment. */
export const markFile = ".gitignore";

/** Returns what is written into `folder`, which is there. */
export async function formatMark(folder: string, secret: Uint8Array): Promise<string> {
  const found = await statOf(folder);
  return `*\n# ${signText(secret, `hidden folder ${found?.ino}`)}\n`;
}

/** `mark`: there is one, and it is not the right one, as where another build is writing it. */
export type Owner = "nobody" | "ours" | "mark" | "others";

/** Returns whose `folder` is: nobody's where nothing is there, or nothing in it. */
export async function findOwner(folder: string, secret: Uint8Array): Promise<Owner> {
  for (let tries = 3; ; tries -= 1) {
    const owner = await look(folder, secret);
    if (owner !== "mark" || tries === 1) return owner;
    await sleep(50);
  }
}

async function look(folder: string, secret: Uint8Array): Promise<Owner> {
  const kind = await kindOf(folder);
  if (kind !== "folder") return kind === undefined ? "nobody" : "others";
  const entries = await readFolder(folder);
  // It may have been cleared away in this moment.
  if ("kind" in entries) return entries.kind === "missing" ? "nobody" : "others";
  if (entries.length === 0) return "nobody";
  const found = await readRegular(folder, markFile, 1024);
  if ("bytes" in found) {
    const wanted = await formatMark(folder, secret);
    if (Buffer.from(found.bytes).toString("utf8") === wanted) return "ours";
  }
  return entries.every(({ name, kind: inner }) => name === markFile && inner === "file") ? "mark" : "others";
}
