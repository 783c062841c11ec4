// Test support. Whether a published folder is whole, by reading it with nothing of the code that wrote it.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

export interface Listed {
  readonly path: string;
  readonly size: number;
  readonly sha256: string;
}

/** Reads the manifest in `folder`; throws where there is none. */
export function readListed(folder: string): { readonly text: string; readonly files: readonly Listed[] } {
  const text = readFileSync(path.join(folder, ".counterchange-site"), "utf8");
  const { files }: { files: readonly Listed[] } = JSON.parse(text);
  return { text, files };
}

export function digest(bytes: string | Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/**
 * Reads every file of the site in `folder` and compares it with the manifest; returns the digest of the manifest, which
 * stands for the whole. Throws with the first file that is missing, differs, or is not listed.
 */
export function checkWhole(folder: string): string {
  const { text, files } = readListed(folder);
  for (const { path: file, size, sha256 } of files) {
    const bytes = readFileSync(path.join(folder, file));
    if (bytes.length !== size || digest(bytes) !== sha256) throw new Error(`${file} is not as listed`);
  }
  const listed = new Set([".counterchange-site", ...files.map((file) => file.path)]);
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const file = path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join("/");
    if (!entry.isDirectory() && !listed.has(file)) throw new Error(`${file} is not listed`);
  }
  return digest(text);
}
