// Floor 5. Which files of a folder of flags are read: drawings with a good name, and a warning for everything else.
import { compareText, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { isDrawingName } from "../study/original.ts";
import { isEditorFile } from "./editorfile.ts";
import { checkStudyFiles, type Entry } from "./listing.ts";

/** Flags that readers named: beside the drawings, and read apart from them. */
export const nominationFile = "nominations.yaml";

/** A drawing in a folder. `file` is its path as shown in messages, `path` the absolute one. */
export interface FolderDrawing {
  readonly name: string;
  readonly file: string;
  /** Where it lies: the content folder as an absolute path, and the way from there. */
  readonly root: string;
  readonly inner: string;
}

/**
 * Returns the names of the drawings among `entries`, sorted, and a warning for everything that is passed over. With
 * `hasStrictNames` a name must be fit for an address, as a study's drawing; without, any SVG file will do, and what is none
 * is passed over in silence: somebody else's collection keeps its own names.
 *
 * Problems, all of them warnings: those of `checkStudyFiles`.
 */
export function checkFolderDrawings(
  folder: string,
  entries: readonly Entry[],
  hasStrictNames: boolean,
): { readonly names: readonly string[]; readonly problems: readonly Problem[] } {
  const drawings = entries.filter(({ name }) => isDrawing(name)).sort((a, b) => compareText(a.name, b.name));
  if (!hasStrictNames)
    return { names: drawings.filter(({ kind }) => kind === "file").map(({ name }) => name), problems: [] };
  const problems = [
    ...checkStudyFiles(folder, drawings).map((problem) => soften(problem)),
    ...entries
      .filter(
        ({ name }) =>
          !isDrawing(name) && name !== nominationFile && !name.startsWith(".") && !isEditorFile(name),
      )
      .map(({ name }) => stray(folder, name)),
  ];
  const wrong = new Set(problems.map(({ file }) => file));
  return {
    names: drawings
      .map(({ name }) => name)
      .filter((name) => isDrawingName(name) && !wrong.has(`${folder}/${name}`)),
    problems,
  };
}

function isDrawing(name: string): boolean {
  return /\.svg$/i.test(name) && !name.startsWith(".");
}

function soften(problem: Problem): Problem {
  return {
    ...problem,
    severity: "warning",
    ...(problem.hint === undefined
      ? {}
      : { hint: problem.hint.replace("the study is left out", "none of them is read") }),
  };
}

function stray(folder: string, name: string): Problem {
  return report(
    "study/unexpected-file",
    `${folder}/${name}`,
    {
      reason: `${quoteText(name)} is no SVG file, so it is passed over.`,
      hint: "This folder holds drawings of flags and nothing else.",
    },
    "warning",
  );
}
