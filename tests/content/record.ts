// Runs the mistakes and writes down what an author reads.
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { analyseGallery } from "../../src/analysis/analysegallery.ts";
import type { Problem } from "../../src/problem/problem.ts";
import { formatProblems } from "../../src/problem/problemtext.ts";
import { openKept } from "../kept.ts";
import {
  type GalleryMistake,
  galleryMistakes,
  rightDrawing,
  rightGallery,
  rightStudy,
  type StudyMistake,
  studyMistakes,
} from "./mistakes.ts";

type Files = Readonly<Record<string, string | Uint8Array | null>>;

/** One mistake with the problems it makes, in folders called `content`. */
export interface Made {
  readonly what: string;
  readonly problems: readonly Problem[];
}

/** Every mistake: those of studies side by side in one gallery, the others each in a gallery of its own. */
export async function makeMistakes(): Promise<readonly Made[]> {
  const files = Object.assign({ "gallery.yaml": rightGallery }, ...studyMistakes.map(filesOf));
  const { problems } = await check(files);
  const made: Made[] = studyMistakes.map(({ slug, what }) => ({
    what,
    problems: problems.filter(
      // The studies are alike, which is no mistake of theirs.
      ({ file, rule }) => `${file}/`.startsWith(`content/studies/${slug}/`) && rule !== "study/likeness",
    ),
  }));
  for (const mistake of galleryMistakes) made.push(await makeGallery(mistake));
  return made;
}

/** The whole record as text: for each mistake a line that says what it is, and the report. */
export function formatMade(made: readonly Made[]): string {
  return made.map(({ what, problems }) => `## ${what}\n\n${formatProblems(problems)}\n`).join("\n");
}

async function makeGallery({ what, files }: GalleryMistake): Promise<Made> {
  const right = {
    "gallery.yaml": rightGallery,
    "studies/ferry/study.md": rightStudy,
    "studies/ferry/original.svg": rightDrawing,
  };
  return { what, problems: (await check({ ...right, ...files })).problems };
}

function filesOf({ slug, typed = {}, drawn = {}, files = {} }: StudyMistake): Files {
  const own: Files = {
    "study.md": type(rightStudy, typed),
    "original.svg": type(rightDrawing, drawn),
    ...files,
  };
  return Object.fromEntries(Object.entries(own).map(([name, text]) => [`studies/${slug}/${name}`, text]));
}

function type(right: string, changes: Readonly<Record<string, string>>): string {
  let text = right;
  for (const [from, to] of Object.entries(changes)) {
    if (!text.includes(from)) throw new Error(`the right file has no ${JSON.stringify(from)}`);
    text = text.replace(from, to);
  }
  return text;
}

/** The problems of a content folder, as they are printed where it is called `content`. */
async function check(files: Files): Promise<{ readonly problems: readonly Problem[] }> {
  const root = await mkdtemp(join(tmpdir(), "counterchange-mistake-"));
  try {
    for (const [path, text] of Object.entries(files)) {
      if (text === null) continue;
      await mkdir(dirname(join(root, path)), { recursive: true });
      await writeFile(join(root, path), text);
    }
    const { problems } = await analyseGallery(root, { drafts: true, store: await openKept() });
    const shown = (text: string): string => text.replaceAll(root, "content");
    return {
      problems: problems.map((problem) => ({
        ...problem,
        file: shown(problem.file),
        ...(problem.hint === undefined ? {} : { hint: shown(problem.hint) }),
      })),
    };
  } finally {
    await rm(root, { recursive: true, force: true });
  }
}

/** Returns the record of all mistakes. */
export async function describeMistakes(): Promise<string> {
  return formatMade(await makeMistakes());
}
