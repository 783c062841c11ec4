// Floor 5. Looks at the names in a folder, before any file is opened: what may be there, and under which name.
import { findNearest } from "../../problem/knownword.ts";
import { compareText, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { isDrawingName, proposeDrawingName } from "../study/original.ts";
import { describeDevice, foldName, isSlug, proposeSlug } from "../study/slug.ts";
import { isEditorFile } from "./editorfile.ts";

/** One entry of a folder, not followed if it is a link. */
export interface Entry {
  readonly name: string;
  readonly kind: "file" | "folder" | "link" | "other";
}

/** The files that a study may be written in. */
const textFiles: readonly string[] = ["study.md", "study.yaml", "prose.md"];

/** Where an editor finds the colours of a study's drawing, as `begin` writes them. It is never read. */
export const studySchemaFile = ".schema.json";

/** Files that operating systems leave in folders by themselves. They are never read. */
export const leftovers: readonly string[] = [".DS_Store", "Thumbs.db", "desktop.ini"];

/**
 * Returns the slugs of the study folders in `studies/`, sorted, and a problem for everything else.
 *
 * `folder` is the path of `studies/` as shown. Problems: `study/slug`, `study/same-name`, `study/link`,
 * `study/unexpected-file`.
 */
export function checkStudyFolders(
  folder: string,
  entries: readonly Entry[],
): { slugs: string[]; problems: Problem[] } {
  const taken = entries.map((entry) => entry.name);
  const alike = groupAlike(entries);
  const slugs: string[] = [];
  const problems: Problem[] = [];
  const sorted = [...entries].sort((a, b) => compareText(a.name, b.name));
  for (const entry of sorted) {
    const file = `${folder}/${entry.name}`;
    if (leftovers.includes(entry.name) || isEditorFile(entry.name)) continue;
    const same = alike.get(foldName(entry.name)) ?? [];
    const twins = same.flatMap(({ name }) => (name === entry.name ? [] : [name]));
    const good = same.find(isStudyFolder);
    // Whoever can add a name must not be able to take a study away by it.
    if (twins.length > 0 && good !== entry) {
      const left = good === undefined ? "none of them is published" : "it is left out";
      problems.push(sameName(file, entry.name, twins, left));
    } else if (entry.kind === "link") problems.push(linkProblem(file));
    else if (entry.kind !== "folder") problems.push(looseFile(file, entry.name));
    else if (describeDevice(entry.name)) problems.push(...listDevice("study/slug", file, entry.name));
    else if (!isSlug(entry.name)) problems.push(wrongSlug(file, entry.name, taken));
    else slugs.push(entry.name);
  }
  return { slugs, problems };
}

/**
 * Returns a problem for everything in a study's folder but drawings, the folder `answers`, and `study.md`, or `study.yaml` with `prose.md`.
 *
 * Problems: `study/two-files` where both are there, `study/prose-alone`, `study/unexpected-file`, `study/study-name`, `study/drawing-name`, `study/same-name`, `study/link`, `study/not-a-file`; a
 * warning `study/leftover-file` for what operating systems leave behind.
 */
export function checkStudyFiles(folder: string, entries: readonly Entry[]): Problem[] {
  const names = entries.map((entry) => entry.name);
  const alike = groupAlike(entries);
  const sorted = [...entries].sort((a, b) => compareText(a.name, b.name));
  return sorted.flatMap(({ name, kind }) => {
    const file = `${folder}/${name}`;
    const same = alike.get(foldName(name)) ?? [];
    const twins = same.flatMap((other) => (other.name === name ? [] : [other.name]));
    if (twins.length > 0) return [sameName(file, name, twins, "the study is left out")];
    if (isEditorFile(name)) return [];
    if (kind === "link") return [linkProblem(file)];
    if (leftovers.includes(name)) return [leftover(file)];
    if (name === "answers" && kind === "folder") return [];
    if (name === studySchemaFile) return [];
    const isText = textFiles.includes(name);
    if (!isText && !/\.svg$/i.test(name)) return [unexpected(file, name, names)];
    if (kind !== "file") return [notAFile(file, kind)];
    if (isText) return checkTextFile(file, name, names);
    const device = listDevice("study/drawing-name", file, name);
    return device.length > 0 || isDrawingName(name) ? device : [wrongDrawingName(file, name)];
  });
}

/** Returns the problem of a name that cannot be copied to many computers. */
export function listDevice(rule: string, file: string, name: string): Problem[] {
  const advice = describeDevice(name);
  return advice === undefined ? [] : [{ rule, severity: "error", file, ...advice }];
}

/** A study has its keys in one place, and its prose where the keys are or in a file that belongs to them. */
function checkTextFile(file: string, name: string, names: readonly string[]): Problem[] {
  const [hasWhole, hasProse] = [names.includes("study.md"), names.includes("prose.md")];
  if (name === "study.yaml" && hasWhole) {
    const both = hasProse ? "study.yaml and prose.md hold" : "study.yaml holds";
    return [
      report("study/two-files", file, {
        reason: "study.yaml and study.md are both here, and a study has one of them.",
        hint: `Delete study.md if ${both} what you want to say. If study.md does, delete ${hasProse ? "the other two" : "study.yaml"}.`,
      }),
    ];
  }
  if (name !== "prose.md" || names.includes("study.yaml")) return [];
  return [
    report("study/prose-alone", file, {
      reason: hasWhole
        ? "prose.md belongs to a study.yaml; here the prose is in study.md."
        : "prose.md belongs to a study.yaml, and there is none.",
      hint: hasWhole
        ? "Move its text into study.md, below the second ---, and delete it."
        : "Write the keys of the study in study.yaml, beside it.",
    }),
  ];
}

/** Returns the problem of a symbolic link, which is never followed: it could publish any file of the computer. */
export function linkProblem(file: string): Problem {
  const reason = "This is a symbolic link, and links are not followed.";
  return report("study/link", file, { reason, hint: "Put the file or folder itself in its place." });
}

/** Returns the problem of a folder, pipe or device where a file should be. */
export function notAFile(file: string, kind: Entry["kind"]): Problem {
  const found = kind === "folder" ? "a folder" : "not a regular file";
  const reason = `This is ${found}; a file of that name belongs here.`;
  return report("study/not-a-file", file, {
    reason,
    hint: "Rename or remove it, and put the file in its place.",
  });
}

/** Returns the entries under each name as a file system without letter case has it. */
function groupAlike(entries: readonly Entry[]): ReadonlyMap<string, readonly Entry[]> {
  const alike = new Map<string, Entry[]>();
  for (const entry of entries) {
    const key = foldName(entry.name);
    const known = alike.get(key);
    if (known === undefined) alike.set(key, [entry]);
    else known.push(entry);
  }
  return alike;
}

function isStudyFolder({ name, kind }: Entry): boolean {
  return kind === "folder" && isSlug(name);
}

function wrongSlug(file: string, name: string, taken: readonly string[]): Problem {
  const proposed = proposeSlug(name);
  const isFree = proposed !== undefined && !taken.includes(proposed);
  return report("study/slug", file, {
    reason: `The folder ${quoteText(name)} cannot be an address: small letters, digits and single hyphens only, 100 at most.`,
    hint: isFree
      ? `Rename the folder to: ${proposed}`
      : "Rename the folder, for example: lighter-ferry-wheel",
  });
}

/** `left` says what is not published until one of the two is gone. */
function sameName(file: string, name: string, twins: readonly string[], left: string): Problem {
  const others = twins.map((twin) => quoteText(twin)).join(", ");
  const all = [name, ...twins];
  const wrong = all.filter((each) => !isSlug(each.replace(/\.(?:md|svg|yaml)$/, "")));
  // Where all but one break the rule for names, it is clear which have to go.
  const which =
    wrong.length === all.length - 1 ? wrong.map((each) => quoteText(each)).join(", ") : "all but one of them";
  return report("study/same-name", file, {
    reason: `On many computers ${quoteText(name)} is the same name as ${others}, which is here too.`,
    hint: `Rename or remove ${which}; until then ${left}.`,
  });
}

function looseFile(file: string, name: string): Problem {
  const slug = proposeSlug(name.replace(/\.[a-z0-9]{1,4}$/i, "")) ?? "my-study";
  const hint = /\.(md|svg)$/i.test(name)
    ? `Every study has a folder of its own: studies/${slug}/study.md with its drawing beside it.`
    : "Remove it; this folder holds a folder for each study and nothing else.";
  const reason = "A file lies where only the folders of studies belong.";
  return report("study/unexpected-file", file, { reason, hint });
}

function unexpected(file: string, name: string, names: readonly string[]): Problem {
  const isStudy =
    /\.(?:md|markdown|mdx|txt|ya?ml)$/i.test(name) && !textFiles.some((each) => names.includes(each));
  if (isStudy) {
    const study = /\.ya?ml$/i.test(name) ? "study.yaml" : "study.md";
    const reason = `${quoteText(name)} is not read: the file of a study is called ${study}.`;
    return report("study/study-name", file, { reason, hint: `Rename it to: ${study}` });
  }
  const meant = findNearest(name, textFiles);
  const hint =
    meant && !names.includes(meant)
      ? `Rename it to: ${meant}`
      : "Remove it; a study's folder holds study.md and SVG drawings, nothing else.";
  const reason = `${quoteText(name)} does not belong in a study's folder.`;
  return report("study/unexpected-file", file, { reason, hint });
}

function wrongDrawingName(file: string, name: string): Problem {
  const reason = `${quoteText(name)} is no file name for a drawing: small letters, digits and hyphens only.`;
  const hint = `Rename the file to: ${proposeDrawingName(name)}`;
  return report("study/drawing-name", file, { reason, hint });
}

function leftover(file: string): Problem {
  const reason = "Your operating system left this file here; it is passed over.";
  return report("study/leftover-file", file, { reason }, "warning");
}
