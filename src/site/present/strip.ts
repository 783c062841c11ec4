// Floor 6. The distance strip: both flags as they look from every distance step, and how clear the focus is from there.
import type { Comparison } from "../../measure/comparison.ts";
import { distanceSteps } from "../../measure/focus.ts";
import type { Measure, MeasuredFocus } from "../../measure/measure.ts";
import type { Linker } from "../address.ts";
import { measureBlur } from "../blur.ts";
import type { Format } from "./format.ts";
import { formatFocusFrom, formatLastsTo } from "./lasting.ts";
import type { DrawnPlate } from "./plate.ts";

export interface StripView {
  readonly title: string;
  /** What it shows, in a sentence. */
  readonly description: string;
  readonly steps: readonly StripStep[];
}

export interface StripStep {
  readonly distance: string;
  readonly plates: readonly [DrawnPlate, DrawnPlate];
  /** How much of the focus is left in both, and its clarity in each where anything is; undefined without a focus. */
  readonly focus:
    | { readonly left: string; readonly clarity: readonly [string, string] | undefined }
    | undefined;
}

/** Height of each picture in pixels; a wide flag is as wide as this allows. */
const stripHeight = 160;
const stripWidth = 320;
const squarest = 1.3;

/** The strip of a comparison. */
export function presentStrip(comparison: Comparison, link: Linker, path: string, format: Format): StripView {
  const { before, after } = comparison;
  const hasFocus = before.focus.source !== "none";
  return {
    title: "Distance strip",
    description: describeStrip(comparison, format),
    steps: distanceSteps.map((step) => {
      const distance = format.number(step, 0);
      const blur = format.number(measureBlur(step, 100), 1);
      const plate = (label: string, name: "original" | "redesign", measure: Measure): DrawnPlate => ({
        label: `${label} from ${distance} flag heights`,
        src: link(`${path}${formatStripFile(step, name)}`),
        description: `Blurred by ${blur} percent of its height${hasFocus ? `; ${sayFocus(measure, step, format)}` : ""}.`,
        ...stripSize(measure.proportions),
        fit: isWide(measure.proportions) ? "wide" : "tall",
      });
      return {
        distance,
        plates: [plate("Original", "original", before), plate("Redesign", "redesign", after)],
        focus: hasFocus ? presentFocusFrom(comparison, step, format) : undefined,
      };
    }),
  };
}

/** The file of one picture, in the study's folder. */
export function formatStripFile(distance: number, name: "original" | "redesign"): string {
  return `from-${distance}-${name}.png`;
}

/** Size in pixels of each picture of a flag with these proportions. */
export function stripSize([height, width]: readonly [number, number]): {
  readonly width: number;
  readonly height: number;
} {
  const scale = Math.min(stripHeight / height, stripWidth / width);
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

function describeStrip({ before }: Comparison, format: Format): string {
  const steps = format.list(distanceSteps.map((step) => format.number(step, 0)));
  const seen = `Both flags as they look from ${steps} flag heights, softer and softer.`;
  if (before.focus.source === "none") return seen;
  return `${seen} By its size the focus lasts to ${formatLastsTo(before.focus, format)}.`;
}

function isWide([height, width]: readonly [number, number]): boolean {
  return width / height >= squarest;
}

/** `focus clarity 87 %`, or that nothing of the focus is left. */
function sayFocus({ focus }: Measure, step: number, format: Format): string {
  const said = formatFocusFrom(focus, step, format);
  return isGone(focus, step) ? `of the focus ${said}` : `focus clarity ${said}`;
}

function presentFocusFrom({ before, after }: Comparison, step: number, format: Format): StripStep["focus"] {
  const left = before.focus.from.find(({ distance }) => distance === step)?.left ?? 0;
  if (left === 0) return { clarity: undefined, left: "nothing left" };
  return {
    clarity: [formatFocusFrom(before.focus, step, format), formatFocusFrom(after.focus, step, format)],
    left: sayLeft(left, format),
  };
}

/** In whole percent: what is left is counted in pixels. */
function sayLeft(left: number, format: Format): string {
  if (left < 1 && left > 0.99) return `over ${format.share(0.99)} left`;
  return left < 0.01 ? `under ${format.share(0.01)} left` : `${format.share(left)} left`;
}

function isGone({ from }: MeasuredFocus, step: number): boolean {
  return (from.find(({ distance }) => distance === step)?.left ?? 0) === 0;
}
