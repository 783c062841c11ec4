// Floor 6. The distance strip: both flags as they look from every distance step, and whether the focus reads from there.
import type { Comparison } from "../../measure/comparison.ts";
import type { Measure } from "../../measure/measure.ts";
import { distanceSteps } from "../../measure/reads.ts";
import type { Linker } from "../address.ts";
import { measureBlur } from "../blur.ts";
import type { Format } from "./format.ts";
import type { DrawnPlate } from "./plate.ts";
import { formatReach } from "./reads.ts";

export interface StripView {
  readonly title: string;
  /** What it shows, in a sentence. */
  readonly description: string;
  readonly steps: readonly StripStep[];
}

export interface StripStep {
  readonly distance: string;
  readonly plates: readonly [DrawnPlate, DrawnPlate];
  /** Whether the focus reads in each; undefined where there is none. */
  readonly reads: readonly [string, string] | undefined;
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
        description: `Blurred by ${blur} percent of its height${hasFocus ? `; the focus ${sayReads(measure, step)}` : ""}.`,
        ...stripSize(measure.proportions),
        fit: isWide(measure.proportions) ? "wide" : "tall",
      });
      return {
        distance,
        plates: [plate("Original", "original", before), plate("Redesign", "redesign", after)],
        reads: hasFocus ? [sayReads(before, step), sayReads(after, step)] : undefined,
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

function describeStrip({ before, after }: Comparison, format: Format): string {
  const steps = format.list(distanceSteps.map((step) => format.number(step, 0)));
  const seen = `Both flags as they look from ${steps} flag heights, softer and softer.`;
  if (before.focus.source === "none") return seen;
  return `${seen} The focus of the original reads to ${formatReach(before.focus, format)}, that of the redesign to ${formatReach(after.focus, format)}.`;
}

function isWide([height, width]: readonly [number, number]): boolean {
  return width / height >= squarest;
}

function sayReads({ focus }: Measure, step: number): string {
  return focus.readsTo !== null && step <= focus.readsTo ? "reads" : "does not read";
}
