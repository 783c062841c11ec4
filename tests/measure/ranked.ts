// Test support. A ranked option typed by hand: red becomes white, everywhere clear.
import type { RankedOption } from "../../src/measure/options/rank.ts";

/** Returns the option with what `more` says in place. */
export function makeOption<T extends Partial<RankedOption>>(more: T): RankedOption & T {
  return {
    id: "p2",
    place: 1,
    placeInColour: 1,
    replace: "#c8202f",
    with: "#fafafa",
    name: "white",
    kind: "palette",
    clarity: 99.6,
    strength: 94.2,
    focusClarity: 100,
    clearEdgeShare: 1,
    share: 0.34,
    deltaE00: 41.4,
    deltaEab: 68.2,
    gained: [],
    better: [],
    worse: [],
    lost: [],
    merged: [],
    mergedOutline: 0,
    confusable: [],
    confusions: [],
    ...more,
  };
}
