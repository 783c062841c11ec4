// Test support. What a run of faults comes to: how much was tried, and everything that was lost.
export interface Tally {
  readonly name: string;
  readonly tried: number;
  /** One line for each thing that was lost; the goal is none. */
  readonly lost: readonly string[];
  readonly note: string;
}

/** A number from 0 to 1 that is the same for the same seed (xorshift). */
export function makeRandom(seed: number): () => number {
  let state = seed | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

export function pick<T>(random: () => number, from: readonly T[]): T {
  const found = from[Math.floor(random() * from.length)];
  if (found === undefined) throw new Error("nothing to pick from");
  return found;
}

export function message(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
