// Floor 7. What makes the figures of a drawing less certain, in words, and a measure as JSON prints it.
import { otherName } from "../analysis/drawing/smallcolour.ts";
import type { Doubt, Measure } from "../measure/measurement.ts";
import { formatShare } from "../measure/percenttext.ts";

/** Says what makes figures less certain, in one sentence. */
export function describeDoubt(doubt: Doubt): string {
  switch (doubt.about) {
    case "joined":
      return `The drawing has more colours than are measured each: the ${doubt.count} that show least are measured with one near them that shows more, or together, as “${otherName}”.`;
    case "faint":
      return doubt.count === 1
        ? "One shape shows at less than half and is left out of the measurement."
        : `${doubt.count} shapes show at less than half and are left out of the measurement.`;
    case "inexact":
      return `Only ${formatShare(doubt.exactShare, 0)} of the drawing could be told apart exactly; its figures are less certain.`;
    case "nearLimit":
      return `Near the limit of sight: parts in ${doubt.names.join(", ")}.`;
    case "effect":
      return `The author's drawing has what is not shown here and not measured: ${doubt.looks.join(", ")}.`;
  }
}

/** Returns a measure as `measure --json` prints it. */
export function tellMeasure(measure: Measure) {
  return { ...measure, warnings: measure.warnings.map(describeDoubt) };
}
