// Floor 4, step 6a. What a paint may be replaced by: the palette, the flag's own other colours, its own hue in another shade.
import type { Cloth } from "../../colour/cloth.ts";
import type { Hex } from "../../colour/colour.ts";
import { nameReplacement } from "../../colour/colourname.ts";
import type { List, Rank } from "../../svg/paintnumber.ts";
import { listDeciding } from "../clarity.ts";
import type { SwatchBook } from "../colourcache.ts";
import { endsOf, type PaintLook } from "../edgefigure.ts";
import type { EdgeTable, TableEdge } from "../edgetable.ts";
import { colourLimits } from "../limit.ts";
import { findShade, type Neighbour, type ShadeFinding } from "./kepthue.ts";

/** One paint that may be replaced, with the table on which that is measured. */
export interface Subject {
  readonly table: EdgeTable;
  readonly looks: List<Rank, PaintLook>;
  readonly paint: Rank;
}

export type CandidateKind = "palette" | "own" | "keptHue";

/** A colour to try. `name` is what it is called as a replacement. */
export interface Candidate {
  readonly hex: Hex;
  readonly name: string;
  readonly kind: CandidateKind;
}

/**
 * Returns what `subject` may be replaced by, in the order in which equals are listed: `palette`, `own`, the kept hue.
 * What is within ΔE*ab 10 of the paint's own hex is left out, and a hex that comes twice stays where it comes first.
 */
export function listCandidates(
  subject: Subject,
  palette: readonly Candidate[],
  own: readonly Candidate[],
  { least }: ShadeFinding,
  book: SwatchBook,
): readonly Candidate[] {
  const today = (subject.looks[subject.paint] as PaintLook).hex;
  const kept = least === null ? [] : [{ hex: least.hex, name: undefined, kind: "keptHue" as const }];
  const found = new Map<Hex, Candidate>();
  for (const { name, ...candidate } of [...palette, ...own, ...kept])
    if (!found.has(candidate.hex) && book.distanceOf(today, candidate.hex) >= colourLimits.noChange)
      found.set(candidate.hex, {
        ...candidate,
        name: nameIn(subject, candidate.hex, [...found.values()], name),
      });
  return [...found.values()];
}

/** Finds the shades of a paint that clear every deciding edge it has. */
export function findSubjectShade(
  { table, looks, paint }: Subject,
  cloth: Cloth,
  book: SwatchBook,
): ShadeFinding {
  const neighbours: Neighbour[] = [];
  for (const edge of listDeciding(table.edges)) {
    const other = otherSide(edge, paint);
    if (other === undefined || table.paints[other]?.group === table.paints[paint]?.group) continue;
    const look = looks[other] as PaintLook;
    neighbours.push({
      name: look.name,
      reflectances: endsOf(look).map((hex) => book.reflectanceOf(hex)),
    });
  }
  return findShade((looks[paint] as PaintLook).hex, neighbours, cloth);
}

/** Two paints of the original, by id and by name, the larger first. */
export interface PaintPair {
  readonly a: string;
  readonly b: string;
  readonly names: readonly [string, string];
}

/** Returns the pair with the ranks `a` and `b`. */
export function pairOf(
  { table, looks }: Pick<Subject, "table" | "looks">,
  { a, b }: Pick<TableEdge, "a" | "b">,
): PaintPair {
  const idOf = (rank: Rank): string => table.paints[rank]?.id ?? "";
  return { a: idOf(a), b: idOf(b), names: [looks[a]?.name ?? "", looks[b]?.name ?? ""] };
}

/** Returns the paint on the other side of `edge`, or undefined where `paint` is on neither. */
export function otherSide(edge: TableEdge, paint: Rank): Rank | undefined {
  if (edge.a === paint) return edge.b;
  return edge.b === paint ? edge.a : undefined;
}

/** What `hex` is called in the place of the subject's paint: unlike the flag's other colours, and unlike `offered`. */
function nameIn({ looks, paint }: Subject, hex: Hex, offered: readonly Candidate[], called?: string): string {
  return nameReplacement(hex, looks[paint] as PaintLook, [...looks, ...offered], called);
}
