// Floor 5. The author's other options, asked of the drawing: each must name colours and shapes that are there.
import type { Problem } from "../problem/problem.ts";
import { readDrawing } from "../svg/gate.ts";
import { resolveDrawing } from "../svg/instance.ts";
import { inspectDrawing } from "./inspect.ts";
import { listColours, planChange } from "./plan.ts";
import type { Gallery, Study } from "./study.ts";

/**
 * Returns what is wrong with `options:` of a study whose drawing can be measured, placed in study.md.
 *
 * Problems: those of planChange.
 */
export async function checkNoted(study: Study, bytes: Uint8Array, gallery: Gallery): Promise<Problem[]> {
  if (study.options.length === 0) return [];
  const { value: drawing } = readDrawing(study.originalFile, bytes);
  if (drawing === undefined) return [];
  const resolved = resolveDrawing(drawing);
  const colours = listColours(resolved, await inspectDrawing(resolved, { distance: 0 }));
  return study.options.flatMap((option, index) => {
    const pathOf = (path: string): string => path.replace(/^change\./, `options.${index}.`);
    const locate = (path: string) => ({ file: study.file, ...study.places.get(pathOf(path)) });
    return planChange(resolved, colours, option, gallery.palette, locate).problems;
  });
}
