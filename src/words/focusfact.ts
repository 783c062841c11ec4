// Floor 7. From where a flag is seen, and why nothing has to be seen before the rest where nothing has.
import type { Comparison } from "../measure/comparison.ts";
import type { Format } from "./format.ts";

/** Why nothing has to be seen before the rest. */
export interface FocusView {
  readonly sentence: string;
  /** What to write into the study where a charge has to be named. */
  readonly example: string | undefined;
}

/** Undefined where there is a focus, which the edge map marks; `toName` names a charge that was not guessed. */
export function presentFocus(
  { before }: Comparison,
  { say }: Format,
  toName?: string,
): FocusView | undefined {
  if (before.focus.source !== "none") return undefined;
  const sentence = say(toName === undefined ? "focus.none" : "focus.notGuessed");
  return { sentence, example: toName };
}

/** From where the flag is measured, and what that means. */
export function describeViewing({ before }: Comparison, format: Format): string {
  const { distance } = before;
  if (distance === 0) return format.say("focus.fullDrawing");
  return format.say("focus.fromAway", {
    away: distance,
    finest: format.percent(100 * finestPart(distance), 1),
  });
}

/** The finest part, in flag heights, that a 20/20 eye tells apart from `distance` flag heights: one arcminute. */
export function finestPart(distance: number): number {
  return distance * Math.tan(Math.PI / (180 * 60));
}
