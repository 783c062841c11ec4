// Floor 8. Addresses that were published and have no page now: where each leads.

import { linearOf } from "../colour/colourtext.ts";
import { measureDifference } from "../colour/difference.ts";
import type { AddressNotes } from "../content/folder/addressfile.ts";
import type { Fate } from "../words/movedphrase.ts";
import { formatStudyPath } from "./status.ts";

/** An address without a page. */
export interface GoneAddress {
  readonly address: string;
  readonly fate: Fate;
  /** The page that it leads to; there is none where nothing took its place. */
  readonly to?: string;
  /** The others that it may lead to as well. */
  readonly orTo?: readonly string[];
  /** What the society says of it. */
  readonly why?: string;
}

/** The gallery as it is. `leads`: old address of a study → the one it has; `flags`: study → the page of its rivals. */
export interface Ground {
  readonly notes: AddressNotes;
  readonly live: ReadonlySet<string>;
  readonly leads: ReadonlyMap<string, string>;
  readonly flags: ReadonlyMap<string, string>;
  readonly folders: ReadonlySet<string>;
  /** Old names of studies that several claim → those. */
  readonly contested: ReadonlyMap<string, readonly string[]>;
}

/** Returns what becomes of each address of the list that is not live, sorted by address. */
export function findGone(ground: Ground): readonly GoneAddress[] {
  const edges = groupEdges(ground.live);
  return [...ground.notes.keys()]
    .filter((address) => !ground.live.has(address))
    .sort()
    .map((address) => {
      const found = follow(address, ground, edges, new Set());
      if (found !== undefined) return { address, ...found };
      return isWork(address) ? leave(address, ground) : { address, to: "/", fate: "near" };
    });
}

interface Landing {
  readonly to: string;
  readonly fate: Fate;
}

type Edges = ReadonlyMap<string, readonly string[]>;

/** Returns the live page that `address` leads to; `seen` are the addresses on the way, so that no circle is walked twice. */
function follow(address: string, ground: Ground, edges: Edges, seen: Set<string>): Landing | undefined {
  const { live, leads, flags } = ground;
  // What is live at the old address of a study only leads on.
  const isOld = address.startsWith("/studies/") && leads.has(address);
  if (live.has(address) && !isOld) return { to: address, fate: "moved" };
  if (seen.has(address)) return undefined;
  seen.add(address);
  const lead = leadOf(address, ground);
  const led = lead === undefined ? undefined : follow(lead, ground, edges, seen);
  if (led !== undefined)
    return { ...led, to: (address.startsWith("/flags/") && flags.get(led.to)) || led.to };
  const [home, rest] = splitStudy(address);
  if (home !== undefined) return rest === "" ? undefined : followBelow(home, rest, ground, edges, seen);
  const parent = address.slice(0, address.lastIndexOf("/", address.length - 2) + 1);
  const above = parent === "/" ? undefined : follow(parent, ground, edges, seen);
  return above && { ...above, fate: "near" };
}

/** A page below a study: the same below the study as it is now, the nearest of its edges, or the study. */
function followBelow(
  home: string,
  rest: string,
  ground: Ground,
  edges: Edges,
  seen: Set<string>,
): Landing | undefined {
  const now = follow(home, ground, edges, seen)?.to;
  if (now === undefined) return undefined;
  const same = `${now}${rest}`;
  if (ground.live.has(same)) return { to: same, fate: "moved" };
  const nearest = rest.startsWith("edges/") ? findNearestEdge(same, edges.get(now) ?? []) : undefined;
  return nearest === undefined ? { to: now, fate: "near" } : { to: nearest, fate: "edge" };
}

function leadOf(address: string, { leads, notes }: Ground): string | undefined {
  return leads.get(address) ?? notes.get(address)?.to;
}

/** What nothing took the place of. */
function leave(address: string, ground: Ground): GoneAddress {
  const [home = address] = splitStudy(address);
  const seen = new Set<string>();
  let last = home;
  for (
    let next: string | undefined = home;
    next !== undefined && !seen.has(next);
    next = leadOf(next, ground)
  ) {
    seen.add(next);
    last = next;
  }
  const [, slug = ""] = /^\/studies\/([^/]+)\/$/.exec(last) ?? [];
  const { notes, folders, contested, live } = ground;
  if (folders.has(slug)) return { address, fate: "absent" };
  const claimants = (contested.get(slug) ?? []).map(formatStudyPath);
  const shown = claimants.filter((claimant) => live.has(claimant));
  const [first, ...others] = shown;
  const fate = shown.length < claimants.length ? "claimedHidden" : "claimed";
  if (first !== undefined) return { address, fate, to: first, orTo: others };
  const why = notes.get(address)?.withdrawn ?? notes.get(home)?.withdrawn;
  return { address, fate: "withdrawn", ...(why === undefined ? {} : { why }) };
}

/** The address of the study that a page is below, and the rest of the way. */
function splitStudy(address: string): readonly [string | undefined, string] {
  const [, home, rest = ""] = /^(\/studies\/[^/]+\/)(.*)$/.exec(address) ?? [];
  return [home, rest];
}

/** Whether somebody's work stood there, and no list. */
function isWork(address: string): boolean {
  return /^\/(?:studies|series|flags)\/./.test(address);
}

function groupEdges(live: ReadonlySet<string>): Edges {
  const groups = new Map<string, string[]>();
  for (const address of live) {
    const [home, rest] = splitStudy(address);
    if (home !== undefined && rest.startsWith("edges/"))
      groups.set(home, [...(groups.get(home) ?? []), address]);
  }
  return groups;
}

/** Of `edges`, the one whose two colours differ least from those of `gone`: the sum of both differences, ΔE00. */
function findNearestEdge(gone: string, edges: readonly string[]): string | undefined {
  const [a, b] = coloursOf(gone);
  if (a === undefined || b === undefined) return undefined;
  const ranked = [...edges].sort().flatMap((edge) => {
    const [c, d] = coloursOf(edge);
    if (c === undefined || d === undefined) return [];
    const straight = measureDifference(a, c) + measureDifference(b, d);
    const crossed = measureDifference(a, d) + measureDifference(b, c);
    return [{ edge, apart: Math.min(straight, crossed) }];
  });
  return ranked.sort((one, two) => one.apart - two.apart)[0]?.edge;
}

function coloursOf(edge: string) {
  const [, a, b] = /\/([0-9a-f]{6})s?-([0-9a-f]{6})s?(?:-\d+)?\/$/.exec(edge) ?? [];
  return a === undefined || b === undefined ? [] : ([linearOf(`#${a}`), linearOf(`#${b}`)] as const);
}
