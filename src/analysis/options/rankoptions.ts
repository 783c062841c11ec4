// Floor 6. Every single change of a drawing, ranked, with the colour to change first and what could not be tried.
import type { Cloth } from "../../colour/cloth.ts";
import type { Hex } from "../../colour/colour.ts";
import { nameColour } from "../../colour/colourname.ts";
import { parseColour } from "../../colour/colourtext.ts";
import {
  type Candidate,
  findSubjectShade,
  listCandidates,
  type Subject,
} from "../../measure/options/candidate.ts";
import { explainFirst, explainNone } from "../../measure/options/firstreason.ts";
import type { Shade, ShadeFinding } from "../../measure/options/kepthue.ts";
import { describeNoShade } from "../../measure/options/noshade.ts";
import {
  findFirst,
  groupByColour,
  type RankedOption,
  type Ranking,
  rankOptions,
} from "../../measure/options/rank.ts";
import { SwatchBook } from "../../measure/options/swatchbook.ts";
import {
  listToday,
  measureOptions,
  measureToday,
  type Option,
  type OptionMarks,
} from "../../measure/options/tryoptions.ts";
import type { Outcome } from "../../problem/problem.ts";
import { type OpenedDrawing, type OpenOptions, openDrawing } from "../drawing/opendrawing.ts";
import { findSubjects, type TriedPart } from "./subject.ts";

export interface TryOptions extends OpenOptions {
  readonly cloth: Cloth;
  /** Name → CSS colour. What is no opaque colour is passed over: the gallery's reader reports it. */
  readonly palette: ReadonlyMap<string, string>;
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

/** What `try FILE.svg --json` prints. Marks in percent as the drawing is, null where it has no edge. */
export interface OptionsReport {
  readonly file: string;
  readonly clarity: number | null;
  readonly strength: number | null;
  readonly focusClarity: number | null;
  readonly changeFirst:
    | readonly {
        readonly id: string;
        readonly hex: Hex;
        readonly name: string;
      }[]
    | null;
  /** Why these, or why none: a sentence or two. */
  readonly reason: string;
  readonly options: readonly RankedOption[];
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
  options: Pick<TryOptions, "cloth" | "palette">,
): OptionsReport {
  const { inspection } = opened;
  const book = new SwatchBook(options.cloth);
  const today = measureToday(inspection.table, inspection.looks, book);
  const { subjects, own, notes, tried: part } = findSubjects(opened);
  const palette = readPalette(options.palette);
  const tried = subjects.map((subject) => {
    const shade = findSubjectShade(subject, options.cloth, book);
    return {
      subject,
      shade,
      options: measureOptions(
        subject,
        listCandidates(subject, palette.slice(0, mostPalette), own, shade, book),
        book,
      ),
    };
  });
  const ranking = rankOptions(tried.flatMap((one) => one.options));
  return {
    file: opened.drawing.file,
    clarity: today?.clarity ?? null,
    strength: today?.strength ?? null,
    focusClarity: today?.focusClarity ?? null,
    ...chooseFirst(today, ranking.options, subjects, book),
    options: ranking.options,
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

/**
 * Measures changes of whole paints as options are measured, without a place among them. One of a paint that is none of
 * those that options change is left out.
 */
export function measureChanges(
  opened: OpenedDrawing,
  changes: readonly { readonly replace: string; readonly with: Hex; readonly name: string }[],
  cloth: Cloth,
): Ranking {
  const book = new SwatchBook(cloth);
  const { subjects } = findSubjects(opened);
  return rankOptions(
    changes.flatMap((change) => {
      const subject = subjects.find(({ looks, paint }) => looks[paint]?.hex === change.replace);
      const candidate: Candidate = { hex: change.with, name: change.name, kind: "palette" };
      return subject === undefined ? [] : measureOptions(subject, [candidate], book);
    }),
  );
}

/** Returns the opaque colours of a palette, in its order. */
export function readPalette(palette: ReadonlyMap<string, string>): readonly Candidate[] {
  return [...palette].flatMap(([name, text]): readonly Candidate[] => {
    const colour = parseColour(text);
    return colour === undefined || colour.alpha01 < 1 ? [] : [{ hex: colour.hex, name, kind: "palette" }];
  });
}

function chooseFirst(
  today: OptionMarks | null,
  ranked: readonly RankedOption[],
  subjects: readonly Subject[],
  book: SwatchBook,
): Pick<OptionsReport, "changeFirst" | "reason"> {
  const first = today === null ? null : findFirst(groupByColour(ranked), today);
  if (today === null || first === null)
    return { changeFirst: null, reason: explainNone(today, subjects.length, ranked.length) };
  const paints = subjects.map((subject) => ({ ...identify(subject), edges: listToday(subject, book) }));
  const nameOf = (id: string, hex: Hex): string => paints.find((paint) => paint.id === id)?.name ?? hex;
  return {
    changeFirst: first.map(({ id, hex }) => ({ id, hex, name: nameOf(id, hex) })),
    reason: explainFirst(first, paints, today),
  };
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
