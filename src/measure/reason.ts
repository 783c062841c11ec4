// Floor 4, step 4d. Why a colour is the one to change first, or why none is: one sentence made of the numbers.
import { formatContrast, formatPercent, formatShare } from "./format.ts";
import type { TodayEdge } from "./options.ts";
import { type FirstChange, type RankedOption, roundClarity } from "./rank.ts";

/** A paint that was tried: its name, and its deciding edges today, weakest first. */
export interface TriedPaint {
  readonly id: string;
  readonly name: string;
  readonly edges: readonly TodayEdge[];
}

/**
 * Says why the paints of `first` come first. `today` is the clarity as it is, in percent; `ranked` are all options.
 *
 * Throws RangeError where `first` is empty. Example: “Change red first: it meets black along 100 % of all edge length at
 * a contrast of 41 %, and with white in its place clarity rises from 91 % to 100 %, more than changing any other colour
 * brings.”
 */
export function explainFirst(
  first: readonly FirstChange[],
  tried: readonly TriedPaint[],
  ranked: readonly RankedOption[],
  today: number,
): string {
  const [one] = first;
  if (one === undefined) throw new RangeError("no colour to change first, so nothing to explain");
  const nameOf = (id: string): string => tried.find((paint) => paint.id === id)?.name ?? id;
  const reach = `from ${formatPercent(today, 0)} to ${formatPercent(one.best.clarity, 0)}`;
  if (first.length > 1) {
    const names = listNames(first.map(({ id }) => nameOf(id)));
    return `Change ${names} first: each of them can raise clarity ${reach}, with the same departure from today's colour.`;
  }
  const edge = tried.find((paint) => paint.id === one.id)?.edges[0];
  const weak =
    edge === undefined
      ? ""
      : `it meets ${edge.other} along ${formatShare(edge.share, 0)} of all edge length at a contrast of ${formatContrast(edge.contrast, 0)}, and `;
  return `Change ${nameOf(one.id)} first: ${weak}with ${one.best.name} in its place clarity rises ${reach}${compareOthers(one, tried, ranked, nameOf)}.`;
}

/** Says why no colour comes first. `clarity` is null where the drawing has no edge. */
export function explainNone(clarity: number | null, tried: number, ranked: number): string {
  if (clarity === null) return "One colour: no edges to measure.";
  if (tried === 0) return "None of the colours could be tried.";
  if (ranked === 0) return "Every change that was tried makes the charge vanish.";
  return `No single change raises clarity by 1 point or more: it is ${formatPercent(clarity, 0)} as it is.`;
}

function compareOthers(
  one: FirstChange,
  tried: readonly TriedPaint[],
  ranked: readonly RankedOption[],
  nameOf: (id: string) => string,
): string {
  if (tried.length < 2) return "";
  const level = ranked.filter(
    (option) => option.id !== one.id && roundClarity(option.clarity) === roundClarity(one.best.clarity),
  );
  const names = [...new Set(level.map((option) => nameOf(option.id)))];
  return names.length === 0
    ? ", more than changing any other colour brings"
    : `; changing ${listNames(names)} can do the same, with a larger departure from today's colour`;
}

/** Most colours that one sentence names. */
const mostNames = 4;

function listNames(all: readonly string[]): string {
  const rest = all.length - mostNames;
  const names = rest > 1 ? [...all.slice(0, mostNames), `one of ${rest} others`] : all;
  return names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} or ${names.at(-1)}`;
}
