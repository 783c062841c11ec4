// Floor 6. What has to be seen, and from where: how the focus was found, and what the viewing distance means.
import type { Comparison } from "../../measure/comparison.ts";
import type { Focus } from "../../study/study.ts";
import type { Format } from "./format.ts";

export interface FocusView {
  readonly heading: string;
  readonly sentence: string;
  /** What to write into the study where nothing was found: key and an example. */
  readonly example: string | undefined;
}

/** How the focus came to be. `named` is the author's `focus:`, if any. */
export function presentFocus({ before }: Comparison, named: Focus | undefined, format: Format): FocusView {
  const { source, share } = before.focus;
  const area = format.share(share);
  if (source === "none") {
    return {
      heading: "Focus: none",
      sentence:
        "No part stands free of the border, so nothing counts double. That is a fact, not a fault. A charge that runs into a stripe of its own paint cannot be found; if there is one here, the study can name it:",
      example: 'focus: { select: "#charge" }',
    };
  }
  if (source === "found") {
    return {
      heading: "Focus: found",
      sentence: `What has to be seen was found: the parts that stand free of the border, ${area} of the flag.`,
      example: undefined,
    };
  }
  return {
    heading: "Focus: named",
    sentence: `What has to be seen was named by the author${sayNamed(named)}: ${area} of the flag.`,
    example: undefined,
  };
}

/** From where the flag is measured, and what that means. */
export function describeViewing({ before }: Comparison, format: Format): string {
  const { distance } = before;
  if (distance === 0) return "Measured on the full drawing, not from a distance.";
  const away = format.number(distance, 0);
  return `Measured as seen from ${away} flag heights: a flag one metre high, ${away} metres away. Parts thinner than ${format.percent(100 * finestPart(distance), 1)} of its height are not told apart from there. That is a model of resolution.`;
}

/** The finest part, in flag heights, that a 20/20 eye tells apart from `distance` flag heights: one arcminute. */
export function finestPart(distance: number): number {
  return distance * Math.tan(Math.PI / (180 * 60));
}

function sayNamed(named: Focus | undefined): string {
  if (named === undefined) return "";
  return "colour" in named ? `, the colour ${named.colour}` : `, the shapes ${named.select}`;
}
