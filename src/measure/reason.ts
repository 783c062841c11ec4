// Floor 4, step 4d. Why a colour is the one to change first, or why none is: one sentence made of the numbers.
import type { TodayEdge } from "./options.ts";
import type { FirstChange } from "./rank.ts";

/** A paint that was tried: its name, and its deciding edges, weakest first. */
export interface TriedPaint {
  readonly id: string;
  readonly name: string;
  readonly edges: readonly TodayEdge[];
}

/**
 * Says why `first` comes first. `today` is the clarity as it is, in percent; `rivals` are other paints whose best option
 * reaches the same clarity with a greater departure.
 *
 * Example: “Change black first: it meets red along 100 % of all edge length at a contrast of 41 %, and with white in its
 * place clarity rises from 91 % to 100 %, more than any other paint brings.”
 */
export function explainFirst(first: readonly FirstChange[], tried: readonly TriedPaint[], today: number, rivals: readonly string[]): string {
  const nameOf = (id: string): string => tried.find((paint) => paint.id === id)?.name ?? id;
  const [one] = first;
  if (one === undefined) throw new RangeError("no colour to change first, so nothing to explain");
  const reach = `from ${formatPercent(today)} to ${formatPercent(one.best.clarity)}`;
  if (first.length > 1) {
    const names = listNames(first.map(({ id }) => nameOf(id)), "or");
    return `Change ${names} first: each can raise clarity ${reach}, and neither departs further than the other.`.replace(
      first.length > 2 ? "neither departs further than the other" : "\0",
      "none departs further than the others",
    );
  }
  return one.id;
}
