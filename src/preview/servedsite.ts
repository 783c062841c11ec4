// Floor 10. The site that is served: content and templates are watched, and each change makes another version of it.
import { createHash } from "node:crypto";
import path from "node:path";
import type { Line } from "../analysis/jobs/pool.ts";
import type { Store } from "../analysis/store/resultstore.ts";
import { listOwn, readOwn } from "../content/disk/packagefile.ts";
import { addressFile } from "../content/folder/addressfile.ts";
import { isEditorFile } from "../content/folder/editorfile.ts";
import { type Problem, report } from "../problem/problem.ts";
import { LiveGallery, type Shown } from "./livegallery.ts";
import { type Shelf, Version } from "./siteversion.ts";
import { loadTemplates, type Templates } from "./templates.ts";
import { Watcher } from "./watchfolder.ts";

export interface SiteOptions {
  readonly contentDir: string;
  readonly templatesDir: string;
  readonly drafts?: boolean;
  readonly line: Line;
  /** Where pictures are kept. */
  readonly store?: Store | undefined;
  /** Called before anything is computed anew: what waits in line is for nobody. */
  readonly onRestart?: () => void;
  /** Called with each new version; `problems` are those of the folder as it is, undefined while more is on its way. */
  readonly onVersion: (version: Version, problems: readonly Problem[] | undefined) => void;
}

export class ServedSite {
  private readonly options: SiteOptions;
  private readonly gallery: LiveGallery;
  private readonly watchers: readonly Watcher[];
  private readonly shelf: Shelf = new Map();
  private readonly waiting: (() => void)[] = [];
  private templates: Templates | undefined;
  private edition = "";
  private pagesDigest = "";
  private templateProblems: readonly Problem[] = [];
  private shown: Shown | undefined;
  private version: Version | undefined;
  private reading: Promise<void> | undefined;
  private begin = (): void => undefined;
  private isStale = false;
  /** The page that was asked for last. */
  private lastPage = "";

  constructor(options: SiteOptions) {
    this.options = options;
    this.gallery = new LiveGallery({
      contentDir: options.contentDir,
      drafts: options.drafts ?? false,
      line: options.line,
      first: () => /^studies\/([^/]+)\//.exec(this.lastPage)?.[1],
      onBegin: () => this.begin(),
      onShow: (shown) => {
        this.begin();
        this.shown = shown;
        this.publish();
      },
      ...(options.onRestart === undefined ? {} : { onRestart: options.onRestart }),
    });
    // Nothing of a name that begins with a dot or an underline is content.
    // What publishing lists there changes no page that is shown.
    const isIgnored = (name: string): boolean =>
      /^[._]|^node_modules$/.test(name) || name === addressFile || isEditorFile(name);
    this.watchers = [
      new Watcher(options.contentDir, { isIgnored, onChange: () => this.gallery.touch() }),
      new Watcher(options.templatesDir, { isIgnored, onChange: () => void this.readTemplates() }),
    ];
  }

  /** Begins to watch and to compute. */
  async start(): Promise<void> {
    // Watched first, so that no change falls between.
    await Promise.all(this.watchers.map((watcher) => watcher.scan()));
    const isBegun = new Promise<void>((resolve) => {
      this.begin = resolve;
    });
    this.gallery.refresh();
    // Templates are read while the child processes work.
    await isBegun;
    await this.readTemplates();
  }

  /** Returns the version that has the page at `path`, as soon as there is one that has it or has all pages. */
  async askFor(pagePath: string): Promise<Version> {
    if (pagePath.endsWith(".html")) this.lastPage = pagePath;
    for (;;) {
      if (this.version !== undefined && (this.shown?.isWhole === true || this.version.hasPage(pagePath)))
        return this.version;
      await new Promise<void>((resolve) => this.waiting.push(resolve));
    }
  }

  close(): void {
    for (const watcher of this.watchers) watcher.close();
    this.gallery.close();
  }

  private publish(): void {
    const { shown, templates, edition, shelf } = this;
    if (shown === undefined || templates === undefined) return;
    const { templatesDir, line, store } = this.options;
    const means = { line, store };
    try {
      this.version = new Version({ result: shown.result, templates, templatesDir, edition, shelf, means });
      if (this.templateProblems[0]?.rule === "study/fault") this.templateProblems = [];
    } catch (error) {
      this.templateProblems = [describeFailure("study/fault", templatesDir, error)];
    }
    if (this.version === undefined) return;
    for (const resolve of this.waiting.splice(0)) resolve();
    const problems = [...this.templateProblems, ...shown.problems];
    this.options.onVersion(this.version, shown.isEarly ? undefined : problems);
  }

  /** Reads what has changed of the templates. One that cannot be read leaves those before in place. */
  private readTemplates(): Promise<void> {
    this.isStale = true;
    this.reading ??= (async () => {
      while (this.isStale) {
        this.isStale = false;
        await this.readOnce();
      }
    })().finally(() => {
      this.reading = undefined;
    });
    return this.reading;
  }

  private async readOnce(): Promise<void> {
    const { templatesDir } = this.options;
    try {
      const edition = await digestFolders(templatesDir, ["client", "styles"]);
      const pagesDigest = await digestFolders(templatesDir, ["pages", "parts", "figures"]);
      const isSame = pagesDigest === this.pagesDigest && this.templateProblems.length === 0;
      if (isSame && edition === this.edition) return;
      const templates = isSame ? this.templates : await loadTemplates(templatesDir);
      [this.templates, this.edition, this.pagesDigest] = [templates, edition, pagesDigest];
      this.templateProblems = [];
    } catch (error) {
      this.templateProblems = [describeFailure("site/template", templatesDir, error)];
    }
    this.publish();
  }
}

/** A digest of all files in `folders` of `templatesDir`. */
async function digestFolders(templatesDir: string, folders: readonly string[]): Promise<string> {
  const hash = createHash("sha256");
  for (const folder of folders) {
    const names = (await listOwn(path.join(templatesDir, folder))).filter((name) => !isEditorFile(name));
    const texts = await Promise.all(names.map((name) => readOwn(path.join(templatesDir, folder, name))));
    for (const [index, text] of texts.entries())
      hash.update(`${folder}/${names[index]}\n${text.length}\n${text.toString("utf8")}`);
  }
  return hash.digest("hex");
}

function describeFailure(rule: string, file: string, error: unknown): Problem {
  const reason = error instanceof Error ? error.message : String(error);
  return report(rule, path.relative(process.cwd(), file) || file, {
    reason: `The templates cannot be used as they are: ${reason.split("\n", 8).join(" ")}`,
    hint: "Until this is mended, pages are made by the templates as they were before.",
  });
}
