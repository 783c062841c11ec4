// Floor 11, for the command begin. A study becomes the last of a series: of a new one, or of one that its author has written.
import { isSeq, parseDocument } from "yaml";
import { readRegular } from "../../content/disk/readfile.ts";
import { type Series, subjectOf } from "../../content/series/series.ts";
import { parseSeries } from "../../content/series/seriesfile.ts";
import { textFileBytes } from "../../content/text/textsource.ts";
import { hasError } from "../../problem/problem.ts";

/** A series as it is and with the study in it; `left` where only its author can add to it. */
export type SeriesThere = { readonly was: Uint8Array; readonly text: string } | "left";

/** Looks at the series of a name in the folder `content`; undefined where it is new. */
export async function lookAtSeries(
  content: string,
  series: string | undefined,
  study: string,
): Promise<SeriesThere | undefined> {
  if (series === undefined) return undefined;
  const read = await readRegular(content, `series/${series}.md`, textFileBytes);
  if ("kind" in read) return read.kind === "missing" ? undefined : "left";
  const text = addStudy(read.bytes, study);
  return text === undefined ? "left" : { was: read.bytes, text };
}

/** A series of one study, with room for what only its author knows. */
export function writeSeries(title: string, study: string): string {
  return [
    "---",
    `title: ${title}`,
    "studies:",
    `  - ${study}`,
    "# closing: Which of these changes would you make?",
    "---",
    "",
  ].join("\n");
}

/**
 * Returns the bytes of a series as text with `study` as the last of its studies and every other letter as it was; as it is
 * where the study stands in it. Undefined where the series has a problem, or the list is written in a way that we do not know.
 */
export function addStudy(bytes: Uint8Array, study: string): string | undefined {
  const before = read(bytes);
  if (before === undefined) return undefined;
  const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  const names = before.entries.map(subjectOf);
  if (names.includes(study)) return text;
  const at = findEnd(text);
  if (at === undefined) return undefined;
  const added = `${text.slice(0, at.offset)}${at.before}${study}${at.after}${text.slice(at.offset)}`;
  const after = read(new TextEncoder().encode(added));
  const isRight = after?.entries.map(subjectOf).join("\n") === [...names, study].join("\n");
  return isRight && after.body === before.body ? added : undefined;
}

function read(bytes: Uint8Array): Series | undefined {
  const { value, problems } = parseSeries("series", "series.md", bytes);
  return hasError(problems) ? undefined : value;
}

/** Where in the text another item goes, and what stands before and after its name there. */
function findEnd(
  text: string,
): { readonly offset: number; readonly before: string; readonly after: string } | undefined {
  const [opening = ""] = /^.*\n/.exec(text) ?? [];
  const keys = text.slice(opening.length).split(/^---\s*$/m, 1)[0] ?? "";
  const list = parseDocument(keys).get("studies", true);
  const [last] = isSeq(list) ? list.items.slice(-1) : [];
  const end = (last as { readonly range?: readonly number[] } | undefined)?.range?.[1];
  if (!isSeq(list) || list.range == null || end === undefined) return undefined;
  const offset = opening.length + end;
  if (list.flow) return { offset, before: ", ", after: "" };
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  const first = opening.length + list.range[0];
  const indent = text.slice(text.lastIndexOf("\n", first - 1) + 1, first);
  // A comment behind the last item stays there.
  const lineEnd = text.indexOf("\n", text[offset - 1] === "\n" ? offset - 1 : offset);
  return { offset: lineEnd + 1, before: `${indent}- `, after: newline };
}
