// Test support. Where many cases are of one kind, a share of them is tried, chosen by its place in the list; all of them by
// `npm run whole`.

/** Returns every `step`th of `list`, from the first on. */
export function sample<T>(list: readonly T[], step: number): readonly T[] {
  return process.env["WHOLE"] === undefined ? list.filter((_, index) => index % step === 0) : list;
}
