// Floor 6, for the options. Which paints of a drawing may be replaced, each with the table its changes are measured on.
import type { Hex } from "../../colour/colour.ts";
import { parseColour } from "../../colour/colourtext.ts";
import { areaLimits } from "../../measure/limit.ts";
import type { Candidate, Subject } from "../../measure/options/candidate.ts";
import type { ResolvedDrawing } from "../../svg/instance.ts";
import type { Paint } from "../../svg/paint.ts";
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
  const listed = table.paints.flatMap((paint, index) => (paint.share > areaLimits.counts ? [index] : []));
  const flat = listed.filter((index) => paints[index]?.flat === true && paints[index]?.declared !== null);
  flat.sort((a, b) => (table.paints[b]?.share ?? 0) - (table.paints[a]?.share ?? 0) || a - b);
  const tried = flat.slice(0, mostPaints);
  const nameOf = (index: number): string => looks[index]?.name ?? "";
  const subjects: Subject[] = [];
  const unseen: string[] = [];
  for (const index of tried) {
    const subject = isolate(viewing, inspection, index);
    const hasEdge = subject.table.edges.some(({ a, b }) => a === subject.paint || b === subject.paint);
    if (hasEdge) subjects.push(subject);
    else if (table.paints[index]?.vanishes === true) unseen.push(nameOf(index));
  }
  const shared = findShared(resolved, paints);
  const leftOut: LeftOut = {
    uneven: listed.filter((index) => !flat.includes(index)).map(nameOf),
    unseen,
    shared: subjects.flatMap(({ looks: own, paint }) =>
      shared.has(own[paint]?.hex ?? "#000000") ? [own[paint]?.name ?? ""] : [],
    ),
  };
  const own = tried.map(
    (index): Candidate => ({
      hex: looks[index]?.hex ?? "#000000",
      name: nameOf(index),
      kind: "own",
    }),
  );
  const isPart = flat.length > tried.length;
  return { subjects, own, leftOut, ...(isPart ? { tried: { paints: tried.length, of: flat.length } } : {}) };
}

function isolate(viewing: OpenedDrawing["viewing"], inspection: Inspection, index: number): Subject {
  const { table, looks, paints } = inspection;
  const group = table.paints[index]?.group;
  const replace = paints[index]?.declared;
  const isAlone = table.paints.every((paint, at) => at === index || paint.group !== group);
  if (isAlone || replace === null || replace === undefined) return { table, looks, paint: index };
  const apart = tabulateApart(inspection.ground, viewing, replace);
  const id = table.paints[index]?.id;
  return {
    table: apart.table,
    looks: apart.looks,
    paint: apart.table.paints.findIndex((paint) => paint.id === id),
  };
}

/** Colours that stand in paint which is not flat: changing them changes that paint too, by how much only a picture says. */
function findShared(resolved: ResolvedDrawing, paints: readonly Paint[]): ReadonlySet<Hex> {
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
