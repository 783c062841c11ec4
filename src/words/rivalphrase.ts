// Floor 7. What is said of studies that propose a change for one and the same flag.
import type { Comparison } from "../measure/comparison.ts";
import type { Format } from "./format.ts";

/** `two proposals for one flag`; where a page shows some, `80 proposals for one flag, the first 24 shown`. */
export function countRivals(shown: number, all: number, { say, number }: Format): string {
  if (all < 2) return say(all === 0 ? "proposal.none" : "proposal.only");
  const count = say("proposal.count", { count: all });
  return shown === all ? count : say("proposal.countShown", { count, shown: number(shown, 0) });
}

/** `one of two proposals for it`, said beside the name of the flag. */
export function describeRival(count: number, { say }: Format): string {
  return say("proposal.oneOf", { count });
}

/** Says which of several is the clearest, in whole percent, and whether it has a price; nothing of one alone, and of a flag without edges. */
export function describeClearest(
  rivals: readonly (Pick<Comparison, "clarity" | "verdict"> & { readonly number: string })[],
  { say, percent, list }: Format,
): string | undefined {
  const before = rivals[0]?.clarity[0] ?? null;
  if (rivals.length < 2 || before === null) return undefined;
  const most = Math.max(...rivals.map(({ clarity }) => clarity[1] ?? 0));
  const values = { before: percent(before), after: percent(most) };
  if (most <= before || values.before === values.after) return say("flagPage.noneClearer", values);
  const clearest = rivals.filter(({ clarity }) => percent(clarity[1]) === values.after);
  const numbers = list(clearest.map(({ number }) => number));
  if (clearest.length === 1 && rivals.every(isPriced)) {
    const others = rivals.filter((rival) => rival !== clearest[0]);
    const next = percent(Math.max(...others.map(({ clarity }) => clarity[1] ?? 0)));
    const id = rivals.length === 2 ? "flagPage.clearerOfTwo" : "flagPage.clearestOfPriced";
    return say(id, { ...values, numbers, next });
  }
  const priced = clearest.every(isPriced) ? "yes" : "no";
  return say("flagPage.clearest", { ...values, count: clearest.length, numbers, priced });
}

function isPriced({ verdict }: Pick<Comparison, "verdict">): boolean {
  return verdict === "clearer, at a price";
}
