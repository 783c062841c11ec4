// Floor 6. Every single change of a drawing, ranked, with the colour to change first and what could not be tried.
import type { Cloth } from "../../colour/cloth.ts";
import type { Hex } from "../../colour/colour.ts";
import { parseColour } from "../../colour/colourtext.ts";
import { SwatchBook } from "../../measure/colourcache.ts";
import {
  type Candidate,
  findSubjectShade,
  listCandidates,
  type Subject,
} from "../../measure/options/candidate.ts";
import type { ShadeFinding } from "../../measure/options/kepthue.ts";
import {
  findFirst,
  findMostGained,
  groupByColour,
  type RankedOption,
  type Ranking,
  rankOptions,
} from "../../measure/options/rank.ts";
import {
  listToday,
  measureOptions,
  measureToday,
  type Option,
  type OptionMarks,
  type TodayEdge,
} from "../../measure/options/tryoptions.ts";
import type { Outcome } from "../../problem/problem.ts";
import { type AnalyseOptions, type OpenedDrawing, openDrawing } from "../drawing/opendrawing.ts";
import { findSubjects, type LeftOut, type TriedPart } from "./subject.ts";

/** The nearest shades of one paint that clear all it meets. */
export interface ReportedShade extends ShadeFinding {
  readonly id: string;
  readonly hex: Hex;
  readonly name: string;
}

/** What is known of the options of a drawing. Marks in percent as the drawing is, null where it has no edge. */
export interface OptionsReport {
  readonly file: string;
  /** In flag heights. */
  readonly distance: number;
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
  /** The edge that gains most by the best change of the first of them. */
  readonly mostGained: TodayEdge | null;
  readonly options: readonly RankedOption[];
  readonly vanishing: readonly Option[];
  readonly shades: readonly ReportedShade[];
  /** `palette`: where it has more colours than are tried. */
  readonly leftOut: LeftOut & { readonly palette?: TriedPart };
  /** Where not all flat colours were tried, but only the largest. */
  readonly tried?: TriedPart;
}

/** Most colours of a palette that are tried. */
const mostPalette = 64;

/** Ranks the options of one drawing. Problems: those of openDrawing. */
export async function optionsOf(
  file: string,
  bytes: Uint8Array,
  options: AnalyseOptions,
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
  options: Pick<AnalyseOptions, "cloth" | "palette">,
): OptionsReport {
  const { inspection, viewing } = opened;
  const book = new SwatchBook(options.cloth);
  const today = measureToday(inspection.table, inspection.looks, book);
  const { subjects, own, leftOut, tried: part } = findSubjects(opened);
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
    distance: viewing.distance,
    clarity: today?.clarity ?? null,
    strength: today?.strength ?? null,
    focusClarity: today?.focusClarity ?? null,
    ...chooseFirst(today, ranking.options, subjects, book),
    options: ranking.options,
    vanishing: ranking.vanishing,
    shades: tried.map(({ subject, shade }) => ({ ...identify(subject), ...shade })),
    leftOut: {
      ...leftOut,
      ...(palette.length > mostPalette ? { palette: { paints: mostPalette, of: palette.length } } : {}),
    },
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
): Pick<OptionsReport, "changeFirst" | "mostGained"> {
  const first = today === null ? null : findFirst(groupByColour(ranked), today);
  const [one] = first ?? [];
  if (first === null || one === undefined) return { changeFirst: null, mostGained: null };
  const find = (id: string) => subjects.find(({ table, paint }) => table.paints[paint]?.id === id);
  const subject = find(one.id);
  return {
    changeFirst: first.map(({ id, hex }) => {
      const found = find(id);
      return { id, hex, name: found === undefined ? hex : identify(found).name };
    }),
    mostGained: subject === undefined ? null : findMostGained(one, listToday(subject, book)),
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
