// Floor 10. A gallery that is written to while it is shown: computed anew after each change, and told of as soon as there is
// something new to see. A study with an error stays as it was when it was last good.
import { isDeepStrictEqual } from "node:util";
import { type AnalysedGallery, analyseGallery, type RunOptions } from "../analysis/analysegallery.ts";
import type { Line } from "../analysis/jobs/pool.ts";
import type { GalleryResult, StudyResult } from "../analysis/result.ts";
import { showFolder } from "../content/folder/loadgallery.ts";
import { logoName } from "../content/gallery/logofile.ts";
import { orderPages } from "../content/page/pagefile.ts";
import type { Gallery } from "../content/study/study.ts";
import { hasError, type Problem } from "../problem/problem.ts";

/** What there is to see. `problems` are of the folder as it is, though the studies may be older. */
export interface Shown {
  readonly result: GalleryResult;
  readonly problems: readonly Problem[];
  /** Whether more is on its way: studies to be measured, options, likeness, the survey. */
  readonly isEarly: boolean;
  /** Whether every study there is is there. */
  readonly isWhole: boolean;
}

export interface LiveOptions extends Pick<RunOptions, "drafts"> {
  readonly contentDir: string;
  readonly line: Line;
  /** The slug of the study that somebody looks at. */
  readonly first: () => string | undefined;
  readonly onShow: (shown: Shown) => void;
  /** Called each time that work begins to be handed in. */
  readonly onBegin?: () => void;
  /** Called before anything is computed anew: what waits in line is for nobody. */
  readonly onRestart?: () => void;
}

/**
 * Milliseconds: until the rest is gone on with after something is shown, so that the open page gets the machine to itself;
 * until that at the latest; until an error is believed, as a file may be half saved; until a folder that changed under our
 * eyes is looked at again.
 */
const pace = { breath: 120, patience: 1000, settle: 100, retry: 60 };

/** A change that comes while the one before is computed, in milliseconds: within this time of it, both are one. */
const rest = { least: 8, most: 60 };

export class LiveGallery {
  private readonly options: LiveOptions;
  private shown: Shown | undefined;
  /** Rules of the problems of the whole folder that there were when it was last shown as it is; undefined before. */
  private accepted: ReadonlySet<string> | undefined;
  private running: AbortController | undefined;
  private timer: NodeJS.Timeout | undefined;
  private waitingSince: number | undefined;

  constructor(options: LiveOptions) {
    this.options = options;
  }

  /** Says that something has changed. Changes that follow each other closely are one. */
  touch(): void {
    const now = performance.now();
    this.waitingSince ??= now;
    clearTimeout(this.timer);
    const wait = Math.min(rest.least, Math.max(0, this.waitingSince + rest.most - now));
    this.timer = setTimeout(() => this.refresh(), wait);
  }

  /** Computes the gallery anew. What was still being computed is given up. */
  refresh(): void {
    clearTimeout(this.timer);
    this.waitingSince = undefined;
    this.running?.abort();
    this.options.onRestart?.();
    const running = new AbortController();
    this.running = running;
    void this.compute(running.signal);
  }

  close(): void {
    clearTimeout(this.timer);
    this.running?.abort();
  }

  private async compute(signal: AbortSignal): Promise<void> {
    const { contentDir, line, first, drafts = false } = this.options;
    const early = new Early((gallery, studies, isWhole) => {
      if (!signal.aborted) this.showEarly(gallery, studies, isWhole);
    });
    const isOpen = this.shown?.result.studies.some(({ study }) => study.slug === first()) === true;
    const breath = isOpen ? early.whenTold(pace.patience).then(() => delay(pace.breath)) : Promise.resolve();
    try {
      const result = await analyseGallery(contentDir, {
        drafts,
        line: lineUntil({ line, signal, breath, onBegin: this.options.onBegin }),
        first: first(),
        onMeasured: (study, { gallery, problems }, left) => {
          // Settings that were half saved must not be seen, not even for a moment.
          if (!this.isShaken(problems)) early.add(study, gallery, left, first());
        },
      });
      early.close();
      const isDoubtful = this.isNewError(result.problems) || this.isShaken(result.problems);
      if (!signal.aborted && isDoubtful) await delay(pace.settle);
      if (!signal.aborted) this.show(result);
    } catch {
      early.close();
      this.options.onBegin?.();
      // A file went between two looks at it: the next look finds what is there now.
      await delay(pace.retry);
      if (!signal.aborted) this.refresh();
    }
  }

  private isNewError(problems: readonly Problem[]): boolean {
    const known = new Set((this.shown?.problems ?? []).map((problem) => JSON.stringify(problem)));
    return hasError(problems.filter((problem) => !known.has(JSON.stringify(problem))));
  }

  /** Whether what holds for the whole site cannot be read, though it could before. */
  private isShaken(problems: readonly Problem[]): boolean {
    const { accepted } = this;
    return (
      accepted !== undefined && problems.some((problem) => shakes(problem) && !accepted.has(problem.rule))
    );
  }

  private showEarly(gallery: Gallery, studies: readonly StudyResult[], isWhole: boolean): void {
    const before = this.shown?.result;
    const old = new Map((before?.studies ?? []).map((one) => [one.study.slug, one]));
    const fresh = new Set(studies.map(({ study }) => study.slug));
    const kept = [...old.values()].filter(({ study }) => !fresh.has(study.slug));
    this.tell({
      result: {
        ...before,
        gallery: withLogo(gallery, before?.gallery),
        studies: [...studies.map((one) => withRest(one, old.get(one.study.slug))), ...kept],
        problems: [],
      },
      problems: this.shown?.problems ?? [],
      isEarly: true,
      isWhole: isWhole || this.shown?.isWhole === true,
    });
  }

  private show(result: AnalysedGallery): void {
    const before = this.shown?.isWhole === true ? this.shown.result : undefined;
    const { problems } = result;
    if (before !== undefined && this.isShaken(problems)) {
      this.tell({ result: before, problems, isEarly: false, isWhole: true });
      return;
    }
    const leftOut = new Set(result.leftOut);
    const kept = (before?.studies ?? []).filter(({ study }) => leftOut.has(study.slug));
    this.accepted = new Set(problems.filter(shakes).map(({ rule }) => rule));
    const broken = new Set(problems.flatMap(({ severity, file }) => (severity === "error" ? [file] : [])));
    const old = (before?.pages ?? []).filter(({ file }) => broken.has(file));
    const pages = orderPages([...(result.pages ?? []), ...old]);
    const isLogoBroken = broken.has(`${showFolder(this.options.contentDir)}/${logoName}`);
    const gallery = isLogoBroken ? withLogo(result.gallery, before?.gallery) : result.gallery;
    const drawings = withDrawings(result, before, this.options.contentDir);
    const whole = { ...result, drawings, gallery, studies: [...result.studies, ...kept], pages };
    this.tell({ result: whole, problems, isEarly: false, isWhole: true });
  }

  private tell(shown: Shown): void {
    this.shown = shown;
    this.options.onShow(shown);
  }
}

/** A problem of the folder, or an error of its settings: the whole site would be another one. */
function shakes({ rule, file, severity }: Problem): boolean {
  const isLost = /^study\/(?:content|studies|gallery)-missing$/.test(rule);
  return isLost || (severity === "error" && /\/(?:gallery|theme)\.yaml$/.test(file));
}

/** Gathers what is measured, and tells of it: of the study that somebody looks at, then of all. */
class Early {
  private readonly studies: StudyResult[] = [];
  private readonly tell: (gallery: Gallery, studies: readonly StudyResult[], isWhole: boolean) => void;
  private isClosed = false;
  private onTold = (): void => undefined;

  constructor(tell: (gallery: Gallery, studies: readonly StudyResult[], isWhole: boolean) => void) {
    this.tell = tell;
  }

  add(study: StudyResult | undefined, gallery: Gallery, left: number, first: string | undefined): void {
    if (study !== undefined) this.studies.push(study);
    const isFirst = first !== undefined && study?.study.slug === first;
    if ((left === 0 || isFirst) && !this.isClosed) this.tell(gallery, [...this.studies], left === 0);
    // The first that is measured is the one that somebody looks at, be it good or bad.
    this.onTold();
  }

  /** Resolves once the study that somebody looks at is measured, or after `most` milliseconds. */
  whenTold(most: number): Promise<void> {
    return new Promise((resolve) => {
      this.onTold = resolve;
      setTimeout(resolve, most);
    });
  }

  close(): void {
    this.isClosed = true;
  }
}

/** The drawings that pages show; one of which something is wrong as it was before. */
function withDrawings(
  { drawings = new Map(), problems }: GalleryResult,
  before: GalleryResult | undefined,
  contentDir: string,
): NonNullable<GalleryResult["drawings"]> {
  const wrong = new Set(problems.map(({ file }) => file));
  const old = [...(before?.drawings ?? [])].filter(([path]) =>
    wrong.has(`${showFolder(contentDir)}/${path}`),
  );
  return new Map([...old, ...drawings]);
}

/** The settings with the logo that was shown before. */
function withLogo(gallery: Gallery, before: Gallery | undefined): Gallery {
  return before?.logo === undefined ? gallery : { ...gallery, logo: before.logo };
}

/** What was ranked and compared before still holds for a study whose figures are the same. */
function withRest(study: StudyResult, before: StudyResult | undefined): StudyResult {
  if (before === undefined || !isDeepStrictEqual(study.comparison, before.comparison)) return study;
  const { ranking, likeness } = before;
  return {
    ...study,
    ...(ranking === undefined ? {} : { ranking }),
    ...(likeness === undefined ? {} : { likeness }),
  };
}

/** Hands work on until nobody waits for it any more: the first piece at once, all others after `breath`. */
function lineUntil({
  line,
  signal,
  breath,
  onBegin,
}: {
  readonly line: Line;
  readonly signal: AbortSignal;
  readonly breath: Promise<void>;
  readonly onBegin: (() => void) | undefined;
}): Line {
  let given = 0;
  return {
    run: async (kind, file, input) => {
      given += 1;
      if (given === 1) onBegin?.();
      if (given > 1) await breath;
      if (signal.aborted) throw new Error(`${file}: nobody waits for it any more`);
      return line.run(kind, file, input);
    },
  };
}

function delay(milliseconds: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, milliseconds);
  });
}
