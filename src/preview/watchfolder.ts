// Floor 10. Hears that something changed in a folder, whatever way an editor saves: what it was, nobody needs to know.
import { type FSWatcher, watch } from "node:fs";
import path from "node:path";
import { readFolder } from "../content/disk/readfile.ts";
import { manifestName } from "../publish/folder/manifest.ts";

export interface WatchOptions {
  /** Called after each change, soon and often. */
  readonly onChange: () => void;
  /** Whether a file or folder of this name is passed over. */
  readonly isIgnored: (name: string) => boolean;
}

/** How often a folder that is not there is looked for, in milliseconds. */
const patience = 500;

/** Folders beyond this number are not watched: systems have a limit. */
const mostFolders = 4000;

/**
 * Watches `folder` and all folders in it, those that come later too; if it is deleted, until it is there again.
 *
 * Each folder has a watcher of its own: the recursive one of Node 20 misses files on Linux that an editor replaces.
 */
export class Watcher {
  private readonly folder: string;
  private readonly options: WatchOptions;
  private readonly watchers = new Map<string, FSWatcher>();
  private isClosed = false;
  private scanning: Promise<void> | undefined;
  private isStale = false;
  private timer: NodeJS.Timeout | undefined;

  constructor(folder: string, options: WatchOptions) {
    this.folder = path.resolve(folder);
    this.options = options;
  }

  /** Resolves once every folder that is there is watched. */
  scan(): Promise<void> {
    if (this.scanning !== undefined) {
      this.isStale = true;
      return this.scanning;
    }
    this.scanning = this.scanAll().finally(() => {
      this.scanning = undefined;
    });
    return this.scanning;
  }

  close(): void {
    this.isClosed = true;
    clearTimeout(this.timer);
    for (const watcher of this.watchers.values()) watcher.close();
    this.watchers.clear();
  }

  private async scanAll(): Promise<void> {
    do {
      this.isStale = false;
      const found = new Set<string>();
      await this.collect(this.folder, found);
      for (const folder of this.watchers.keys()) if (!found.has(folder)) this.leave(folder);
      for (const folder of found) this.look(folder);
    } while (this.isStale);
    if (this.isClosed) return;
    clearTimeout(this.timer);
    if (this.watchers.size === 0) this.timer = setTimeout(() => this.lookForFolder(), patience);
  }

  private async collect(folder: string, found: Set<string>): Promise<void> {
    const entries = await readFolder(folder);
    if ("kind" in entries || found.size >= mostFolders) return;
    // A site that was published in there is no content.
    if (folder !== this.folder && entries.some(({ name }) => name === manifestName)) return;
    found.add(folder);
    for (const { name, kind } of entries)
      if (kind === "folder" && !this.options.isIgnored(name))
        await this.collect(path.join(folder, name), found);
  }

  private look(folder: string): void {
    if (this.watchers.has(folder) || this.isClosed) return;
    try {
      const watcher = watch(folder, (_, name) => this.hear(folder, name));
      watcher.on("error", () => this.leave(folder));
      this.watchers.set(folder, watcher);
    } catch {
      // It went a moment ago, or the system has no more watchers to give.
    }
  }

  private leave(folder: string): void {
    this.watchers.get(folder)?.close();
    this.watchers.delete(folder);
  }

  private hear(folder: string, name: string | null): void {
    if (name !== null && this.options.isIgnored(name)) return;
    // A folder that is itself deleted reports its own name, and hears nothing more.
    if (name === path.basename(folder)) this.leave(folder);
    this.options.onChange();
    void this.scan();
  }

  /** A folder that is back is new all through. */
  private async lookForFolder(): Promise<void> {
    const found = await readFolder(this.folder);
    if (this.isClosed) return;
    if (!("kind" in found)) this.options.onChange();
    await this.scan();
  }
}
