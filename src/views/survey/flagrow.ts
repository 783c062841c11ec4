// Floor 8. One flag as a row of the survey: what it is called, its numbers with what they are sorted by, its drawing.

import type { GalleryResult } from "../../analysis/result.ts";
import type { SurveyEntry } from "../../analysis/survey/surveyentry.ts";
import type { SurveyedFlag } from "../../analysis/survey/surveyflags.ts";
import { proposeSlug } from "../../content/study/slug.ts";
import type { Format } from "../../words/format.ts";
import { listLastsTo } from "../../words/fromafar.ts";
import type { Swatch } from "../../words/paintname.ts";
import type { Linker } from "../address.ts";
import { formatFlagPath, type RivalFlag, sayNominated } from "../flag/findrivals.ts";
import { type Plate, presentPlate } from "../plate.ts";
import { foldWords } from "../searchwords.ts";
import { formatStudyPath } from "../status.ts";
import { anchorOf, nameEntry, placeDrawing } from "./flagname.ts";

/** A text with what it is sorted by; nothing where there is none, which comes last. */
interface Cell {
  readonly text: string;
  readonly value: string;
}

export interface FlagRow {
  readonly id: string;
  readonly name: string;
  /** Its drawing in the content folder. */
  readonly file: string;
  /** Slug of a study of it that could be begun; undefined where there is one. */
  readonly slug: string | undefined;
  readonly plate: Plate;
  readonly studies: readonly { readonly slug: string; readonly title: string; readonly address: string }[];
  /** How many more there are than are named; undefined where these are all. */
  readonly moreStudies: string | undefined;
  readonly clarity: Cell;
  readonly focus: Cell;
  readonly lasts: Cell;
  readonly weakest: (Cell & { readonly swatches: readonly [Swatch, Swatch] }) | undefined;
  readonly first: readonly Swatch[];
  readonly best: (Cell & { readonly swatches: readonly [Swatch, Swatch] }) | undefined;
  /** Who nominated it and why, with the page that says so. */
  readonly nominated: { readonly said: readonly string[]; readonly address: string } | undefined;
  /** All the words it can be found by, folded, parted by spaces. */
  readonly words: string;
}

/** Studies that a row names. Our own judgement: more hide the flag. */
const mostStudies = 24;

/** File of a flag → what its page is of. */
type PagedFlags = ReadonlyMap<string, RivalFlag>;

/** The row of a flag, for the page that `link` writes addresses for. */
export function presentFlagRow(
  entry: SurveyEntry,
  { studies: results, flags }: Pick<GalleryResult, "studies"> & { readonly flags?: PagedFlags },
  link: Linker,
  format: Format,
): FlagRow {
  const { flag, measure } = entry;
  const page = flags?.get(flag.file);
  const name = nameEntry(entry, results);
  const studies = entry.slugs.slice(0, mostStudies).map((slug) => ({
    slug,
    title: results.find(({ study }) => study.slug === slug)?.study.title ?? slug,
    address: link(formatStudyPath(slug)),
  }));
  const weakest = presentWeakest(entry, format);
  const best = presentBest(flag, format);
  const first = (flag.changeFirst ?? []).map(({ hex, name: text }) => ({ hex, name: text }));
  const names = measure.colours.map((colour) => colour.name);
  return {
    id: anchorOf(entry),
    name,
    file: flag.file,
    slug: studies.length > 0 ? undefined : (proposeSlug(name) ?? "my-flag"),
    plate: presentPlate(name, link(placeDrawing(entry)), measure, format),
    studies,
    moreStudies:
      entry.slugs.length > mostStudies
        ? format.say("front.more", { count: entry.slugs.length - mostStudies })
        : undefined,
    clarity: { text: format.percent(flag.clarity), value: sortValue(flag.clarity) },
    focus: { text: sayFocus(flag, format), value: sortValue(flag.focus.clarity) },
    lasts: { text: listLastsTo(flag.focus, format), value: sortValue(lastingOf(flag)) },
    weakest,
    first,
    best,
    nominated: page && { said: sayNominated(page, format), address: link(formatFlagPath(page.slug)) },
    words: foldWords([name, flag.file, ...names, ...studies.map(({ title }) => title)].join(" ")).join(" "),
  };
}

function presentWeakest({ flag, measure }: SurveyEntry, format: Format): FlagRow["weakest"] {
  const { weakestEdge: edge } = flag;
  if (edge === null) return undefined;
  const swatchOf = (id: string, name: string): Swatch => ({
    hex: measure.colours.find((colour) => colour.id === id)?.hex ?? "#000000",
    name,
  });
  return {
    text: format.contrast(edge.contrast),
    value: sortValue(edge.contrast),
    swatches: [swatchOf(edge.a, edge.names[0]), swatchOf(edge.b, edge.names[1])],
  };
}

function presentBest({ bestOption: best, changeFirst }: SurveyedFlag, format: Format): FlagRow["best"] {
  if (best === null) return undefined;
  const replaced = changeFirst?.find(({ id }) => id === best.id)?.name ?? best.replace;
  return {
    text: format.percent(best.clarity),
    value: sortValue(best.clarity),
    swatches: [
      { hex: best.replace, name: replaced },
      { hex: best.with, name: best.name },
    ],
  };
}

function sayFocus({ focus }: SurveyedFlag, format: Format): string {
  return focus.source === "none" ? format.say("surveyTable.noEmblem") : format.percent(focus.clarity);
}

/** A focus that lasts to no step comes before all others; without a focus there is no number. */
function lastingOf({ focus }: SurveyedFlag): number | null {
  return focus.source === "none" ? null : (focus.lastsTo ?? 0);
}

function sortValue(value: number | null): string {
  return value === null ? "" : String(Math.round(value * 10_000) / 10_000);
}
