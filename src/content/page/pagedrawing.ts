// Floor 5. The drawings that the gallery's own pages show: where each lies, and which are there.
import { findNearest } from "../../problem/knownword.ts";
import { compareText, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { readFolder } from "../disk/readfile.ts";
import { listNames } from "../folder/absent.ts";
import type { FolderDrawing } from "../folder/flagfiles.ts";
import { isDrawingName } from "../study/original.ts";
import { findDrawingLines } from "../study/prosecheck.ts";
import { type Page, parentOf } from "./pagefile.ts";

/** The path, in the content folder, of a drawing that a line of a page names. */
export function placeDrawing({ path }: Pick<Page, "path">, drawing: string): string {
  if (drawing.startsWith("/")) return drawing.slice(1);
  return ["pages", parentOf(path), drawing].filter(isString).join("/");
}

const isString = (step: string | undefined): step is string => step !== undefined;

/**
 * Finds the drawings that `pages` show: of `own`, which lie in folders of pages, and of flags/.
 *
 * Problems: the warning `page/drawing` of one that is not there.
 */
export async function findDrawings(
  root: string,
  shown: string,
  pages: readonly Page[],
  own: readonly string[],
): Promise<{ readonly drawings: readonly FolderDrawing[]; readonly problems: readonly Problem[] }> {
  const asked = pages.flatMap((page) => findDrawingLines(page).map((line) => ({ page, ...line })));
  if (asked.length === 0) return { drawings: [], problems: [] };
  const entries = await readFolder(root, "flags");
  const flags = ("kind" in entries ? [] : entries).flatMap(({ name }) =>
    isDrawingName(name) ? [`flags/${name}`] : [],
  );
  const there = [...own, ...flags].sort(compareText);
  const wanted = new Set(asked.map(({ page, drawing }) => placeDrawing(page, drawing)));
  return {
    drawings: there.flatMap((inner) =>
      wanted.has(inner) ? [{ name: inner, file: `${shown}/${inner}`, root, inner }] : [],
    ),
    problems: asked.flatMap(({ page, drawing, at }) => {
      if (there.includes(placeDrawing(page, drawing))) return [];
      const folder = placeDrawing(page, "");
      const names = there.flatMap((inner) => spellFrom(folder, inner) ?? []);
      const near = findNearest(drawing, names);
      const reason = `There is no drawing ${quoteText(drawing)}: a page shows those of its own folder, ${folder.slice(0, -1)}, and of flags.`;
      const others =
        names.length === 0
          ? "Put the drawing beside the file of this page."
          : `The drawings there are: ${listNames(names)}`;
      const hint = near === undefined ? others : `Type: ::figure{drawing="${near}"}`;
      return [report("page/drawing", at, { reason, hint }, "warning")];
    }),
  };
}

/** How a page in `folder` names the drawing at `inner`, or undefined where it cannot. */
function spellFrom(folder: string, inner: string): string | undefined {
  if (inner.startsWith("flags/")) return `/${inner}`;
  const name = inner.startsWith(folder) ? inner.slice(folder.length) : "/";
  return name.includes("/") ? undefined : name;
}
