// Floor 6. The stamp of a study: a short mark of what was measured, that changes when any of it does.
import { createHash } from "node:crypto";
import type { StudyResult } from "../../study/result.ts";
import type { Gallery } from "../../study/study.ts";

/** Goes up when a measure moves: a changed measure changes what every page says. */
export const measureVersion = "0.1";

/**
 * Returns eight hexadecimal digits that stand for the drawing, the change, the focus, what the gallery sets for
 * measuring, and the version of the measure. Prose, title and status are not part of it.
 */
export function stampOf({ study, change, drawings }: StudyResult, gallery: Gallery): string {
  const measured = [
    measureVersion,
    drawings.original,
    change.replace,
    change.with,
    change.only ?? null,
    study.focus ?? null,
    gallery.viewingDistance,
    gallery.cloth.black,
    gallery.cloth.white,
  ];
  return createHash("sha256").update(JSON.stringify(measured)).digest("hex").slice(0, 8);
}
