// Floor 5. The folder answers/ of a study: what others said, a file each. A bad one is left out, and the study stays.
import type { z } from "zod";
import { compareText, type Outcome, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { describeFolderFailure } from "../disk/filefailure.ts";
import { readFolder, readRegular } from "../disk/readfile.ts";
import { isEditorFile } from "../folder/editorfile.ts";
import { keepWithin } from "../folder/gallerybudget.ts";
import { leftovers, linkProblem, listDevice } from "../folder/listing.ts";
import { describeTextFailure, textFileBytes } from "../text/textsource.ts";
import { answerGuide, answerSchema } from "./answerkey.ts";
import { checkInvisible } from "./invisiblevalue.ts";
import { checkScripts } from "./namesense.ts";
import { isSlug, proposeSlug } from "./slug.ts";
import type { StudyAnswer } from "./study.ts";
import { type MarkdownKind, readMarkdown } from "./studyfile.ts";
import { checkAnswer } from "./studyrule.ts";

const answerKind: MarkdownKind<z.infer<typeof answerSchema>> = {
  schema: answerSchema,
  guide: answerGuide,
  begins: "by: Dunstan Pelleray\nsays: agree",
  check: (raw) => [...checkInvisible(raw), ...checkScripts(raw), ...checkAnswer(raw)],
};

/**
 * Reads every `answers/<name>.md` of the study `slug` in the content folder `root`, shown as `shown`, sorted by name.
 *
 * Problems: those of `keepWithin` and `parseAnswerFile`, of files and folders as in a study; `study/answer-name`.
 */
export async function loadAnswers(
  root: string,
  shown: string,
  slug: string,
): Promise<{ readonly value: readonly StudyAnswer[]; readonly problems: readonly Problem[] }> {
  const inner = `studies/${slug}/answers`;
  const folder = `${shown}/${inner}`;
  const entries = await readFolder(root, inner);
  if ("kind" in entries) {
    if (entries.kind === "missing") return { value: [], problems: [] };
    return { value: [], problems: [describeFolderFailure(folder, entries)] };
  }
  const within = keepWithin(folder, entries, "files");
  const problems: Problem[] = [...within.problems];
  const found: StudyAnswer[] = [];
  for (const { name, kind } of [...within.entries].sort((a, b) => compareText(a.name, b.name))) {
    if (leftovers.includes(name) || isEditorFile(name)) continue;
    const file = `${folder}/${name}`;
    const key = name.replace(/\.md$/, "");
    const [device] = listDevice("study/answer-name", file, name);
    if (kind === "link") problems.push(linkProblem(file));
    else if (device !== undefined) problems.push(device);
    else if (!name.endsWith(".md") || !isSlug(key)) problems.push(wrongName(file, name));
    else {
      const read = await readRegular(root, `${inner}/${name}`, textFileBytes);
      const parsed =
        "bytes" in read
          ? parseAnswerFile(key, file, read.bytes)
          : { value: undefined, problems: [describeTextFailure(file, read)] };
      problems.push(...parsed.problems);
      if (parsed.value) found.push(parsed.value);
    }
  }
  return { value: found, problems };
}

/**
 * Reads one answer. The value is undefined as soon as there is one error; warnings leave it.
 *
 * Problems: those of `readMarkdown`, `checkInvisible`, `checkScripts` and `checkAnswer`.
 */
export function parseAnswerFile(key: string, file: string, bytes: Uint8Array): Outcome<StudyAnswer> {
  const { value, problems } = readMarkdown(file, bytes, answerKind);
  if (value === undefined) return { value, problems };
  const { fields, prose, placeOf } = value;
  return { value: { key, ...fields, text: prose.body, at: { file, ...placeOf("edge") } }, problems };
}

function wrongName(file: string, name: string): Problem {
  const slug = proposeSlug(name.replace(/\.[a-z0-9]{1,8}$/i, ""));
  return report("study/answer-name", file, {
    reason: `${quoteText(name)} is no name of an answer: small letters, digits and single hyphens, with .md behind.`,
    hint: `Rename it to: ${slug ?? "dunstan-pelleray"}.md`,
  });
}
