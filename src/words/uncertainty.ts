// Floor 7. What makes the figures of a drawing less certain, in words, and a measure as JSON prints it.
import type { Doubt, Measure } from "../measure/measurement.ts";
import { type Format, plainFormat } from "./format.ts";

/** Says what makes figures less certain, in one sentence. */
export function describeDoubt(doubt: Doubt, { say, share }: Format): string {
  const list = (names: readonly string[]): string => names.join(say("list.comma"));
  switch (doubt.about) {
    case "joined":
      return say("doubt.joined", { count: doubt.count, name: say("colour.others") });
    case "faint":
      return say("doubt.faint", { count: doubt.count });
    case "inexact":
      return say("doubt.inexact", { share: share(doubt.exactShare) });
    case "nearLimit":
      return say("doubt.nearLimit", { names: list(doubt.names) });
    case "effect":
      return say("doubt.effect", {
        looks: list(doubt.looks.map(({ kind, mode }) => say("doubt.look", { kind, mode }))),
      });
  }
}

/** Returns a measure as `measure --json` prints it. */
export function tellMeasure(measure: Measure) {
  return { ...measure, warnings: measure.warnings.map((doubt) => describeDoubt(doubt, plainFormat)) };
}
