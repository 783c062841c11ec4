// Floor 5. The bytes of a series → a checked series, or every problem they have.
import type { z } from "zod";
import type { Outcome } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { checkInvisible } from "../study/invisiblevalue.ts";
import { checkScripts } from "../study/namesense.ts";
import { parseOriginal } from "../study/original.ts";
import { type MarkdownKind, readMarkdown } from "../study/studyfile.ts";
import { checkAuthor, checkDate, isRaw, isText, listOf } from "../study/studyrule.ts";
import { type Finding, wrong } from "../yaml/finding.ts";
import type { Series, SeriesEntry } from "./series.ts";
import { seriesGuide, seriesSchema } from "./serieskey.ts";

const seriesKind: MarkdownKind<z.infer<typeof seriesSchema>> = {
  schema: seriesSchema,
  guide: seriesGuide,
  check: checkValues,
  begins: "title: Six flags from the quay\nstudies: [ferry-wheel, harbour-anchor]",
};

/**
 * Reads one file of `series/`. The value is undefined as soon as there is one error; warnings leave it.
 *
 * Problems: those of `readMarkdown`, `checkInvisible` and `checkScripts`, `study/wrong-date`, `study/wrong-author`, and
 * `series/study-twice`, `series/flag-path`.
 */
export function parseSeries(slug: string, file: string, bytes: Uint8Array): Outcome<Series> {
  const { value, problems } = readMarkdown(file, bytes, seriesKind);
  if (value === undefined) return { value, problems };
  const { studies, ...fields } = value.fields;
  const places = studies.map((_, index) => value.placeOf(`studies.${index}`));
  return { value: { slug, ...value.prose, ...fields, entries: studies.map(readEntry), places }, problems };
}

function readEntry(written: z.infer<typeof seriesSchema>["studies"][number]): SeriesEntry {
  if (typeof written === "string") return { study: written };
  return { ...written, flag: written.flag.replace(/^\//, "") };
}

function checkValues(raw: Readonly<Record<string, unknown>>): Finding[] {
  const items = listOf(raw.studies);
  return [
    ...checkInvisible(raw),
    ...checkScripts(raw),
    ...checkDate(raw.date),
    ...listOf(raw.authors).flatMap((author, index) => checkAuthor(`authors.${index}`, author)),
    ...items.flatMap((item, index) => [...checkTwice(items, index), ...checkFlag(item, index)]),
  ];
}

function checkTwice(items: readonly unknown[], index: number): Finding[] {
  const nameOf = (item: unknown): unknown => (isRaw(item) ? item.flag : item);
  const name = nameOf(items[index]);
  if (!isText(name) || items.map(nameOf).indexOf(name) === index) return [];
  const reason = `${quoteText(name)} stands in “studies” a second time.`;
  const path = `studies.${index}`;
  return wrong("series/study-twice", path, { reason, hint: "Delete one of the two." });
}

function checkFlag(item: unknown, index: number): Finding[] {
  const flag = isRaw(item) ? item.flag : undefined;
  if (!isText(flag)) return [];
  const parsed = parseOriginal(flag);
  if ("folder" in parsed && parsed.folder === "flags") return [];
  const reason = `“flag” is ${quoteText(flag)}; it names a drawing of the folder flags: /flags/ and a file name.`;
  const hint = `Type: flag: /flags/${"name" in parsed ? parsed.name : "harbour.svg"}`;
  return wrong("series/flag-path", `studies.${index}.flag`, { reason, hint });
}
