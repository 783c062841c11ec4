// Floor 5. What can happen when a file is opened, as data, and the problem that each case makes.
import { type Problem, report } from "../../problem/problem.ts";
import { linkProblem, notAFile } from "../folder/listing.ts";
import { isScarce, refusalProblem } from "./machinelimit.ts";

/** Largest drawing, in bytes. */
export const drawingBytes = 512 * 1024;

/** Why a file was not read. `size` is in bytes. */
export type FileFailure =
  | { readonly kind: "missing" }
  | { readonly kind: "link" }
  | { readonly kind: "folder" | "other" }
  /** A step on the way is a link, or it moved or grew while it was opened. */
  | { readonly kind: "moved" }
  | { readonly kind: "too large"; readonly size: number }
  | { readonly kind: "unreadable"; readonly code: string };

/** Returns the problem of a drawing that could not be read; `looked` is the absolute path that was tried. */
export function describeDrawingFailure(file: string, failure: FileFailure, looked: string): Problem {
  switch (failure.kind) {
    case "missing":
      return report("study/drawing-missing", file, {
        reason: "There is no such file.",
        hint: `Looked for ${looked}`,
      });
    case "too large":
      return report("study/drawing-size", file, {
        reason: `The drawing has ${Math.ceil(failure.size / 1024)} KB; a drawing may have 512 KB.`,
        hint: "Export it again with fewer points: a flag rarely needs more than 50 KB.",
      });
    default:
      return describeFailure(file, failure);
  }
}

/** Returns the problem of a folder that was named where a drawing is asked for. */
export function folderNamed(file: string): Problem {
  const folder = file.replace(/(?<=[^/])\/+$/, "");
  return report("study/folder-named", file, {
    reason: "This is a folder; name the SVG files in it.",
    hint: `Type, for example: ${folder}/flag.svg\nEvery flag of a folder: counterchange survey ${folder}`,
  });
}

/** Returns the problem of a file that is a link, a folder or unreadable. */
export function describeFailure(file: string, failure: FileFailure): Problem {
  if (failure.kind === "link") return linkProblem(file);
  if (failure.kind === "folder" || failure.kind === "other") return notAFile(file, failure.kind);
  if (failure.kind === "unreadable" && isScarce(failure.code)) return refusalProblem(file, failure);
  return report("study/unreadable", file, {
    reason: `The file could not be read: ${nameFailure(failure)}.`,
    hint: "Check that you may read it, and that it has not moved.",
  });
}

/** Returns the problem of a folder that cannot be read. */
export function describeFolderFailure(folder: string, failure: FileFailure): Problem {
  if (failure.kind === "unreadable" && isScarce(failure.code)) return refusalProblem(folder, failure);
  const isOther = failure.kind === "other";
  return report("study/unreadable", folder, {
    reason: isOther
      ? "This is no folder; a folder of that name belongs here."
      : `The folder could not be read: ${nameFailure(failure)}.`,
    hint: isOther
      ? "Rename or remove it, and put the folder in its place."
      : "Check that you may open it and list what is in it.",
  });
}

/** Returns what to say of a failure behind a colon. */
export function nameFailure(failure: FileFailure): string {
  if (failure.kind === "moved") return "it moved meanwhile, or a folder on the way to it is a link";
  if (failure.kind !== "unreadable") return failure.kind;
  const { code } = failure;
  if (code === "EACCES" || code === "EPERM") return "permission denied";
  if (code === "EMFILE" || code === "ENFILE") return "too many files are open";
  return code === "EIO" ? "the disk reports an error" : `error ${code}`;
}
