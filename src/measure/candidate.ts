// Floor 4, step 4a. What a paint may be replaced by: the palette, the flag's own other colours, the least shade that clears.
import type { Cloth } from "../colour/cloth.ts";
import type { Hex } from "../colour/colour.ts";
import { nameReplacement } from "../colour/name.ts";
import { deciding, type PaintLook } from "./figures.ts";
import { endsOf } from "./pair.ts";
import { findShade, type Neighbour, type ShadeFinding } from "./shade.ts";
import type { SwatchBook } from "./swatch.ts";
import type { EdgeTable, TableEdge } from "./table.ts";

/** One paint that may be replaced, with the table on which that is measured; `paint` is its index there. */
export interface Subject {
  readonly table: EdgeTable;
  readonly looks: readonly PaintLook[];
  readonly paint: number;
}

export type CandidateKind = "palette" | "own" | "shade";

/** A colour to try. `name` is what it is called as a replacement. */
export interface Candidate {
  readonly hex: Hex;
  readonly name: string;
  readonly kind: CandidateKind;
}

/**
 * Returns what `subject` may be replaced by, in the order in which equals are listed: `palette`, `own`, the shade. The
 * paint's own hex is left out, and a hex that comes twice stays where it comes first.
 */
export function listCandidates(
  subject: Subject,
  palette: readonly Candidate[],
  own: readonly Candidate[],
  shade: ShadeFinding,
): readonly Candidate[] {
  const today = subject.looks[subject.paint]?.hex;
  const found = new Map<Hex, Candidate>();
  for (const candidate of [...palette, ...own]) {
    if (candidate.hex !== today && !found.has(candidate.hex))
      found.set(candidate.hex, {
        ...candidate,
        name: nameIn(subject, candidate.hex, [...found.values()], candidate.name),
      });
  }
  const { least } = shade;
  if (least !== null && today !== undefined && !found.has(least.hex)) {
    found.set(least.hex, {
      hex: least.hex,
      name: nameIn(subject, least.hex, [...found.values()]),
      kind: "shade",
    });
  }
  return [...found.values()];
}

/** Finds the least shade change of a paint that clears every deciding edge it has. */
export function findSubjectShade(
  { table, looks, paint }: Subject,
  cloth: Cloth,
  book: SwatchBook,
): ShadeFinding {
  const all = table.edges.reduce((sum, edge) => sum + edge.length, 0);
  const neighbours: Neighbour[] = [];
  for (const edge of table.edges) {
    const other = otherSide(edge, paint);
    if (
      other === undefined ||
      edge.length < deciding * all ||
      table.paints[other]?.group === table.paints[paint]?.group
    )
      continue;
    const look = looks[other] as PaintLook;
    neighbours.push({
      name: look.name,
      reflectances: endsOf(look).map((hex) => book.reflectanceOf(hex)),
    });
  }
  return findShade((looks[paint] as PaintLook).hex, neighbours, cloth);
}

/** Returns the paint on the other side of `edge`, or undefined where `paint` is on neither. */
export function otherSide(edge: TableEdge, paint: number): number | undefined {
  if (edge.a === paint) return edge.b;
  return edge.b === paint ? edge.a : undefined;
}

/** What `hex` is called in the place of the subject's paint: unlike the flag's other colours, and unlike `offered`. */
function nameIn({ looks, paint }: Subject, hex: Hex, offered: readonly Candidate[], called?: string): string {
  return nameReplacement(hex, looks[paint] as PaintLook, [...looks, ...offered], called);
}
