// Floor 9. All calls by which publishing changes the disk: so thin that a test can put one that fails in its place.
import { chmod, mkdir, open, readFile, rename, rm, symlink } from "node:fs/promises";
import { exchangeFolders } from "./exchangecall.ts";

/** Paths are absolute. Every method rejects with the error of the system, which has a `code`. */
export interface Disk {
  /** Makes one folder that everyone may read, whatever the umask. */
  makeFolder(folder: string): Promise<void>;
  /** Writes a file that is not there yet and that everyone may read, whatever the umask. Text is UTF-8. */
  write(file: string, bytes: string | Uint8Array): Promise<void>;
  read(file: string): Promise<Buffer>;
  /** Resolves once a file, or the list of names in a folder, would outlast a power cut. */
  flush(path: string): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  /** Two folders get each other's name in one step. Rejects with the code ENOTSUP where that cannot be done. */
  exchange(a: string, b: string): Promise<void>;
  /** Makes a symbolic link at `at` whose text is `to`. */
  link(to: string, at: string): Promise<void>;
  /** Removes a file, a link, or a folder with all that is in it; what is not there is no fault. */
  remove(path: string): Promise<void>;
}

/** The published folder is meant to be read: by a web server under another name, by whoever copies it. */
const fileMode = 0o644;
const folderMode = 0o755;

export const disk: Disk = {
  async makeFolder(folder) {
    await mkdir(folder, { mode: folderMode });
    await chmod(folder, folderMode);
  },
  async write(file, bytes) {
    const handle = await open(file, "wx", fileMode);
    try {
      await handle.writeFile(bytes);
      await handle.chmod(fileMode);
    } finally {
      await handle.close();
    }
  },
  read: (file) => readFile(file),
  async flush(path) {
    // Windows opens no folder as a file, and keeps its names safe by itself.
    const handle = await open(path, "r").catch((error: NodeJS.ErrnoException) => {
      if (process.platform === "win32" && error.code !== "ENOENT") return undefined;
      throw error;
    });
    try {
      await handle?.sync().catch((error: NodeJS.ErrnoException) => {
        // Some file systems cannot do it for a folder or at all; nothing is lost by that until the power goes.
        if (!/^(?:EINVAL|ENOTSUP|ENOSYS|EPERM)$/.test(error.code ?? "")) throw error;
      });
    } finally {
      await handle?.close();
    }
  },
  rename: (from, to) => rename(from, to),
  exchange: exchangeFolders,
  link: (to, at) => symlink(to, at, "dir"),
  remove: (path) => rm(path, { recursive: true, force: true }),
};
