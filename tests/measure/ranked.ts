// Test support. A ranked option typed by hand: red becomes white, everywhere clear.
import type { RankedOption } from "../../src/measure/rank.ts";

/** Returns the option with what `more` says in place. */
export function makeOption<T extends Partial<RankedOption>>(more: T): RankedOption & T {
  return {
    id: "p2",
    place: 1,
    replace: "#c8202f",
    with: "#fafafa",
    name: "white",
    kind: "palette",
    clarity: 99.6,
    clearEdgeShare: 1,
    deltaE00: 41.4,
    gained: [],
    lost: [],
    merged: [],
    vanishes: false,
    confusable: [],
    confusions: [],
    ...more,
  };
}
