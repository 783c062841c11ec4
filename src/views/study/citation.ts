// Floor 8. How to refer to a study or to one of its edges: as plain text and as BibTeX, with the stamp of what was measured.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import { isolate } from "../../words/direction.ts";
import type { Format } from "../../words/format.ts";
import { stampOf } from "../../words/studystamp.ts";
import { formatTitle } from "../../words/title.ts";
import { formatCanonical } from "../address.ts";
import { formatStudyPath } from "../status.ts";

export interface ReferView {
  readonly stamp: string;
  readonly text: string;
  readonly bibtex: string;
  /** The address with the stamp in it; without its host where the gallery has no address. */
  readonly stamped: string;
  /** The same as a link of the page. */
  readonly link: string;
}

/** What is referred to, where it is less than a study: its title on its own page, its site path, and what it is. */
export interface ReferredPart {
  readonly title: string;
  readonly path: string;
  readonly kind: string;
}

/** Both forms for one study, or for a part of it. */
export function presentRefer(
  result: StudyResult,
  gallery: Gallery,
  format: Format,
  part?: ReferredPart,
): ReferView {
  const { study } = result;
  const path = part?.path ?? formatStudyPath(study.slug);
  const stamp = stampOf(result, gallery);
  const canonical = formatCanonical(gallery.address, path);
  const stamped = `${canonical ?? path}?stamp=${stamp}`;
  const whole = formatTitle(study);
  const title = part === undefined ? whole : `${part.title}, in ${whole}`;
  const kind = part === undefined ? "unofficial flag redesign study" : part.kind;
  const authors = study.authors.length === 0 ? "" : `${isolate(format.list(study.authors))}: `;
  const date = study.date === undefined ? "" : `, ${isolate(format.date(study.date))}`;
  return {
    stamp,
    stamped,
    link: canonical === undefined ? `?stamp=${stamp}` : stamped,
    text: `${authors}“${isolate(title)}”, ${kind}. ${isolate(gallery.title)}${date}. ${stamped}`,
    bibtex: formatBibtex(result, { title, kind, path, stamp, stamped }, gallery),
  };
}

interface Cited {
  readonly title: string;
  readonly kind: string;
  readonly path: string;
  readonly stamp: string;
  readonly stamped: string;
}

function formatBibtex({ study }: StudyResult, cited: Cited, gallery: Gallery): string {
  const { title, kind, path, stamp, stamped } = cited;
  const note = `${kind.slice(0, 1).toUpperCase()}${kind.slice(1)}, ${gallery.title}, stamp ${stamp}`;
  const fields: readonly (readonly [string, string])[] = [
    ["title", `{${escapeTex(title)}}`],
    ...(study.authors.length === 0 ? [] : [["author", study.authors.map(nameTex).join(" and ")] as const]),
    ...(study.date === undefined ? [] : [["year", study.date.slice(0, 4)] as const]),
    // A brace in an address would end the field.
    ["howpublished", `\\url{${stamped.replace(/[{}\\]/g, encodeURIComponent)}}`],
    ["note", escapeTex(note)],
  ];
  const lines = fields.map(([name, value]) => `  ${name} = {${value}},`);
  return [`@misc{${keyOf(path)}-${stamp},`, ...lines, "}"].join("\n");
}

/** `kedgeport`, or `kedgeport-000000-15244a` for one of its edges. */
function keyOf(path: string): string {
  return path
    .split("/")
    .filter((step) => step !== "" && step !== "studies" && step !== "edges")
    .join("-");
}

/** A name in which a comma or the word “and” would be read as a border between names stands in braces. */
function nameTex(name: string): string {
  const escaped = escapeTex(name);
  return /,|\band\b/i.test(name) ? `{${escaped}}` : escaped;
}

const texLetters: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "~": "\\textasciitilde{}",
  "^": "\\textasciicircum{}",
  // BibTeX counts braces, those behind a backslash too.
  "{": "\\textbraceleft{}",
  "}": "\\textbraceright{}",
};

/** Source: the ten characters that TeX reads as commands; D. E. Knuth, The TeXbook, 1984, chapter 7. */
function escapeTex(text: string): string {
  return text.replace(/[\\{}$&#%_^~]/g, (letter) => texLetters[letter] ?? `\\${letter}`);
}
