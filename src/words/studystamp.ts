// Floor 7. The stamp of a study: a short mark of what was measured, that changes when any of it does and with nothing else.
import { createHash } from "node:crypto";
import type { StudyResult } from "../analysis/result.ts";
import { parseColour } from "../colour/colourtext.ts";
import type { Gallery } from "../content/study/study.ts";
import { measuredOf } from "./namedresult.ts";

/** Goes up when a measure moves: a changed measure changes what every page says. */
export const measureVersion = "0.3";

/**
 * Returns eight hexadecimal digits that stand for the drawing, the change, the focus, what the gallery sets for
 * measuring, and the version of the measure. Prose, title and status are not part of it, nor are the titles and the
 * line breaks inside a drawing. What `only` selects is told by the redesign, so that another selector for the same
 * shapes changes nothing.
 */
export function stampOf(result: StudyResult, gallery: Gallery): string {
  const { change, drawings } = result;
  const measured = [
    measureVersion,
    keepShapes(drawings.original),
    keepShapes(drawings.redesign),
    change.replace,
    change.with,
    change.only !== undefined,
    focusOf(measuredOf(result)),
    gallery.viewingDistance,
    gallery.cloth.black,
    gallery.cloth.white,
  ];
  return createHash("sha256").update(JSON.stringify(measured)).digest("hex").slice(0, 8);
}

/** A drawing as we write it, without what says something and shows nothing. */
function keepShapes(svg: string): string {
  return svg
    .replace(/<(title|desc|metadata)\b[^>]*?(?:\/>|>[\s\S]*?<\/\1>)/g, "")
    .replace(/>\s+(?=<)/g, ">")
    .trim();
}

/** A colour by its name and by its hex is the same focus. */
function focusOf({ study: { focus }, comparison }: StudyResult): string | null {
  if (focus === undefined) return null;
  if ("select" in focus) return focus.select.trim();
  const asked = focus.colour.trim().toLowerCase();
  const named = comparison.before.colours.find(({ name }) => name.toLowerCase() === asked);
  return `colour ${named?.hex ?? parseColour(asked)?.hex ?? asked}`;
}
