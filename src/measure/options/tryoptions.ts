// Floor 4, step 6b. Every single change of one paint, tried on the edge table: its marks, and what it gains, loses, merges.
import type { Hex } from "../../colour/colour.ts";
import type { List, Rank } from "../../svg/paintnumber.ts";
import {
  listDeciding,
  measureClarity,
  measureClearShare,
  measureFocusClarity,
  measureStrength,
  type WeighedEdge,
} from "../clarity.ts";
import type { SwatchBook } from "../colourcache.ts";
import type { Outcome } from "../comparison.ts";
import { contrastOf, figuresOf, type PaintLook, seenAlong } from "../edgefigure.ts";
import { type EdgeTable, isOne, type TableEdge } from "../edgetable.ts";
import { judgePair, type PairFigures } from "../outcome.ts";
import {
  type Candidate,
  type CandidateKind,
  otherSide,
  type PaintPair,
  pairOf,
  type Subject,
} from "./candidate.ts";
import { type Confusion, findConfusable, findConfusions } from "./confusion.ts";

/** What a flag comes to: percent, clear-edge share 0 to 1; `focusClarity` is null where the focus has no edge. */
export interface OptionMarks {
  readonly clarity: number;
  readonly strength: number;
  readonly focusClarity: number | null;
  readonly clearEdgeShare: number;
}

/** One single change, with the marks as they are after it. */
export interface Option extends OptionMarks {
  /** Id of the paint that is replaced. */
  readonly id: string;
  readonly replace: Hex;
  readonly with: Hex;
  readonly name: string;
  readonly kind: CandidateKind;
  /** Share of the flag's area that changes, 0 to 1. */
  readonly share: number;
  /** Departure: ΔE00 from today's colour; and ΔE*ab, the tolerance between cloths of one colour. */
  readonly deltaE00: number;
  readonly deltaEab: number;
  readonly gained: readonly PaintPair[];
  readonly better: readonly PaintPair[];
  readonly worse: readonly PaintPair[];
  readonly lost: readonly PaintPair[];
  readonly merged: readonly PaintPair[];
  /** The largest part of a charge's outline that merges, 0 to 1. */
  readonly mergedOutline: number;
  /** The flag's own colours that the new one can be taken for, as pairs with the paint that is replaced. */
  readonly confusable: readonly PaintPair[];
  readonly confusions: readonly Confusion[];
}

/** An edge of a paint before any change. Contrast in percent; `weight` is length and focus length, in flag heights. */
export interface TodayEdge {
  readonly pair: PaintPair;
  readonly other: string;
  readonly contrast: number;
  readonly weight: number;
}

/** An edge of the paint that changes, as it is before; `before` is null where the two paints are one in the original. */
interface Touched {
  readonly edge: TableEdge;
  readonly other: PaintLook;
  readonly before: PairFigures | null;
}

/**
 * Measures `subject` with each of `candidates` in its place, in their order, as a comparison would: a merged edge keeps
 * its length and counts as contrast 0, a parted edge enters. Empty where the paint has no edge.
 *
 * Throws RangeError for a candidate that is not `#rrggbb`.
 */
export function measureOptions(
  subject: Subject,
  candidates: readonly Candidate[],
  book: SwatchBook,
): readonly Option[] {
  const touched = listTouched(subject, book);
  if (touched.length === 0) return [];
  const rest = listRest(subject, book);
  return candidates.flatMap((candidate) => measureOption(subject, candidate, touched, rest, book) ?? []);
}

/** Returns the marks of the drawing as it is, or null where it has no edge: what an option is compared with. */
export function measureToday(
  table: EdgeTable,
  looks: List<Rank, PaintLook>,
  book: SwatchBook,
): OptionMarks | null {
  return markEdges(
    table.edges.flatMap((edge) =>
      isOne(table, edge) ? [] : [{ ...edge, contrast: contrastOf(...seenAlong(looks, edge), book).contrast }],
    ),
  );
}

/** Returns the edges of the subject's paint that decide something today, as long as they are, longest first. */
export function listToday(subject: Subject, book: SwatchBook): readonly TodayEdge[] {
  const deciding = new Set(listDeciding(subject.table.edges));
  return listTouched(subject, book).flatMap(({ edge, other, before }) =>
    before === null || !deciding.has(edge)
      ? []
      : [
          {
            pair: pairOf(subject, edge),
            other: other.name,
            contrast: before.contrast,
            weight: edge.length + edge.focusLength,
          },
        ],
  );
}

function listTouched({ table, looks, paint }: Subject, book: SwatchBook): readonly Touched[] {
  return table.edges.flatMap((edge): Touched[] => {
    if (otherSide(edge, paint) === undefined || edge.length === 0) return [];
    const [one, two] = seenAlong(looks, edge);
    const [own, other] = edge.a === paint ? [one, two] : [two, one];
    return [{ edge, other, before: isOne(table, edge) ? null : figuresOf(own, other, book) }];
  });
}

/** The edges that the change does not touch. Two paints that were one, and look it, make no edge. */
function listRest({ table, looks, paint }: Subject, book: SwatchBook): readonly WeighedEdge[] {
  return table.edges.flatMap((edge): WeighedEdge[] => {
    if (otherSide(edge, paint) !== undefined) return [];
    const figures = figuresOf(...seenAlong(looks, edge), book);
    const judged = judgePair(isOne(table, edge) ? null : figures, figures);
    return judged === undefined ? [] : [{ ...edge, contrast: judged.contrast }];
  });
}

/** Undefined where the change leaves no edge at all. */
function measureOption(
  subject: Subject,
  candidate: Candidate,
  touched: readonly Touched[],
  rest: readonly WeighedEdge[],
  book: SwatchBook,
): Option | undefined {
  const { table, looks, paint } = subject;
  const replace = (looks[paint] as PaintLook).hex;
  const judged = judgeCandidate(candidate, touched, book);
  const marks = markEdges([...rest, ...judged]);
  if (marks === null) return undefined;
  const pairsOf = (outcome: Outcome): readonly PaintPair[] =>
    judged.filter((each) => each.outcome === outcome).map((edge) => pairOf(subject, edge));
  return {
    id: table.paints[paint]?.id ?? "",
    replace,
    with: candidate.hex,
    name: candidate.name,
    kind: candidate.kind,
    ...marks,
    share: table.paints[paint]?.share ?? 0,
    deltaE00: book.differenceOf(replace, candidate.hex),
    deltaEab: book.distanceOf(replace, candidate.hex),
    gained: pairsOf("gained"),
    better: pairsOf("better"),
    worse: pairsOf("worse"),
    lost: pairsOf("lost"),
    merged: pairsOf("merged"),
    mergedOutline: findMergedOutline(table, judged),
    confusable: findConfusable(subject, candidate.hex, book),
    confusions: findConfusions(subject, candidate.hex, book),
  };
}

type Judged = TableEdge & WeighedEdge & { readonly outcome: Outcome };

function judgeCandidate(
  { hex }: Candidate,
  touched: readonly Touched[],
  book: SwatchBook,
): readonly Judged[] {
  return touched.flatMap(({ edge, other, before }): Judged[] => {
    const judged = judgePair(before, figuresOf({ hex, uneven: null }, other, book));
    return judged === undefined ? [] : [{ ...edge, ...judged }];
  });
}

/** The largest part, 0 to 1, that any charge loses of its outline. */
function findMergedOutline({ focus }: EdgeTable, judged: readonly Judged[]): number {
  const merged = new Set(judged.flatMap(({ a, b, outcome }) => (outcome === "merged" ? [`${a} ${b}`] : [])));
  if (merged.size === 0) return 0;
  const parts = focus.charges.map((outline) => {
    const all = outline.reduce((sum, { length }) => sum + length, 0);
    const lost = outline.reduce((sum, { a, b, length }) => sum + (merged.has(`${a} ${b}`) ? length : 0), 0);
    return all === 0 ? 0 : lost / all;
  });
  return Math.max(0, ...parts);
}

function markEdges(edges: readonly WeighedEdge[]): OptionMarks | null {
  const [clarity, strength, clearEdgeShare] = [
    measureClarity(edges),
    measureStrength(edges),
    measureClearShare(edges),
  ];
  if (clarity === null || strength === null || clearEdgeShare === null) return null;
  return { clarity, strength, focusClarity: measureFocusClarity(edges), clearEdgeShare };
}
