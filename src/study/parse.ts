// Floor 5. The bytes of a study.md → a checked study, or every problem the file has.
import { join } from "node:path";
import { hasError, type Outcome, type Place, type Problem } from "../problem/problem.ts";
import { cleanText, control, nameCharacter } from "./clean.ts";
import { placeFindings } from "./finding.ts";
import { type FrontMatter, splitFrontMatter } from "./frontmatter.ts";
import { describeIssues } from "./issue.ts";
import { parseOriginal } from "./original.ts";
import { checkStudy } from "./rule.ts";
import { studyExamples, studySchema } from "./schema.ts";
import { problemAt, readSource, type Source } from "./source.ts";
import type { Focus, Study } from "./study.ts";
import { parseYaml, type YamlData } from "./yaml.ts";

/** Where a study.md comes from. Folders are absolute paths. */
export interface StudyOrigin {
  readonly slug: string;
  /** Paths as shown in messages, with `/`. */
  readonly file: string;
  readonly shownFlagsFolder: string;
  readonly studyFolder: string;
  readonly flagsFolder: string;
}

/**
 * Reads one study file. `palette` holds the names that `with:` may use.
 *
 * The value is undefined as soon as there is one error; warnings leave it. Problems: those of `readSource`,
 * `splitFrontMatter` and `parseYaml`, and `study/unknown-key`, `study/missing-key`, `study/no-value`,
 * `study/wrong-type`, `study/too-long`, `study/unknown-word`, `study/wrong-colour`, `study/wrong-date`,
 * `study/wrong-tag`, `study/wrong-author`, `study/focus`, `study/decision-missing`, `study/original-path`,
 * `study/prose-control`.
 */
export function parseStudy(
  origin: StudyOrigin,
  bytes: Uint8Array,
  palette: ReadonlyMap<string, string>,
): Outcome<Study> {
  const { value: source, problems } = readSource(origin.file, bytes);
  if (!source) return { value: undefined, problems };
  const front = splitFrontMatter(source);
  if (!front.value) return { value: undefined, problems: front.problems };
  const body = cleanBody(source, front.value);
  const yaml = parseYaml(source, front.value.yaml);
  if (!yaml.value) return { value: undefined, problems: [...yaml.problems, ...body.problems] };
  const checked = checkFields(source, front.value, yaml.value, palette);
  const all = [...yaml.problems, ...checked.problems, ...body.problems];
  if (!checked.value || hasError(all)) return { value: undefined, problems: all };

  const { original, focus, ...fields } = checked.value;
  const reference = parseOriginal(original);
  if ("reason" in reference) return { value: undefined, problems: all };
  const inFlags = reference.folder === "flags";
  const shownFolder = inFlags ? origin.shownFlagsFolder : origin.file.replace(/\/?study\.md$/, "");
  const study: Study = {
    slug: origin.slug,
    file: origin.file,
    originalFile: `${shownFolder}/${reference.name}`,
    originalPath: join(inFlags ? origin.flagsFolder : origin.studyFolder, reference.name),
    original,
    ...fields,
    ...(focus === undefined ? {} : { focus: focusOf(focus) }),
    body: body.value ?? "",
    bodyLine: front.value.bodyLine,
    places: placesOf(source, yaml.value),
  };
  return { value: study, problems: all };
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
  const findings = [...issues, ...checkStudy(data.value, palette)];
  return { value: result.data, problems: placeFindings(source, data, front.closingLine, findings) };
}

/** Returns the prose without controls and direction controls, with a warning at the first of each kind. */
function cleanBody(source: Source, front: FrontMatter): Outcome<string> {
  const { text, controls, directions } = cleanText(front.body);
  const problems: Problem[] = [];
  if (controls > 0) {
    const { place, character } = findFirst(front, control);
    const reason = `The prose holds a control character (${nameCharacter(character)}); it is shown as \ufffd.`;
    problems.push(
      problemAt(source, place, {
        rule: "study/prose-control",
        severity: "warning",
        reason,
        hint: "Delete it.",
      }),
    );
  }
  if (directions.length > 0) {
    const { place, character } = findFirst(front, /[\u202a-\u202e\u2066-\u2069]/);
    const reason = `An invisible character that turns the reading direction was taken out (${nameCharacter(character)}).`;
    const hint = "Type the text again by hand; copying brought the character along.";
    problems.push(
      problemAt(source, place, { rule: "study/direction-control", severity: "warning", reason, hint }),
    );
  }
  return { value: text, problems };
}

function findFirst(front: FrontMatter, wanted: RegExp): { place: Place; character: string } {
  const offset = Math.max(0, front.body.search(wanted));
  const before = front.body.slice(0, offset).split("\n");
  const place = { line: front.bodyLine + before.length - 1, column: (before.at(-1) ?? "").length + 1 };
  return { place, character: front.body.slice(offset) };
}

/** Exactly one of the two is there: `checkStudy` has seen to it. */
function focusOf(focus: { readonly colour?: string; readonly select?: string }): Focus {
  return focus.colour === undefined ? { select: focus.select ?? "" } : { colour: focus.colour };
}

function placesOf(source: Source, data: YamlData): Study["places"] {
  return new Map(
    Array.from(
      data.places,
      ([path, place]) => [path, { place, sourceLine: source.lines[place.line - 1] ?? "" }] as const,
    ),
  );
}
