// Floor 8. How to refer to a study or to one of its edges: as plain text and as BibTeX, with the stamp of what was measured.
import type { StudyResult } from "../../analysis/result.ts";
import type { Series } from "../../content/series/series.ts";
import type { Gallery, Study } from "../../content/study/study.ts";
import { isolate, withoutMarks } from "../../words/direction.ts";
import type { Format } from "../../words/format.ts";
import { capitalise } from "../../words/phrase.ts";
import { stampOf } from "../../words/studystamp.ts";
import { formatTitle } from "../../words/title.ts";
import { formatCanonical } from "../address.ts";
import { formatStudyPath } from "../status.ts";

/** What is cited, in both forms. */
export interface CitationView {
  readonly text: string;
  readonly bibtex: string;
}

export interface ReferView extends CitationView {
  readonly stamp: string;
  /** The address with the stamp in it; without its host where the gallery has no address. */
  readonly stamped: string;
  /** The same as a link of the page. */
  readonly link: string;
}

/** What is referred to, where it is less than a study: its title on its own page, its site path, and what it is. */
export interface ReferredPart {
  readonly title: string;
  readonly path: string;
  readonly kind: "edge";
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
  const whole = formatTitle(study, format);
  const title =
    part === undefined ? whole : format.say("picture.within", { title: part.title, study: whole });
  const kind = format.say(part === undefined ? "refer.study" : "refer.edge");
  return {
    stamp,
    stamped,
    link: canonical === undefined ? `?stamp=${stamp}` : stamped,
    ...cite(study, { title, kind, path, stamp, address: stamped }, gallery, format),
  };
}

/** Both forms for a series, which has no stamp: its studies have theirs. */
export function presentSeriesRefer(series: Series, gallery: Gallery, format: Format): CitationView {
  const path = `/series/${series.slug}/`;
  const address = formatCanonical(gallery.address, path) ?? path;
  const kind = format.say("refer.series");
  return cite(series, { title: series.title, kind, path, address }, gallery, format);
}

function cite(work: Work, cited: Cited, gallery: Gallery, format: Format): CitationView {
  const { kind, address } = cited;
  const { say } = format;
  const { authors, date } = work;
  const values = { title: isolate(cited.title), kind, gallery: isolate(gallery.title), address };
  const said =
    date === undefined
      ? say("refer.cited", values)
      : say("refer.citedOn", { ...values, date: isolate(format.date(date)) });
  return {
    text: authors.length === 0 ? said : say("list.colon", { name: isolate(format.list(authors)), said }),
    bibtex: formatBibtex(work, cited, gallery, format),
  };
}

type Work = Pick<Study, "authors" | "date">;

interface Cited {
  readonly title: string;
  readonly kind: string;
  readonly path: string;
  readonly stamp?: string;
  readonly address: string;
}

function formatBibtex(work: Work, cited: Cited, gallery: Gallery, { say }: Format): string {
  const { title, kind, path, stamp, address } = cited;
  const values = { kind, gallery: gallery.title };
  const note =
    stamp === undefined ? say("refer.note", values) : say("refer.noteStamped", { ...values, stamp });
  const fields: readonly (readonly [string, string])[] = [
    ["title", `{${escapeTex(withoutMarks(title))}}`],
    ...(work.authors.length === 0 ? [] : [["author", work.authors.map(nameTex).join(" and ")] as const]),
    ...(work.date === undefined ? [] : [["year", work.date.slice(0, 4)] as const]),
    // A brace in an address would end the field.
    ["howpublished", `\\url{${address.replace(/[{}\\]/g, encodeURIComponent)}}`],
    ["note", escapeTex(capitalise(withoutMarks(note)))],
  ];
  const lines = fields.map(([name, value]) => `  ${name} = {${value}},`);
  return [`@misc{${[keyOf(path), ...(stamp === undefined ? [] : [stamp])].join("-")},`, ...lines, "}"].join(
    "\n",
  );
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
