// Runs the examples of the catalogue: the model study with the wrong or the right lines in their place.
import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { analyseGallery } from "../../../src/analysis/analysegallery.ts";
import type { Line } from "../../../src/analysis/jobs/pool.ts";
import { measureStudy } from "../../../src/analysis/jobs/studyjob.ts";
import { loadGallery, readOriginal } from "../../../src/content/folder/loadgallery.ts";
import type { Rule } from "../../../src/content/rules/rule.ts";
import { checkProse } from "../../../src/content/study/prosecheck.ts";
import { rightDrawing, rightGallery, rightPage, rightSeries, rightStudy } from "../mistakes.ts";
import { told } from "./told.ts";

export type Files = Readonly<Record<string, string | Uint8Array>>;
export type Side = "wrong" | "right";

const rightBallots = "ballot,series,study,choice,why\n70ccec313571810a,quay,ferry,redesign,";
const keys = rightStudy.slice(4, rightStudy.lastIndexOf("---"));
const prose = rightStudy.slice(rightStudy.lastIndexOf("---") + 4);

const models: Readonly<Record<string, string>> = {
  "study.md": rightStudy,
  "study.yaml": keys,
  "prose.md": prose,
  "original.svg": rightDrawing,
  "gallery.yaml": rightGallery,
  "series/quay.md": rightSeries,
  "quay.md": rightSeries,
  "pages/about.md": rightPage,
  "about-us.md": rightPage,
  "our-survey.md": rightPage,
  "ballots.csv": rightBallots,
};

/** The part of the model file that an example stands for, where that is not the right side of it. */
const places: Readonly<Record<string, string>> = {
  "study/front-matter-unclosed":
    "tags: [charge, dark on dark]\ncredit: { author: Ines Valcourt, licence: CC0-1.0 }\n---\nThe wheel is dark on dark",
  "study/duplicate-key": "status: open",
  "study/yaml-syntax": "title: A lighter ferry wheel",
  "study/prose-control": "The wheel is dark on dark:",
  "study/prose-invisible": "The wheel is dark on dark:",
  "study/figure": "The wheel is dark on dark: from the quay it is not there.",
  "study/html": "The wheel is dark on dark: from the quay it is not there.",
  "study/decision-missing": "status: open",
  "study/votes-against-status": "status: open",
  "study/option-repeated": "status: open",
  "study/comment": "title: A lighter ferry wheel",
  "study/wrong-tag": "tags: [charge, dark on dark]",
  "study/formerly-slug": "status: open",
  "study/formerly-twice": "status: open",
  "study/formerly-taken": "status: open",
  "study/unknown-step": "status: open",
  "study/step-twice": "status: open",
  "study/name-absent": "status: open",
  "study/wrong-name": "status: open",
  "study/name-twice": "status: open",
  "study/name-contradicts": "status: open",
  "study/mixed-script": "status: open",
  "study/part-alone": "status: open",
  "study/wrong-selector": '  only: "#wheel"',
  "study/prose-front-matter": prose.trimEnd(),
  "page/study": "::study{ferry}",
  "page/drawing": "::study{ferry}",
  "series/study-twice": "studies: [ferry]",
  "series/unknown-study": "studies: [ferry]",
  "series/flag-path": "studies: [ferry]",
  "series/flag-missing": "studies: [ferry]",
  "study/not-a-map": rightGallery.trimEnd(),
  "study/wrong-address": "address: https://flags.example/",
  "svg/text": "</svg>",
  "svg/reference": "</svg>",
  "svg/dangling": "</svg>",
  "svg/duplicate-id": "</svg>",
  "svg/circle": "</svg>",
  "svg/css": "</svg>",
  "svg/selector": "</svg>",
  "svg/unsupported": "</svg>",
  "svg/removed": "</svg>",
  "svg/effect": "</svg>",
  "study/effect": "</svg>",
  "svg/unlike": "</svg>",
  "svg/not-well-formed": "</svg>",
  "svg/number": 'r="5"',
  "study/image": prose.trimEnd(),
  "study/prose-link": prose.trimEnd(),
  "study/link-text": prose.trimEnd(),
};

/** A flag that is not taken for the other. */
const otherDrawing = rightDrawing.replaceAll("#1b2a5c", "#2e8b70");

/** Settings are tried without a study, which would have to be measured; the folder is there. */
const noStudies: Files = { "studies/.DS_Store": "", "flags/harbour.svg": rightDrawing };

/** What stands at such a place stays, in front of it or behind it. */
const kept = new Set(["</svg>"]);

/** The files of one side of an example, below `studies/ferry/` or, for settings and whole folders, from the top. */
export function filesOf(rule: Rule, side: Side): Files {
  const { id, example } = rule;
  if (example.file === "told") return told[id]?.[side] ?? {};
  const text = example[side];
  if (example.file === "folder") return filesIn(text ?? "");
  const isProse = example.file === "prose.md" || example.file === "study.yaml";
  const own = isProse ? { "study.yaml": keys, "prose.md": prose } : { "study.md": rightStudy };
  const study = Object.entries({ ...own, "original.svg": rightDrawing });
  const base: Record<string, string | Uint8Array> = { "gallery.yaml": rightGallery };
  if (/^(?:gallery|words)\.yaml$/.test(example.file)) Object.assign(base, noStudies);
  else for (const [name, model] of study) base[`studies/ferry/${name}`] = model;
  const isOutside =
    /^(?:gallery\.yaml|words\.yaml|addresses\.txt)$/.test(example.file) || example.file.includes("/");
  if (example.file.startsWith("votes/")) base["series/quay.md"] = rightSeries;
  if (/^(?:series|flags|pages)\//.test(example.file)) base["flags/harbour.svg"] = otherDrawing;
  const path = isOutside ? example.file : `studies/ferry/${example.file}`;
  // These examples are whole files.
  base[path] = /^(?:votes\/|flags\/|addresses|words)/.test(example.file) ? (text ?? "") : put(rule, text);
  return base;
}

function put({ id, example: { file, right } }: Rule, text: string | undefined): string {
  const model = models[file] ?? "";
  const isSetting = file === "gallery.yaml";
  const place = places[id] ?? right ?? "";
  if (!model.includes(place)) {
    // A setting that the model does without.
    if (isSetting && /^[a-zA-Z]+: /.test(right ?? "")) return `${model}${text}\n`;
    throw new Error(`the model has no ${JSON.stringify(place)}: ${id}`);
  }
  if (text === undefined) return model;
  return model.replace(place, () => (kept.has(place) ? `${text}\n${place}` : text));
}

function filesIn(list: string): Files {
  const paths = list.split("\n");
  return Object.fromEntries(
    paths.map((path) => [path, models[path.split("/").at(-1) ?? ""] ?? rightDrawing]),
  );
}

/** Writes files into a new folder and returns what `work` says of it. A text that begins with → is a link. */
export async function inFolder<T>(files: Files, work: (root: string) => Promise<T>): Promise<T> {
  const root = await mkdtemp(join(tmpdir(), "counterchange-rule-"));
  try {
    for (const [path, text] of Object.entries(files)) {
      await mkdir(dirname(join(root, path)), { recursive: true });
      if (typeof text === "string" && text.startsWith("→")) await symlink(text.slice(1), join(root, path));
      else await writeFile(join(root, path), text);
    }
    return await work(root);
  } finally {
    await rm(root, { recursive: true, force: true });
  }
}

/** The rules of all problems of a content folder, each once. */
export async function rulesIn(files: Files, line: Line): Promise<readonly string[]> {
  return inFolder(files, async (root) => {
    const { problems } = await analyseGallery(root, { drafts: true, line });
    return [...new Set(problems.map(({ rule }) => rule))];
  });
}

/**
 * The rules of the problems of many studies that lie side by side, by slug. As `analyseGallery` does it, without the ranking,
 * which has no rules of its own, and without a look at which studies are alike, as all of these are: so much so that most
 * are measured once for all, and found in the store.
 */
export async function rulesBySlug(
  files: Files,
  slugs: readonly string[],
  line: Line,
): Promise<ReadonlyMap<string, readonly string[]>> {
  return inFolder(files, async (root) => {
    const { gallery, studies, problems } = await loadGallery(root);
    const all = [...problems];
    for (const study of studies) {
      const bytes = await readOriginal(study);
      const { value, problems: own } = await measureStudy(line, study, bytes, gallery);
      all.push(...own, ...checkProse(study, value?.comparison));
    }
    return new Map(
      slugs.map((slug) => {
        const own = all.filter(({ file }) => `${file}/`.startsWith(`${root}/studies/${slug}/`));
        return [slug, [...new Set(own.map(({ rule }) => rule))]];
      }),
    );
  });
}
