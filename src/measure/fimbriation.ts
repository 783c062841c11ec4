// Floor 4. Fimbriation: a narrow line of a third paint that keeps two others apart, and what it does for that pair.
import { measureContrast } from "../colour/contrast.ts";
import type { Measure, MeasuredColour, MeasuredEdge } from "./measurement.ts";

/** The paint `line` between the paints of `pair`. Contrasts in percent. */
export interface Fimbriation {
  readonly line: string;
  readonly pair: readonly [string, string];
  /** Contrast the pair would have if it met. */
  readonly direct: number;
  /** The lower contrast of the two edges that stand in its place. */
  readonly across: number;
}

/** Mean width, in flag heights, under which a paint is a line and not a stripe (our own judgement). */
const widest = 0.08;
/** How alike the lengths on the two sides of a line are, and how much of it a pair takes (our own judgement). */
const likeness = 0.7;
const leastPart = 0.2;
/** The pair itself may meet along no more than this part of the line (our own judgement). */
const mostMeeting = 0.2;

interface Side {
  readonly id: string;
  readonly edge: MeasuredEdge;
}

/**
 * Finds every line of a drawing with the pairs that it keeps apart. The longest neighbour of a line stands on one side,
 * all others on the other; the lengths of both sides must be alike. Uneven and vanished paints are no lines, and no
 * pairs. Whether the line helps is for the two contrasts to say.
 *
 * Example: teal and maroon at 12, a white line of 0.03 flag heights between them, white / teal 69, white / maroon 77:
 * direct 12, across 69.
 */
export function findFimbriations(measure: Measure): readonly Fimbriation[] {
  const [height, width] = measure.proportions;
  const besides = groupSides(measure.edges);
  return measure.colours.flatMap((line) => {
    if (line.vanishes || line.uneven !== null) return [];
    const sides = besides.get(line.id) ?? [];
    const length = sumLengths(sides) / 2;
    if (length === 0 || (line.share * width) / height / length > widest) return [];
    return findPairs(sides, measure).map(({ pair, across, colours }) => ({
      line: line.id,
      pair,
      direct: measureContrast(colours[0].reflectance, colours[1].reflectance),
      across,
    }));
  });
}

/** Every paint beside each, with the edge between them, longest first. */
function groupSides(edges: readonly MeasuredEdge[]): ReadonlyMap<string, readonly Side[]> {
  const besides = new Map<string, Side[]>();
  const put = (id: string, side: Side): void => {
    const sides = besides.get(id);
    if (sides === undefined) besides.set(id, [side]);
    else sides.push(side);
  };
  for (const edge of edges.toSorted((first, second) => second.length - first.length)) {
    put(edge.a, { id: edge.b, edge });
    put(edge.b, { id: edge.a, edge });
  }
  return besides;
}

function findPairs(sides: readonly Side[], measure: Measure) {
  const [one, ...others] = sides;
  if (one === undefined || !isAlike(one.edge.length, sumLengths(others))) return [];
  return others.flatMap((other) => {
    const colours = findFlat(measure, one.id, other.id);
    const shorter = other.edge.length;
    const isPart = shorter >= leastPart * one.edge.length;
    const isApart = findMeeting(measure.edges, one.id, other.id) <= mostMeeting * shorter;
    if (colours === undefined || !isPart || !isApart) return [];
    const across = Math.min(one.edge.contrast, other.edge.contrast);
    return [{ pair: [one.id, other.id] as const, across, colours }];
  });
}

function findFlat(
  measure: Measure,
  a: string,
  b: string,
): readonly [MeasuredColour, MeasuredColour] | undefined {
  const [one, other] = [a, b].map((id) =>
    measure.colours.find((colour) => colour.id === id && colour.uneven === null),
  );
  return one && other && [one, other];
}

function findMeeting(edges: readonly MeasuredEdge[], a: string, b: string): number {
  return edges.find((edge) => (edge.a === a && edge.b === b) || (edge.a === b && edge.b === a))?.length ?? 0;
}

function isAlike(one: number, other: number): boolean {
  return Math.min(one, other) >= likeness * Math.max(one, other);
}

function sumLengths(sides: readonly Side[]): number {
  return sides.reduce((sum, { edge }) => sum + edge.length, 0);
}
