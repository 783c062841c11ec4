// Whether a regular expression may take longer than its text is long: where one character can be taken in two ways again
// and again, a text that fails in the end is tried in every way.
import { type Part, parsePattern, type Taken } from "./pattern.ts";

/** More repeats than this count as without end. */
const bounded = 1000;

/**
 * A place of the pattern. `next` has how many ways lead to each other place; `isSafe`: nothing behind it can fail, so that
 * no other way is tried.
 */
interface Step {
  readonly taken: Taken;
  readonly next: Map<Step, number>;
  isSafe: boolean;
}

/** The places where a part may begin and end; the ends from which nothing can fail; whether it may take nothing. */
interface Piece {
  readonly first: readonly Step[];
  readonly last: readonly Step[];
  readonly mayBeEmpty: boolean;
  readonly isSureEmpty: boolean;
}

/**
 * Returns why a pattern is not linear, or undefined where it is: `nested` repeats, with which time doubles with each
 * character, or `adjacent` ones, with which it grows at least with the square. A pattern that may begin anywhere has the
 * search for its beginning as its first repeat. Of what looks behind only one character is minded.
 *
 * Source: A. Weber, H. Seidl, On the degree of ambiguity of finite automata, Theoretical Computer Science 88 (1991): EDA
 * and IDA; N. Weideman et al., Analyzing matching time behavior of backtracking regular expression matchers, CIAA 2016.
 */
export function findSlow(source: string, flags: string): "nested" | "adjacent" | undefined {
  const tree = parsePattern(source, flags);
  const steps: Step[] = [];
  const search: Step = { taken: -1n, next: new Map(), isSafe: false };
  link([search], [search]);
  for (const branch of listBranches(tree)) {
    const piece = build(branch, steps, true);
    const before: Step = { taken: findBefore(branch) ?? -1n, next: new Map(), isSafe: false };
    if (flags.includes("y") || before.taken === 0n) continue;
    link([search], [before]);
    link([before], piece.first);
  }
  const all = [search, ...steps];
  const reach = new Map(all.map((step) => [step, reachFrom(step)]));
  const loops = all.filter((step) => reach.get(step)?.has(step));
  const isLoop = (a: Step, b: Step): boolean =>
    reach.get(a)?.has(b) === true && reach.get(b)?.has(a) === true;
  if (loops.some((step) => !step.isSafe && isNested(step, isLoop))) return "nested";
  const isSlow = (p: Step, q: Step): boolean =>
    p !== q && !p.isSafe && !q.isSafe && (reach.get(p)?.has(q) ?? false) && isAdjacent(p, q, isLoop);
  return loops.some((p) => loops.some((q) => isSlow(p, q))) ? "adjacent" : undefined;
}

function link(from: readonly Step[], to: readonly Step[]): void {
  for (const step of from) for (const next of to) step.next.set(next, (step.next.get(next) ?? 0) + 1);
}

/** Builds the steps of a part. `isLast`: nothing that may fail stands behind it. */
function build(part: Part, steps: Step[], isLast: boolean): Piece {
  switch (part.kind) {
    case "one": {
      const step = { taken: part.taken, next: new Map(), isSafe: isLast };
      steps.push(step);
      return { first: [step], last: [step], mayBeEmpty: false, isSureEmpty: false };
    }
    case "look": {
      const inner = part.part === undefined ? undefined : build(part.part, steps, false);
      return { first: inner?.first ?? [], last: [], mayBeEmpty: true, isSureEmpty: false };
    }
    case "choice": {
      const pieces = part.parts.map((one) => build(one, steps, isLast));
      return {
        first: pieces.flatMap(({ first }) => first),
        last: pieces.flatMap(({ last }) => last),
        mayBeEmpty: pieces.some(({ mayBeEmpty }) => mayBeEmpty),
        isSureEmpty: pieces.some(({ isSureEmpty }) => isSureEmpty),
      };
    }
    case "row":
      return buildRow(part.parts, steps, isLast);
    case "repeat":
      return buildRepeat(part, steps, isLast);
  }
}

function buildRow(parts: readonly Part[], steps: Step[], isLast: boolean): Piece {
  let whole: Piece = { first: [], last: [], mayBeEmpty: true, isSureEmpty: true };
  parts.forEach((part, index) => {
    const rest = parts.slice(index + 1);
    const piece = build(part, steps, isLast && rest.every(isSureEmpty));
    link(whole.last, piece.first);
    whole = {
      first: whole.mayBeEmpty ? [...whole.first, ...piece.first] : whole.first,
      last: piece.mayBeEmpty ? [...whole.last, ...piece.last] : piece.last,
      mayBeEmpty: whole.mayBeEmpty && piece.mayBeEmpty,
      isSureEmpty: whole.isSureEmpty && piece.isSureEmpty,
    };
  });
  return whole;
}

/** Of a repeat with an end two turns stand for all: one that must be, one that may be. */
function buildRepeat(
  { part, least, most }: Part & { kind: "repeat" },
  steps: Step[],
  isLast: boolean,
): Piece {
  if (most === 0) return { first: [], last: [], mayBeEmpty: true, isSureEmpty: true };
  const isEndless = most > bounded;
  const one = build(part, steps, isLast);
  if (isEndless) link(one.last, one.first);
  const isFree = least === 0;
  const once: Piece = {
    ...one,
    mayBeEmpty: isFree || one.mayBeEmpty,
    isSureEmpty: isFree || one.isSureEmpty,
  };
  if (isEndless || most === 1) return once;
  const again = build(part, steps, isLast);
  link(once.last, again.first);
  const mayEnd = least < most || again.mayBeEmpty;
  return {
    ...once,
    first: one.mayBeEmpty ? [...once.first, ...again.first] : once.first,
    last: mayEnd ? [...once.last, ...again.last] : again.last,
  };
}

function isSureEmpty(part: Part): boolean {
  switch (part.kind) {
    case "one":
    case "look":
      return false;
    case "choice":
      return part.parts.some(isSureEmpty);
    case "row":
      return part.parts.every(isSureEmpty);
    case "repeat":
      return part.least === 0 || isSureEmpty(part.part);
  }
}

/** The ways in which a pattern can begin, each as a pattern of its own. */
function listBranches(part: Part): readonly Part[] {
  if (part.kind === "choice") return part.parts.flatMap(listBranches);
  const [first, ...rest] = part.kind === "row" ? part.parts : [];
  if (first?.kind !== "choice" && first?.kind !== "row") return [part];
  return listBranches(first).map((branch) => ({ kind: "row", parts: [branch, ...rest] }));
}

/** What must stand before a branch: the empty set for the beginning of the text, undefined for anything. */
function findBefore(part: Part): Taken | undefined {
  if (part.kind === "look") return part.before;
  return part.kind === "row" && part.parts[0] ? findBefore(part.parts[0]) : undefined;
}

function reachFrom(start: Step): ReadonlySet<Step> {
  const found = new Set<Step>();
  const open = [...start.next.keys()];
  for (let step = open.pop(); step !== undefined; step = open.pop()) {
    if (found.has(step)) continue;
    found.add(step);
    open.push(...step.next.keys());
  }
  return found;
}

/** Whether one text leads from `start` to itself in two ways. */
function isNested(start: Step, isLoop: (a: Step, b: Step) => boolean): boolean {
  return walk([start, start], ([a, b], next) => {
    for (const [to, ways] of a?.next ?? []) {
      if (!isLoop(start, to)) continue;
      for (const [other] of b?.next ?? []) {
        if (!isLoop(start, other) || (to.taken & other.taken) === 0n) continue;
        const isSame = a === b && to === other;
        if (isSame && ways > 1) return true;
        if (isSame && a === start) next([to, other]);
        else if (to === start && other === start && a !== b) return true;
        else next([to, other]);
      }
    }
    return false;
  });
}

/** Whether one text leads from `p` to itself, from `p` to `q` and from `q` to itself. */
function isAdjacent(p: Step, q: Step, isLoop: (a: Step, b: Step) => boolean): boolean {
  return walk([p, p, q], ([a, b, c], next) => {
    for (const [one] of a?.next ?? []) {
      if (!isLoop(p, one)) continue;
      for (const [three] of c?.next ?? []) {
        const both = one.taken & three.taken;
        if (!isLoop(q, three) || both === 0n) continue;
        for (const [two] of b?.next ?? []) {
          if ((two.taken & both) === 0n) continue;
          if (one === p && two === q && three === q) return true;
          next([one, two, three]);
        }
      }
    }
    return false;
  });
}

/** Visits each state that `visit` hands on, once, until it returns true. */
function walk(
  start: readonly Step[],
  visit: (state: readonly Step[], next: (state: readonly Step[]) => void) => boolean,
): boolean {
  const ids = new Map<Step, number>();
  const idOf = (step: Step): number => {
    if (!ids.has(step)) ids.set(step, ids.size);
    return ids.get(step) ?? 0;
  };
  const seen = new Set<string>();
  const open: (readonly Step[])[] = [];
  const add = (state: readonly Step[]): void => {
    const key = state.map(idOf).join();
    if (seen.has(key)) return;
    seen.add(key);
    open.push(state);
  };
  add(start);
  for (let state = open.pop(); state !== undefined; state = open.pop()) if (visit(state, add)) return true;
  return false;
}
