// Floor 5. The bytes of a study.md, or of study.yaml and prose.md → a checked study, or every problem they have.

import { join } from "node:path";
import type { z } from "zod";
import { parseColour } from "../../colour/colourtext.ts";
import { replaceInText } from "../../problem/invisible.ts";
import { locate } from "../../problem/locate.ts";
import {
  type Advice,
  hasError,
  type Located,
  type Outcome,
  type Place,
  type Problem,
} from "../../problem/problem.ts";
import { checkFormerly } from "../folder/formerly.ts";
import { cleanText, control, nameCharacter, stacked, typeAgain } from "../text/cleantext.ts";
import { readSource, reportIn, type Source } from "../text/textsource.ts";
import { type Finding, type KeyGuide, placeFindings } from "../yaml/finding.ts";
import { type FrontMatter, joinFiles, splitFrontMatter } from "../yaml/frontmatter.ts";
import { parseYaml, type YamlData } from "../yaml/readyaml.ts";
import { describeIssues } from "../yaml/schemaissue.ts";
import { parseOriginal } from "./original.ts";
import { checkProse } from "./prosecheck.ts";
import type { Focus, Study, StudyAnswer } from "./study.ts";
import { studyExamples, studySchema } from "./studykey.ts";
import { checkStudy } from "./studyrule.ts";

/** Where a study comes from: study.md or study.yaml. Folders are absolute paths. */
export interface StudyOrigin {
  readonly slug: string;
  /** Paths as shown in messages, with `/`. */
  readonly file: string;
  readonly shownFlagsFolder: string;
  readonly studyFolder: string;
  readonly flagsFolder: string;
}

/** The bytes of a prose.md, with its path as shown in messages. */
export interface ProseFile {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/**
 * Reads one study file, with the prose beside it where it has a file of its own. `palette` holds the names that `with:` may use.
 *
 * The value is undefined as soon as there is one error; warnings leave it. Problems: those of `readSource`,
 * `splitFrontMatter` or `joinFiles` and `parseYaml`, and `study/unknown-key`, `study/missing-key`, `study/no-value`,
 * `study/wrong-type`, `study/too-long`, `study/unknown-word`, `study/wrong-colour`, `study/wrong-date`,
 * `study/wrong-tag`, `study/wrong-author`, `study/wrong-name`, `study/name-twice`, `study/part-alone`, `study/focus`, `study/unknown-step`, `study/step-twice`, `study/decision-missing`, `study/decision-twice`, `study/decision-open`, `study/votes-against-status`, `study/original-path`,
 * `study/prose-control`, `study/prose-invisible`, `study/invisible`.
 */
export function parseStudy(
  origin: StudyOrigin,
  bytes: Uint8Array,
  palette: ReadonlyMap<string, string>,
  prose?: ProseFile,
): Outcome<Study> {
  const { value: source, problems } = readSource(origin.file, bytes);
  if (!source) return { value: undefined, problems };
  const front = readFront(source, prose);
  if (!front.value) return { value: undefined, problems: front.problems };
  const body = cleanBody(front.value.bodySource, front.value);
  const yaml = parseYaml(source, front.value.yaml);
  if (!yaml.value) return { value: undefined, problems: [...yaml.problems, ...body.problems] };
  const checked = checkFields(source, front.value, yaml.value, palette);
  const all = [...yaml.problems, ...checked.problems, ...body.problems];
  if (!checked.value || hasError(all)) return { value: undefined, problems: all };

  const { original, focus, names, decision, decided, answers, ...fields } = checked.value;
  const reference = parseOriginal(original);
  if ("reason" in reference) return { value: undefined, problems: all };
  const inFlags = reference.folder === "flags";
  const shownFolder = inFlags ? origin.shownFlagsFolder : origin.file.replace(/\/?study\.(?:md|yaml)$/, "");
  const places = placesOf(source, yaml.value);
  const study: Study = {
    slug: origin.slug,
    file: origin.file,
    originalFile: `${shownFolder}/${reference.name}`,
    originalPath: join(inFlags ? origin.flagsFolder : origin.studyFolder, reference.name),
    original,
    ...fields,
    ...(names === undefined ? {} : { names: readNames(names) }),
    ...(decided ? { decision: decided } : decision === undefined ? {} : { decision: { why: decision } }),
    ...(focus === undefined ? {} : { focus: focusOf(focus) }),
    ...(prose === undefined ? {} : { proseFile: prose.file }),
    ...(answers === undefined ? {} : { answers: placeAnswers(answers, origin.file, places) }),
    body: body.value ?? "",
    bodyLine: front.value.bodyLine,
    places,
  };
  return { value: study, problems: all };
}

/** Keys above prose, in one Markdown file, that are no study: their schema, their examples, and rules that no type can say. */
export interface MarkdownKind<T> {
  readonly schema: z.ZodType<T>;
  readonly guide: KeyGuide;
  readonly check: (raw: YamlData["value"]) => readonly Finding[];
  /** Whether its prose may show studies; nothing unless told otherwise. */
  readonly shows?: "none" | "studies";
  /** Lines that may begin it; those of a study unless told otherwise. */
  readonly begins?: string;
}

/** Such a file, checked. `placeOf` says where a value stands, by its dotted path. */
export interface MarkdownFile<T> {
  readonly fields: T;
  readonly prose: { readonly body: string; readonly bodyLine: number; readonly file: string };
  placeOf(path: string): Located | undefined;
}

/**
 * Reads such a file. The value is undefined as soon as there is one error; warnings leave it.
 *
 * Problems: those of `readSource`, `splitFrontMatter`, `parseYaml`, `describeIssues`, `cleanBody`, of `kind.check`, and of
 * `checkProse`, which may ask for no figure, and for a study only where `kind` shows them.
 */
export function readMarkdown<T>(
  file: string,
  bytes: Uint8Array,
  { schema, guide, check, shows = "none", begins }: MarkdownKind<T>,
): Outcome<MarkdownFile<T>> {
  const { value: source, problems } = readSource(file, bytes);
  if (!source) return { value: undefined, problems };
  const front = splitFrontMatter(source, begins, guide.whole.toLowerCase());
  if (!front.value) return { value: undefined, problems: front.problems };
  const { bodySource, bodyLine, closingLine } = front.value;
  const body = cleanBody(bodySource, front.value);
  const yaml = parseYaml(source, front.value.yaml);
  if (!yaml.value) return { value: undefined, problems: [...yaml.problems, ...body.problems] };
  const data = yaml.value;
  const checked = schema.safeParse(data.value);
  const issues = checked.success ? [] : describeIssues(checked.error.issues, data, guide);
  const placed = placeFindings(source, data, closingLine, [...issues, ...check(data.value)]);
  const prose = { body: body.value ?? "", bodyLine, file };
  const all: Problem[] = [...yaml.problems, ...placed, ...body.problems, ...checkProse(prose, shows)];
  if (!checked.success || hasError(all)) return { value: undefined, problems: all };
  const placeOf = (path: string) => {
    const place = data.places.get(path);
    return place && locate(source.lines[place.line - 1] ?? "", place);
  };
  return { value: { fields: checked.data, prose, placeOf }, problems: all };
}

function readFront(source: Source, prose: ProseFile | undefined): Outcome<FrontMatter> {
  if (!source.file.endsWith(".yaml")) return splitFrontMatter(source);
  if (prose === undefined) return joinFiles(source, undefined);
  const read = readSource(prose.file, prose.bytes);
  return read.value ? joinFiles(source, read.value) : { value: undefined, problems: read.problems };
}

function checkFields(
  source: Source,
  front: FrontMatter,
  data: YamlData,
  palette: ReadonlyMap<string, string>,
) {
  const result = studySchema.safeParse(data.value);
  const issues = result.success
    ? []
    : describeIssues(result.error.issues, data, { whole: "A study", examples: studyExamples });
  const findings = [...issues, ...checkStudy(data.value, palette), ...checkFormerly(data.value.formerly)];
  return { value: result.data, problems: placeFindings(source, data, front.closingLine, findings) };
}

/** Returns the prose without controls and direction controls, with a warning at the first of each kind. */
export function cleanBody(source: Source, front: FrontMatter): Outcome<string> {
  const { text, controls, directions } = cleanText(front.body);
  const problems: Problem[] = [];
  const warn = (rule: string, place: Place, advice: Advice) =>
    reportIn(rule, [source, place], advice, "warning");
  let hidden: { readonly character: string; readonly at: number } | undefined;
  const seen = replaceInText(text, (character, at) => {
    hidden ??= { character, at };
    return "";
  });
  if (hidden !== undefined) {
    const name = nameCharacter(hidden.character);
    const { place } = findFirst(front, hidden.character);
    const reason = `A character that cannot be seen was taken out (${name}).`;
    problems.push(warn("study/prose-invisible", place, { reason, hint: typeAgain }));
  }
  if (stacked.test(text)) {
    const { place } = findFirst(front, stacked);
    const reason = "The prose has a letter with more than five marks on it.";
    problems.push(reportIn("study/stacked-marks", [source, place], { reason, hint: typeAgain }));
  }
  if (controls > 0) {
    const { place, character } = findFirst(front, control);
    const reason = `The prose holds a control character (${nameCharacter(character)}); it is shown as \ufffd.`;
    problems.push(warn("study/prose-control", place, { reason, hint: "Delete it." }));
  }
  if (directions.length > 0) {
    const { place, character } = findFirst(front, /[\u202a-\u202e\u2066-\u2069]/);
    const reason = `An invisible character that turns the reading direction was taken out (${nameCharacter(character)}).`;
    problems.push(warn("study/direction-control", place, { reason, hint: typeAgain }));
  }
  return { value: seen, problems };
}

function findFirst(front: FrontMatter, wanted: RegExp | string): { place: Place; character: string } {
  const { body } = front;
  const offset = Math.max(0, typeof wanted === "string" ? body.indexOf(wanted) : body.search(wanted));
  const before = body.slice(0, offset).split("\n");
  const place = { line: front.bodyLine + before.length - 1, column: (before.at(-1) ?? "").length + 1 };
  return { place, character: body.slice(offset) };
}

/** Each key is a colour: `checkStudy` has seen to it. */
function readNames(names: Readonly<Record<string, string>>): NonNullable<Study["names"]> {
  return new Map(
    Object.entries(names).map(
      ([colour, name]) => [parseColour(colour)?.hex ?? "#000000", name.trim()] as const,
    ),
  );
}

function placeAnswers(
  answers: readonly Omit<StudyAnswer, "key" | "at">[],
  file: string,
  places: Study["places"],
): readonly StudyAnswer[] {
  return answers.map((answer, index) => ({
    ...answer,
    key: String(index + 1),
    at: { file, ...places.get(`answers.${index}.edge`) },
  }));
}

/** Exactly one of the two is there: `checkStudy` has seen to it. */
function focusOf(focus: { readonly colour?: string; readonly select?: string }): Focus {
  return focus.colour === undefined ? { select: focus.select ?? "" } : { colour: focus.colour };
}

function placesOf(source: Source, data: YamlData): Study["places"] {
  return new Map(
    Array.from(
      data.places,
      ([path, place]) => [path, locate(source.lines[place.line - 1] ?? "", place)] as const,
    ),
  );
}
