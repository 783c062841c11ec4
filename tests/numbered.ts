// Numbers typed by hand in tests, as the kind that is asked for.

/** Says of a number that it is of the kind that is expected where it stands. */
export function nth<N extends number>(value: number): N {
  return value as N;
}
