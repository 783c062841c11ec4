// Floor 6. How to refer to a study: as plain text and as BibTeX, with the stamp of what was measured.
import type { StudyResult } from "../../study/result.ts";
import type { Gallery } from "../../study/study.ts";
import { formatCanonical } from "../address.ts";
import type { Format } from "./format.ts";
import { stampOf } from "./stamp.ts";
import { formatStudyPath } from "./status.ts";

export interface ReferView {
  readonly stamp: string;
  readonly text: string;
  readonly bibtex: string;
  /** The address with the stamp in it. */
  readonly stamped: string;
}

/** Both forms for one study. */
export function presentRefer(result: StudyResult, gallery: Gallery, format: Format): ReferView {
  const { study } = result;
  const path = formatStudyPath(study.slug);
  const stamp = stampOf(result, gallery);
  const stamped = `${formatCanonical(gallery.address, path) ?? path}?stamp=${stamp}`;
  const authors = study.authors.length === 0 ? "" : `${format.list(study.authors)}: `;
  const date = study.date === undefined ? "" : `, ${format.date(study.date)}`;
  return {
    stamp,
    stamped,
    text: `${authors}“${study.title}”, unofficial flag redesign study. ${gallery.title}${date}. ${stamped}`,
    bibtex: formatBibtex(result, gallery, stamp, stamped),
  };
}

function formatBibtex({ study }: StudyResult, gallery: Gallery, stamp: string, stamped: string): string {
  const fields: readonly (readonly [string, string])[] = [
    ["title", `{${escapeTex(study.title)}}`],
    ...(study.authors.length === 0 ? [] : [["author", study.authors.map(nameTex).join(" and ")] as const]),
    ...(study.date === undefined ? [] : [["year", study.date.slice(0, 4)] as const]),
    ["howpublished", `\\url{${stamped}}`],
    ["note", `Unofficial flag redesign study, ${escapeTex(gallery.title)}, stamp ${stamp}`],
  ];
  const lines = fields.map(([name, value]) => `  ${name} = {${value}},`);
  return [`@misc{${study.slug}-${stamp},`, ...lines, "}"].join("\n");
}

/** A name in which a comma or the word “and” would be read as a border between names stands in braces. */
function nameTex(name: string): string {
  const escaped = escapeTex(name);
  return /,|\band\b/.test(name) ? `{${escaped}}` : escaped;
}

const texLetters: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "~": "\\textasciitilde{}",
  "^": "\\textasciicircum{}",
};

/** Source: the ten characters that TeX reads as commands; D. E. Knuth, The TeXbook, 1984, chapter 7. */
function escapeTex(text: string): string {
  return text.replace(/[\\{}$&#%_^~]/g, (letter) => texLetters[letter] ?? `\\${letter}`);
}
