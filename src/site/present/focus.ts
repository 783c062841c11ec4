// Floor 6. What has to be seen, and from where: how the focus was found, and what the viewing distance means.
import type { Comparison } from "../../measure/comparison.ts";
import type { MeasuredFocus } from "../../measure/measure.ts";
import type { Focus } from "../../study/study.ts";
import type { Format } from "./format.ts";

export interface FocusView {
  readonly heading: string;
  readonly sentence: string;
  /** What to write into the study where a charge has to be named. */
  readonly example: string | undefined;
}

/** How the focus came to be. `named` is the author's `focus:`, if any; `toName` what names a charge that was not guessed. */
export function presentFocus(
  { before }: Comparison,
  named: Focus | undefined,
  format: Format,
  toName?: string,
): FocusView {
  const heading = "What has to be seen";
  const { source } = before.focus;
  if (source !== "none")
    return { heading, sentence: sayFocus(before.focus, named, format), example: undefined };
  if (toName !== undefined) {
    return {
      heading,
      sentence:
        "A charge runs into an area of its own colour. It was not guessed, so nothing counts twice. To name it, write into the study:",
      example: toName,
    };
  }
  return {
    heading,
    sentence:
      "No charge: nothing has to be seen before the rest, and no edge counts twice. A fact, not a fault.",
    example: undefined,
  };
}

/** `Found: the charges, the focus, 12 % of the flag. In clarity their edges count twice.` */
function sayFocus({ source, share }: MeasuredFocus, named: Focus | undefined, format: Format): string {
  const how = source === "found" ? "Found: the charges" : `Named by the author${sayNamed(named)}`;
  return `${how}, ${format.share(share)} of the flag. This is the focus: in clarity its edges count twice. The edge map marks them.`;
}

/** From where the flag is measured, and what that means. */
export function describeViewing({ before }: Comparison, format: Format): string {
  const { distance } = before;
  if (distance === 0) return "Measured on the full drawing, not from a distance.";
  const away = format.number(distance, 0);
  return `Measured as seen from ${away} flag heights: a flag one metre high, ${away} metres away. Parts thinner than ${format.percent(100 * finestPart(distance), 1)} of its height are given to what lies beside them. That is a model of resolution.`;
}

/** The finest part, in flag heights, that a 20/20 eye tells apart from `distance` flag heights: one arcminute. */
export function finestPart(distance: number): number {
  return distance * Math.tan(Math.PI / (180 * 60));
}

function sayNamed(named: Focus | undefined): string {
  if (named === undefined) return "";
  return "colour" in named ? `, the colour ${named.colour}` : `, the shapes ${named.select}`;
}
