// Floor 5. Every single change of a drawing, ranked, with the colour to change first and what could not be tried.
import type { Cloth } from "../colour/cloth.ts";
import type { Hex } from "../colour/colour.ts";
import { nameColour } from "../colour/name.ts";
import { parseColour } from "../colour/parse.ts";
import { type Candidate, findSubjectShade, listCandidates, type Subject } from "../measure/candidate.ts";
import { describeNoShade } from "../measure/noshade.ts";
import { listWeakest, measureOptions, measureToday, type Option } from "../measure/options.ts";
import { findFirst, type RankedOption, rankOptions } from "../measure/rank.ts";
import { explainFirst, explainNone } from "../measure/reason.ts";
import type { Shade, ShadeFinding } from "../measure/shade.ts";
import { SwatchBook } from "../measure/swatch.ts";
import type { Outcome } from "../problem/problem.ts";
import { recolour } from "../svg/recolour.ts";
import { type OpenedDrawing, type OpenOptions, openDrawing, writeRedesign } from "./open.ts";
import { findSubjects, type TriedPart } from "./subject.ts";

export interface TryOptions extends OpenOptions {
  readonly cloth: Cloth;
  /** Name → CSS colour. What is no opaque colour is passed over: the gallery's reader reports it. */
  readonly palette: ReadonlyMap<string, string>;
  /** How many of the best options come with their redesign as SVG text; default none. */
  readonly draw?: number;
}

/** A ranked option; `drawing` is its redesign as SVG text, where it was asked for. */
export interface ReportedOption extends RankedOption {
  readonly drawing?: string;
}

/** The nearest shades of one paint that clear all it meets. `reason` says why there is none. */
export interface ReportedShade {
  readonly id: string;
  readonly hex: Hex;
  readonly name: string;
  readonly isClear: boolean;
  readonly lighter: Shade | null;
  readonly darker: Shade | null;
  readonly reason?: string;
}

/** What `try FILE.svg --json` prints. `clarity` in percent as the drawing is, null where it has no edge. */
export interface OptionsReport {
  readonly file: string;
  readonly clarity: number | null;
  readonly changeFirst:
    | readonly {
        readonly id: string;
        readonly hex: Hex;
        readonly name: string;
      }[]
    | null;
  /** Why that one, or why none: one sentence. */
  readonly reason: string;
  readonly options: readonly ReportedOption[];
  readonly vanishing: readonly Option[];
  readonly shades: readonly ReportedShade[];
  /** What was left out, or measured in part, in sentences. */
  readonly notes: readonly string[];
  /** Where not all flat colours were tried, but only the largest. */
  readonly tried?: TriedPart;
}

/** Most colours of a palette that are tried. */
const mostPalette = 64;

/** Ranks the options of one drawing. Problems: those of openDrawing. */
export async function optionsOf(
  file: string,
  bytes: Uint8Array,
  options: TryOptions,
): Promise<Outcome<OptionsReport>> {
  const opened = await openDrawing(file, bytes, options);
  if (opened.value === undefined) return { value: undefined, problems: opened.problems };
  return {
    value: rankOpened(opened.value, options),
    problems: opened.problems,
  };
}

/** Ranks the options of a drawing that is open. */
export function rankOpened(
  opened: OpenedDrawing,
  options: Omit<TryOptions, keyof OpenOptions>,
): OptionsReport {
  const { inspection } = opened;
  const book = new SwatchBook(options.cloth);
  const clarity = measureToday(inspection.table, inspection.looks, book);
  const { subjects, own, notes, tried: part } = findSubjects(opened);
  const palette = readPalette(options.palette);
  const tried = subjects.map((subject) => {
    const shade = findSubjectShade(subject, options.cloth, book);
    return {
      subject,
      shade,
      options: measureOptions(
        subject,
        listCandidates(subject, palette.slice(0, mostPalette), own, shade),
        book,
      ),
    };
  });
  const ranking = rankOptions(tried.flatMap((one) => one.options));
  return {
    file: opened.drawing.file,
    clarity,
    ...chooseFirst(clarity, ranking.options, subjects, book),
    options: ranking.options.map((option, index) => ({
      ...option,
      ...(index < (options.draw ?? 0) ? drawOption(opened, option) : {}),
    })),
    vanishing: ranking.vanishing,
    shades: tried.map(({ subject, shade }) => reportShade(subject, shade)),
    notes: [
      ...notes,
      ...(palette.length > mostPalette
        ? [`The palette has ${palette.length} colours: the first ${mostPalette} were tried.`]
        : []),
    ],
    ...(part === undefined ? {} : { tried: part }),
  };
}

function readPalette(palette: ReadonlyMap<string, string>): readonly Candidate[] {
  return [...palette].flatMap(([name, text]): readonly Candidate[] => {
    const colour = parseColour(text);
    return colour === undefined || colour.alpha01 < 1 ? [] : [{ hex: colour.hex, name, kind: "palette" }];
  });
}

function chooseFirst(
  clarity: number | null,
  ranked: readonly RankedOption[],
  subjects: readonly Subject[],
  book: SwatchBook,
): Pick<OptionsReport, "changeFirst" | "reason"> {
  const first = clarity === null ? null : findFirst(ranked, clarity);
  if (clarity === null || first === null)
    return {
      changeFirst: null,
      reason: explainNone(clarity, subjects.length, ranked.length),
    };
  const paints = subjects.map((subject) => ({
    ...identify(subject),
    edges: listWeakest(subject, book),
  }));
  const changeFirst = first.map(({ id, hex }) => ({
    id,
    hex,
    name: paints.find((paint) => paint.id === id)?.name ?? hex,
  }));
  return { changeFirst, reason: explainFirst(first, paints, ranked, clarity) };
}

function identify({ table, looks, paint }: Subject): {
  readonly id: string;
  readonly hex: Hex;
  readonly name: string;
} {
  const hex = looks[paint]?.hex ?? "#000000";
  return {
    id: table.paints[paint]?.id ?? "",
    hex,
    name: looks[paint]?.name ?? hex,
  };
}

function reportShade(subject: Subject, shade: ShadeFinding): ReportedShade {
  const paint = identify(subject);
  const { isClear, lighter, darker } = shade;
  const reason = describeNoShade(nameColour(paint.hex), shade);
  return {
    ...paint,
    isClear,
    lighter,
    darker,
    ...(reason === undefined ? {} : { reason }),
  };
}

/** Changes the colour everywhere, so no shape can stand in the way. */
function drawOption({ resolved }: OpenedDrawing, option: Option): { readonly drawing?: string } {
  const { value } = recolour(resolved, {
    replace: option.replace,
    with: option.with,
  });
  return value === undefined ? {} : { drawing: writeRedesign(value) };
}
