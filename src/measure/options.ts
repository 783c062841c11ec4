// Floor 4, step 4b. Every single change of one paint, tried on the edge table: what it gains, loses, merges, confuses.
import type { Hex } from "../colour/colour.ts";
import { gradeOf, isClear } from "../colour/contrast.ts";
import { type Candidate, type CandidateKind, otherSide, type Subject } from "./candidate.ts";
import { type Confusion, findConfusable, findConfusions } from "./confusion.ts";
import { deciding, type PaintLook } from "./figures.ts";
import { addEdge, contrastOf, type PaintPair, pairOf, type Sums } from "./pair.ts";
import type { SwatchBook } from "./swatch.ts";
import type { EdgeTable, TableEdge } from "./table.ts";

/** One single change with its figures. Clarity in percent, clear-edge share 0 to 1, as they are after the change. */
export interface Option {
  /** Id of the paint that is replaced. */
  readonly id: string;
  readonly replace: Hex;
  readonly with: Hex;
  readonly name: string;
  readonly kind: CandidateKind;
  readonly clarity: number;
  readonly clearEdgeShare: number;
  /** Departure: ΔE00 from today's colour. */
  readonly deltaE00: number;
  readonly gained: readonly PaintPair[];
  readonly lost: readonly PaintPair[];
  readonly merged: readonly PaintPair[];
  /** Whether edges of the focus are among the merged: the charge, or a part of it, is no longer to be seen. */
  readonly vanishes: boolean;
  /** The flag's own colours that the new one can be taken for, as pairs with the paint that is replaced. */
  readonly confusable: readonly PaintPair[];
  readonly confusions: readonly Confusion[];
}

/** An edge before any change, and how strong it is. `share` of all edge length; contrast in percent. */
export interface TodayEdge {
  readonly other: string;
  readonly contrast: number;
  readonly share: number;
}

/** ΔE00 under which two paints are one to the eye. */
const sameColour = 5;

/** The part of all focus edge length that may merge without anything of note vanishing (our own judgement). */
const unseenMerge = 0.01;

/** An edge of the paint that changes, as it is before. Contrast in percent. */
interface Touched {
  readonly edge: TableEdge;
  readonly other: PaintLook;
  /** Whether the two paints are one in the original: no edge before. */
  readonly isOne: boolean;
  readonly contrast: number;
  readonly deltaE00: number;
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
  const rest = sumRest(subject, book);
  return candidates.flatMap((candidate) => measureOption(subject, candidate, touched, rest, book) ?? []);
}

/** Returns the clarity of the drawing as it is, in percent, or null where it has no edge: what an option gains on. */
export function measureToday(table: EdgeTable, looks: readonly PaintLook[], book: SwatchBook): number | null {
  const sums: Sums = { weight: 0, seen: 0, length: 0, clear: 0 };
  for (const edge of table.edges) {
    if (isOne(table, edge)) continue;
    addEdge(sums, edge, contrastOf(looks[edge.a] as PaintLook, looks[edge.b] as PaintLook, book));
  }
  return sums.weight === 0 ? null : 100 * (sums.seen / sums.weight);
}

/** Returns the edges of the subject's paint that decide something today, weakest first. */
export function listWeakest(subject: Subject, book: SwatchBook): readonly TodayEdge[] {
  const all = subject.table.edges.reduce((sum, edge) => sum + edge.length, 0);
  return listTouched(subject, book)
    .filter((touched) => !touched.isOne && touched.edge.length >= deciding * all)
    .map(({ edge, other, contrast }) => ({
      other: other.name,
      contrast,
      share: edge.length / all,
    }))
    .sort((x, y) => x.contrast - y.contrast);
}

function listTouched({ table, looks, paint }: Subject, book: SwatchBook): readonly Touched[] {
  const own = looks[paint] as PaintLook;
  return table.edges.flatMap((edge) => {
    const at = otherSide(edge, paint);
    const other = at === undefined ? undefined : looks[at];
    if (other === undefined || edge.length === 0) return [];
    const contrast = contrastOf(own, other, book);
    return [
      {
        edge,
        other,
        isOne: isOne(table, edge),
        contrast,
        deltaE00: book.differenceOf(own.hex, other.hex),
      },
    ];
  });
}

/** Sums up the edges that the change does not touch. Two paints that were one, and look it, make no edge. */
function sumRest({ table, looks, paint }: Subject, book: SwatchBook): Sums {
  const sums: Sums = { weight: 0, seen: 0, length: 0, clear: 0 };
  for (const edge of table.edges) {
    if (otherSide(edge, paint) !== undefined) continue;
    const one = looks[edge.a] as PaintLook;
    const other = looks[edge.b] as PaintLook;
    if (isOne(table, edge) && book.differenceOf(one.hex, other.hex) < sameColour) continue;
    addEdge(sums, edge, contrastOf(one, other, book));
  }
  return sums;
}

interface Effect {
  readonly sums: Sums;
  readonly gained: PaintPair[];
  readonly lost: PaintPair[];
  readonly merged: PaintPair[];
  mergedFocus: number;
}

/** Undefined where the change leaves no edge at all. */
function measureOption(
  subject: Subject,
  candidate: Candidate,
  touched: readonly Touched[],
  rest: Sums,
  book: SwatchBook,
): Option | undefined {
  const { table, looks, paint } = subject;
  const replace = (looks[paint] as PaintLook).hex;
  const { sums, mergedFocus, gained, lost, merged } = applyCandidate(subject, candidate, touched, rest, book);
  if (sums.weight === 0) return undefined;
  const focusLength = table.edges.reduce((sum, edge) => sum + edge.focusLength, 0);
  return {
    id: table.paints[paint]?.id ?? "",
    replace,
    with: candidate.hex,
    name: candidate.name,
    kind: candidate.kind,
    clarity: 100 * (sums.seen / sums.weight),
    clearEdgeShare: sums.clear / sums.length,
    deltaE00: book.differenceOf(replace, candidate.hex),
    gained,
    lost,
    merged,
    vanishes: mergedFocus > unseenMerge * focusLength,
    confusable: findConfusable(subject, candidate.hex, book),
    confusions: findConfusions(subject, candidate.hex, book),
  };
}

function applyCandidate(
  { table, looks }: Subject,
  candidate: Candidate,
  touched: readonly Touched[],
  rest: Sums,
  book: SwatchBook,
): Effect {
  const effect: Effect = {
    sums: { ...rest },
    gained: [],
    lost: [],
    merged: [],
    mergedFocus: 0,
  };
  const next: PaintLook = {
    hex: candidate.hex,
    name: candidate.name,
    uneven: null,
  };
  for (const { edge, other, isOne: wasOne, contrast, deltaE00 } of touched) {
    const isSame = book.differenceOf(next.hex, other.hex) < sameColour;
    if (wasOne && isSame) continue;
    const isMerged = !wasOne && isSame && deltaE00 >= sameColour;
    const after = isMerged ? 0 : contrastOf(next, other, book);
    addEdge(effect.sums, edge, after);
    const wasClear = isClear(gradeOf(contrast));
    const isClearNow = isClear(gradeOf(after));
    if (isMerged) {
      effect.merged.push(pairOf(table, looks, edge));
      effect.mergedFocus += edge.focusLength;
    } else if (!wasOne && wasClear !== isClearNow) {
      effect[isClearNow ? "gained" : "lost"].push(pairOf(table, looks, edge));
    }
  }
  return effect;
}

function isOne(table: EdgeTable, edge: TableEdge): boolean {
  return table.paints[edge.a]?.group === table.paints[edge.b]?.group;
}
