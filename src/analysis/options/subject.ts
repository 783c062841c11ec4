// Floor 6, for the options. Which paints of a drawing may be replaced, each with the table its changes are measured on.
import type { Hex } from "../../colour/colour.ts";
import { parseColour } from "../../colour/colourtext.ts";
import { areaLimits } from "../../measure/limit.ts";
import type { Candidate, Subject } from "../../measure/options/candidate.ts";
import type { ResolvedDrawing } from "../../svg/instance.ts";
import type { Paint } from "../../svg/paint.ts";
import type { Rank } from "../../svg/paintnumber.ts";
import { findStops } from "../../svg/paintserver.ts";
import { walkElements } from "../../svg/tree.ts";
import { type Inspection, tabulateApart } from "../drawing/inspect.ts";
import type { OpenedDrawing } from "../drawing/opendrawing.ts";

/** The paints to try, largest first, the flag's own colours as candidates, and what was left out. */
export interface Subjects {
  readonly subjects: readonly Subject[];
  readonly own: readonly Candidate[];
  readonly leftOut: LeftOut;
  /** Where there are more flat paints than are tried. */
  readonly tried?: TriedPart;
}

/**
 * Names of paints: `uneven` and `unseen` ones were not tried; `shared` ones are also shown translucent, or in a gradient or
 * pattern, which the figures leave as it is.
 */
export interface LeftOut {
  readonly uneven: readonly string[];
  readonly unseen: readonly string[];
  readonly shared: readonly string[];
}

/** Only the `paints` largest of `of` flat paints were tried. */
export interface TriedPart {
  readonly paints: number;
  readonly of: number;
}

/** Most paints that are tried, and most own colours they are tried with: the largest. Beyond, no list is read. */
const mostPaints = 24;

/**
 * Finds the flat paints over 0.4 % of the area that have an edge. A paint that is one with others of nearly its colour
 * is measured apart from them, as a change of it alone would leave it, on a table of its own.
 */
export function findSubjects({ resolved, viewing, inspection }: OpenedDrawing): Subjects {
  const { table, paints, looks } = inspection;
  const listed = table.paints.flatMap((paint, rank) => (paint.share > areaLimits.counts ? [rank] : []));
  const flat = listed.filter((rank) => paints[rank]?.flat === true && paints[rank]?.declared !== null);
  flat.sort((a, b) => (table.paints[b]?.share ?? 0) - (table.paints[a]?.share ?? 0) || a - b);
  const tried = flat.slice(0, mostPaints);
  const nameOf = (rank: Rank): string => looks[rank]?.name ?? "";
  const subjects: Subject[] = [];
  const unseen: string[] = [];
  for (const rank of tried) {
    const subject = isolate(viewing, inspection, rank);
    const hasEdge = subject.table.edges.some(({ a, b }) => a === subject.paint || b === subject.paint);
    if (hasEdge) subjects.push(subject);
    else if (table.paints[rank]?.vanishes === true) unseen.push(nameOf(rank));
  }
  const shared = findShared(resolved, paints);
  const leftOut: LeftOut = {
    uneven: listed.filter((rank) => !flat.includes(rank)).map(nameOf),
    unseen,
    shared: subjects.flatMap(({ looks: own, paint }) =>
      shared.has(own[paint]?.hex ?? "#000000") ? [own[paint]?.name ?? ""] : [],
    ),
  };
  const own = tried.map(
    (rank): Candidate => ({
      hex: looks[rank]?.hex ?? "#000000",
      name: nameOf(rank),
      kind: "own",
    }),
  );
  const isPart = flat.length > tried.length;
  return { subjects, own, leftOut, ...(isPart ? { tried: { paints: tried.length, of: flat.length } } : {}) };
}

function isolate(viewing: OpenedDrawing["viewing"], inspection: Inspection, rank: Rank): Subject {
  const { table, looks, paints } = inspection;
  const group = table.paints[rank]?.group;
  const replace = paints[rank]?.declared;
  const isAlone = table.paints.every((paint, at) => at === rank || paint.group !== group);
  if (isAlone || replace === null || replace === undefined) return { table, looks, paint: rank };
  const apart = tabulateApart(inspection.ground, viewing, replace);
  const id = table.paints[rank]?.id;
  return {
    table: apart.table,
    looks: apart.looks,
    paint: apart.table.paints.findIndex((paint) => paint.id === id),
  };
}

/** Colours that stand in paint which is not flat: changing them changes that paint too, by how much only a picture says. */
function findShared(resolved: ResolvedDrawing, paints: Iterable<Paint>): ReadonlySet<Hex> {
  const found = new Set<Hex>();
  for (const { flat, declared, key } of paints) {
    if (flat) continue;
    if (declared !== null) found.add(declared);
    const server = resolved.ids.get(/^url\(#(.*)\)/.exec(key)?.[1] ?? "");
    if (server === undefined) continue;
    for (const element of [...walkElements(server), ...findStops(server, resolved)]) {
      for (const value of Object.values(element.attributes)) {
        const hex = parseColour(value)?.hex;
        if (hex !== undefined) found.add(hex);
      }
    }
  }
  return found;
}
