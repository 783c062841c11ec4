// Floor 5. The problems of what should be in a content folder and is not there.
import { findNearest } from "../../problem/knownword.ts";
import { compareText, type Problem, report } from "../../problem/problem.ts";
import { foldName } from "../study/slug.ts";
import type { Study } from "../study/study.ts";

/**
 * Returns the problem of a study whose drawing is not there. `names` are the files that are; the nearest drawing
 * among them is proposed.
 */
export function drawingMissing(study: Study, names: readonly string[]): Problem {
  const parts = study.original.split("/");
  const folder = parts.length > 1 ? "in the folder flags" : "in the study's folder";
  const drawings = names.filter((name) => name.endsWith(".svg")).sort(compareText);
  const only = drawings.length === 1 ? drawings[0] : undefined;
  const near = findNearest(parts.at(-1) ?? "", drawings) ?? only;
  const lines = near === undefined ? [] : [`Type: original: ${[...parts.slice(0, -1), near].join("/")}`];
  const asIs = names.find((name) => foldName(name) === foldName(parts.at(-1) ?? ""));
  if (asIs !== undefined) lines.push(`Rename ${asIs} to: ${parts.at(-1)}`);
  else if (drawings.length === 0) lines.push(`Put the drawing there: ${study.originalFile}`);
  else if (only === undefined) lines.push(`The drawings there are: ${listNames(drawings)}`);
  return report(
    "study/drawing-missing",
    { file: study.file, ...study.places.get("original") },
    { reason: `The drawing “${study.original}” is not ${folder}.`, hint: lines.join("\n") },
  );
}

/** Returns at most twelve names in one line. */
export function listNames(names: readonly string[]): string {
  if (names.length === 0) return "none";
  return names.slice(0, 12).join(", ") + (names.length > 12 ? ` and ${names.length - 12} more` : "");
}

/**
 * Returns the problem of a content folder that does not exist; `root` is the absolute path, `near` are galleries that might
 * be meant.
 */
export function contentMissing(file: string, root: string, near: readonly string[]): Problem {
  return report("study/content-missing", file, {
    reason: "There is no such content folder.",
    hint: `Looked for ${root}\n${nameNear(near) ?? "Name the folder that holds gallery.yaml and studies/; or begin one: counterchange begin SLUG --original FILE.svg"}`,
  });
}

/** Returns the problem of a file that was named where a content folder should be; `around` is the gallery it lies in. */
export function contentIsFile(file: string, around: string | undefined): Problem {
  const isDrawing = /\.svg$/i.test(file);
  const lines = [
    ...(isDrawing ? [`For one drawing: counterchange measure ${file}`] : []),
    ...(around === undefined ? [] : [`It lies in the gallery ${around}: name that.`]),
  ];
  return report("study/content-missing", file, {
    reason: "This is a file; a content folder belongs here.",
    hint: lines.join("\n") || "Name the folder that holds gallery.yaml and studies/, for example: content",
  });
}

/** Returns the problem of a folder of a gallery that was named in place of the gallery itself. */
export function contentInside(file: string, around: string): Problem {
  return report("study/content-missing", file, {
    reason: "This folder holds neither gallery.yaml nor studies/: it is a part of a gallery.",
    hint: `It lies in the gallery ${around}: name that.`,
  });
}

function nameNear(near: readonly string[]): string | undefined {
  if (near.length === 0) return undefined;
  return `${near.length === 1 ? "A gallery that is there" : "Galleries that are there"}: ${near.join(", ")}`;
}

/** Returns the warning that a content folder has no `studies/`. */
export function studiesMissing(file: string): Problem {
  const reason = "There is no folder studies, so the gallery has no study.";
  return report(
    "study/studies-missing",
    file,
    { reason, hint: `Make the folder, with one folder in it for each study: ${file}/my-study/study.md` },
    "warning",
  );
}

/** Returns the problem of a study folder without study.md. */
export function studyMissing(file: string): Problem {
  const reason = "The study's folder has no study.md.";
  return report("study/study-missing", file, {
    reason,
    hint: `Write the study in ${file}, or remove the folder.`,
  });
}

/** Returns the problem of a drawing that was there when its study was read, and then could not be read any more. */
export function drawingChanged(study: Study): Problem {
  return report("study/unreadable", study.originalFile, {
    reason: "The drawing went, or changed, while it was being read.",
    hint: "Try again once it is in its place.",
  });
}
