// Floor 10. The site as it stands at one moment, held in memory: each file is made when somebody asks for it, and pictures are
// kept from one moment to the next for as long as what they show is the same.

import { createHash } from "node:crypto";
import type { GalleryResult, StudyResult } from "../analysis/result.ts";
import { fingerprint } from "../analysis/store/fingerprint.ts";
import { listAssets } from "../publish/assets.ts";
import { fileOf, once, type SiteFile } from "../publish/folder/sitefile.ts";
import { drawFiles, type Means } from "../publish/pictures/drawfiles.ts";
import { listDrawn, listShared } from "../publish/pictures/drawingrecipe.ts";
import { linkFile } from "../views/linkview.ts";
import { presentSite, type SiteView } from "../views/siteview.ts";
import { createSay } from "../words/say.ts";
import type { TemplatePage, Templates } from "./templates.ts";

/** Made pictures by what they show. Shared by versions that follow each other. */
export type Shelf = Map<string, Promise<string | Uint8Array>>;

/** Most pictures on the shelf: some ten studies' worth. */
const mostKept = 800;

/** What a version is made of. `edition` names the styles and scripts of the moment. */
export interface VersionParts {
  readonly result: GalleryResult;
  readonly templates: Templates;
  readonly templatesDir: string;
  readonly edition: string;
  readonly shelf: Shelf;
  readonly means: Means;
}

export class Version {
  private readonly parts: VersionParts;
  private readonly pages: ReadonlyMap<string, TemplatePage>;
  private readonly texts = new Map<string, string>();
  private readonly marks = new Map<string, string>();
  private readonly view: SiteView;
  private readonly assets: ReadonlyMap<string, SiteFile>;
  private readonly listBeside: () => Promise<ReadonlyMap<string, SiteFile>>;

  constructor(parts: VersionParts) {
    this.parts = parts;
    const { language, words } = parts.result.gallery;
    this.view = presentSite(parts.result, "/");
    this.pages = indexByPath(parts.templates.listPages(this.view, createSay(language, words)));
    this.assets = indexByPath(listAssets(parts.templatesDir, parts.result.gallery.theme));
    this.listBeside = once(async () => {
      // Loaded when the first picture is asked for: pages need none of it.
      const [{ listFilesBeside }, { listStudyFiles }] = await Promise.all([
        import("../publish/listfiles.ts"),
        import("../publish/feeds/machinefiles.ts"),
      ]);
      const { gallery, studies } = parts.result;
      return indexByPath([
        ...(await listFilesBeside(parts.result, this.view)),
        ...studies.flatMap((study) => listStudyFiles(study, gallery)),
        ...this.listDrawn(),
      ]);
    });
  }

  /** What is drawn, each file by itself when it is asked for. */
  private listDrawn(): readonly SiteFile[] {
    const { result, means } = this.parts;
    const { gallery, studies, survey = { entries: [] } } = result;
    const shared = listShared(this.view.survey.picture, survey, studies);
    const drawn = [
      { subject: { file: "flags", drawing: "" }, files: shared },
      ...studies.map((study) => ({
        subject: { file: study.study.file, drawing: study.drawings.original },
        files: listDrawn(study, gallery),
      })),
    ];
    return drawn.flatMap(({ subject, files }) =>
      files.map((file) =>
        fileOf(file.path, async () => {
          const { value, problems } = await drawFiles(means, subject, [file]);
          if (value?.[0] === undefined) throw new Error(problems.map(({ reason }) => reason).join(" "));
          return value[0].bytes;
        }),
      ),
    );
  }

  countStudies(): number {
    return this.parts.result.studies.length;
  }

  /** Whether there is a page at `path`, `studies/a-wheel/index.html`. */
  hasPage(path: string): boolean {
    return this.pages.has(path);
  }

  /** Returns the HTML of the page at `path`, or undefined. Throws what its template throws. */
  renderPage(path: string): string | undefined {
    const known = this.texts.get(path);
    if (known !== undefined) return known;
    const text = this.pages.get(path)?.render();
    if (text !== undefined) this.texts.set(path, text);
    return text;
  }

  /** Returns what a browser that shows the page at `path` would see change: its text, its drawings, styles and scripts. */
  markPage(path: string): string {
    const known = this.marks.get(path);
    if (known !== undefined) return known;
    const { edition, result } = this.parts;
    const { logo, theme = {} } = result.gallery;
    const hash = createHash("sha256")
      .update(edition)
      .update(`${logo?.drawing}${JSON.stringify(theme)}`);
    try {
      hash.update(this.renderPage(path) ?? "no such page");
    } catch (error) {
      hash.update(String(error));
    }
    const slug = slugOf(path);
    if (slug === undefined) for (const { drawing } of result.drawings?.values() ?? []) hash.update(drawing);
    for (const { study, drawings } of result.studies)
      if (slug === undefined || slug === study.slug) hash.update(drawings.original).update(drawings.redesign);
    const mark = hash.digest("hex").slice(0, 16);
    // What is not there is asked for under any number of names.
    if (this.pages.has(path)) this.marks.set(path, mark);
    return mark;
  }

  /** Returns the bytes or the text of a file that is no page, or undefined. */
  async make(path: string): Promise<string | Uint8Array | undefined> {
    const file = this.assets.get(path) ?? (await this.listBeside()).get(path);
    if (file === undefined) return undefined;
    const slug = slugOf(path);
    const study = this.parts.result.studies.find((one) => one.study.slug === slug);
    // A link picture has words on it; whoever follows a link asks for it, never the page.
    const isDrawn = /\.(?:png|webp)$/.test(path) && !path.endsWith(`/${linkFile}`);
    return study === undefined || !isDrawn ? file.make() : this.makeOnce(file, study);
  }

  /** Lists every file, pages too. */
  async listPaths(): Promise<readonly string[]> {
    return [...this.pages.keys(), ...(await this.listBeside()).keys()];
  }

  private makeOnce(file: SiteFile, study: StudyResult): Promise<string | Uint8Array> {
    const { shelf } = this.parts;
    const key = `${file.path} ${nameLook(study)}`;
    const known = shelf.get(key);
    if (known !== undefined) return known;
    const made = file.make();
    shelf.set(key, made);
    made.catch(() => shelf.delete(key));
    for (const oldest of shelf.keys()) {
      if (shelf.size <= mostKept) break;
      shelf.delete(oldest);
    }
    return made;
  }
}

const looks = new WeakMap<StudyResult, string>();

/** All that pictures without words show of a study. */
function nameLook(result: StudyResult): string {
  const { original, redesign } = result.drawings;
  const look = looks.get(result) ?? fingerprint([original, redesign, result.comparison.before.proportions]);
  looks.set(result, look);
  return look;
}

function slugOf(path: string): string | undefined {
  return /^studies\/([^/]+)\//.exec(path)?.[1];
}

function indexByPath<T extends { readonly path: string }>(files: readonly T[]): ReadonlyMap<string, T> {
  return new Map(files.map((file) => [file.path, file]));
}
