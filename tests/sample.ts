// Test support. Where many cases are of one kind, a share of them is tried, chosen by its place in the list; all of them by
// `npm run whole`.

/** Whether all cases are asked for. */
export const isWhole = process.env["WHOLE"] !== undefined;

/** Returns every `step`th of `list`, from the first on. */
export function sample<T>(list: readonly T[], step: number): readonly T[] {
  return isWhole ? list : list.filter((_, index) => index % step === 0);
}
