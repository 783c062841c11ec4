// Floor 5. Where the original drawing may be: in the study's folder or in flags/, and nowhere else.
import type { Advice } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { describeDevice, proposeSlug } from "./slug.ts";

/** A reference to a drawing: the file `name` in the study's own folder, or in `flags/` of the content folder. */
export interface DrawingReference {
  readonly folder: "study" | "flags";
  readonly name: string;
}

/**
 * Reads an `original:` value: `harbour.svg` or `/flags/harbour.svg`, small letters, digits and hyphens.
 *
 * Anything else comes back as the reason and the hint of a problem: a path that climbs, a backslash, a drive, an
 * address, a percent sign, another ending.
 */
export function parseOriginal(text: string): DrawingReference | Advice {
  const flags = /^\/flags\/([^/]*)$/.exec(text)?.[1];
  const name = flags ?? text;
  if (isDrawingName(name)) return { folder: flags === undefined ? "study" : "flags", name };

  const last = name.split(/[/\\:]/).at(-1) ?? "";
  const proposed = /\.svg$/i.test(last) ? proposeDrawingName(last) : "original.svg";
  if (/[/\\:%\ufffd]/.test(name)) {
    const reason = `“original” is ${quoteText(text)}; it must name a file beside study.md, or /flags/ and a file name.`;
    const meant = respell(text);
    if (meant !== undefined) return { reason, hint: `Type: original: ${meant}` };
    return { reason, hint: `Copy the drawing into the study's folder and type: original: ${proposed}` };
  }
  if (!/\.svg$/i.test(name)) {
    const reason = `“original” is ${quoteText(text)}; the drawing must be an SVG file.`;
    return { reason, hint: `Save the drawing as SVG and type: original: ${proposeDrawingName(name)}` };
  }
  const target = flags === undefined ? proposed : `/flags/${proposed}`;
  const reason =
    describeDevice(name)?.reason ??
    `${quoteText(text)} is no file name for a drawing: small letters, digits and hyphens only.`;
  return { reason, hint: `Rename the file and type: original: ${target}` };
}

/** A place where drawings are, spelt in another way: `flags/harbour.svg`, `./harbour.svg`. */
function respell(text: string): string | undefined {
  const [, flags, name = ""] = /^(?:\.\/)?(flags\/)?([^/]*)$/.exec(text) ?? [];
  if (!isDrawingName(name)) return undefined;
  return flags === undefined ? name : `/flags/${name}`;
}

/** Returns the path of a study's original in the content folder: `flags/a.svg`. */
export function pathOfOriginal({
  slug,
  original,
}: {
  readonly slug: string;
  readonly original: string;
}): string {
  return original.startsWith("/") ? original.slice(1) : `studies/${slug}/${original}`;
}

/** Returns whether `name` is a file name a drawing may have: `harbour-flag.svg`, and no `nul.svg`. */
export function isDrawingName(name: string): boolean {
  return /^[a-z0-9]+(?:-[a-z0-9]+)*\.svg$/.test(name) && describeDevice(name) === undefined;
}

/** Returns the file name a drawing called `name` should have. */
export function proposeDrawingName(name: string): string {
  return `${proposeSlug(name.replace(/\.[a-z0-9]{1,4}$/i, "")) ?? "original"}.svg`;
}
