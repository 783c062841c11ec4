// Floor 5. The bytes of a series → a checked series, or every problem they have.
import { locate } from "../../problem/locate.ts";
import { hasError, type Outcome, type Problem } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { checkInvisible } from "../study/invisiblevalue.ts";
import { checkScripts } from "../study/namesense.ts";
import { parseOriginal } from "../study/original.ts";
import { checkProse } from "../study/prosecheck.ts";
import { cleanBody } from "../study/studyfile.ts";
import { checkAuthor, checkDate, isRaw, isText, listOf } from "../study/studyrule.ts";
import { readSource } from "../text/textsource.ts";
import { type Finding, placeFindings, wrong } from "../yaml/finding.ts";
import { splitFrontMatter } from "../yaml/frontmatter.ts";
import { parseYaml } from "../yaml/readyaml.ts";
import { describeIssues } from "../yaml/schemaissue.ts";
import type { Series, SeriesEntry } from "./series.ts";
import { seriesGuide, seriesSchema } from "./serieskey.ts";

/**
 * Reads one file of `series/`. The value is undefined as soon as there is one error; warnings leave it.
 *
 * Problems: those of `readSource`, `splitFrontMatter`, `parseYaml`, `checkInvisible`, `checkScripts` and `checkProse`, of the schema as in
 * a study, `study/wrong-date`, `study/wrong-author`, and `series/study-twice`, `series/flag-path`.
 */
export function parseSeries(slug: string, file: string, bytes: Uint8Array): Outcome<Series> {
  const { value: source, problems } = readSource(file, bytes);
  if (!source) return { value: undefined, problems };
  const front = splitFrontMatter(source);
  if (!front.value) return { value: undefined, problems: front.problems };
  const body = cleanBody(front.value.bodySource, front.value);
  const yaml = parseYaml(source, front.value.yaml);
  if (!yaml.value) return { value: undefined, problems: [...yaml.problems, ...body.problems] };

  const data = yaml.value;
  const checked = seriesSchema.safeParse(data.value);
  const issues = checked.success ? [] : describeIssues(checked.error.issues, data, seriesGuide);
  const findings = [...issues, ...checkValues(data.value)];
  const placed = placeFindings(source, data, front.value.closingLine, findings);
  const prose = { body: body.value ?? "", bodyLine: front.value.bodyLine, file };
  const all: Problem[] = [...yaml.problems, ...placed, ...body.problems, ...checkProse(prose, "none")];
  if (!checked.success || hasError(all)) return { value: undefined, problems: all };

  const { studies, ...fields } = checked.data;
  const places = studies.map((_, index) => {
    const place = data.places.get(`studies.${index}`);
    return place && locate(source.lines[place.line - 1] ?? "", place);
  });
  const series = { slug, ...prose, ...fields, entries: studies.map(readEntry), places };
  return { value: series, problems: all };
}

function readEntry(written: string | { flag: string; name?: string; ask?: string }): SeriesEntry {
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
