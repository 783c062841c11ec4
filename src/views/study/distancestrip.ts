// Floor 8. The distance strip: both flags as they look from near, far and very far, and how clear what has to be seen is there.
import type { Comparison } from "../../measure/comparison.ts";
import type { Measure, MeasuredFocus } from "../../measure/measurement.ts";
import { measureBlur } from "../../regions/eyeblur.ts";
import type { Format } from "../../words/format.ts";
import { formatFocusFrom, sayLasting } from "../../words/fromafar.ts";
import type { Linker } from "../address.ts";
import type { DrawnPlate } from "../plate.ts";

export interface StripView {
  readonly title: string;
  /** What it shows, in a sentence. */
  readonly description: string;
  readonly steps: readonly StripStep[];
  /** What is said once of all steps: the clarity of what has to be seen where it is level from all, and how far it lasts. */
  readonly says: readonly string[];
}

export interface StripStep {
  /** In flag heights. */
  readonly distance: number;
  readonly plates: readonly [DrawnPlate, DrawnPlate];
  /** The clarity of what has to be seen, under each picture; undefined where it is level from all steps, or too far. */
  readonly clarity: readonly [string, string] | undefined;
  /** Said in place of it, where what has to be seen does not last to here. */
  readonly lost: string | undefined;
}

/** The distances that are shown, in flag heights: some of the distance steps. */
export const shownSteps = [20, 80, 320] as const;

/** Height of each picture in pixels; a wide flag is as wide as this allows. */
const stripHeight = 160;
const stripWidth = 320;
const squarest = 1.3;

/** The strip of a comparison. */
export function presentStrip(comparison: Comparison, link: Linker, path: string, format: Format): StripView {
  const { before, after } = comparison;
  const { say } = format;
  const hasFocus = before.focus.source !== "none";
  const clarities = shownSteps.map((step) =>
    lastsTo(before.focus, step) ? sayBoth(comparison, step, format) : undefined,
  );
  const shown = clarities.filter((both) => both !== undefined);
  const isOne = shown.length > 0 && [before, after].every(({ focus }) => isLevel(focus));
  return {
    title: say("strip.title"),
    description: describeStrip(comparison, format),
    says: hasFocus ? sayOnce(comparison, isOne ? shown[0] : undefined, format) : [],
    steps: shownSteps.map((step, at) => {
      const blur = format.number(measureBlur(step, 100), 1);
      const plate = (label: string, name: "original" | "redesign", measure: Measure): DrawnPlate => ({
        label: say("strip.label", { label, distance: step }),
        src: link(`${path}${formatStripFile(step, name)}`),
        description: hasFocus
          ? say("strip.blurAndFocus", { blur, focus: sayFocus(measure, step, format) })
          : say("strip.blur", { blur }),
        ...stripSize(measure.proportions),
        fit: isWide(measure.proportions) ? "wide" : "tall",
      });
      return {
        distance: step,
        plates: [
          plate(say("plate.original"), "original", before),
          plate(say("plate.redesign"), "redesign", after),
        ],
        clarity: isOne ? undefined : clarities[at],
        lost: hasFocus && !lastsTo(before.focus, step) ? say("strip.lost") : undefined,
      };
    }),
  };
}

/** The file of one picture, in the study's folder. */
export function formatStripFile(distance: number, name: "original" | "redesign"): string {
  return `from-${distance}-${name}.webp`;
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
  const steps = format.list(shownSteps.map((step) => format.say("length.distance", { distance: step })));
  const seen = format.say("strip.describe", { distances: steps });
  return [seen, ...(before.focus.source === "none" ? [] : [sayLasting(before.focus, format)])].join(" ");
}

function sayOnce(
  { before, after }: Comparison,
  same: readonly [string, string] | undefined,
  format: Format,
): readonly string[] {
  const clarity =
    same === undefined
      ? format.say("strip.onlyThere")
      : format.say("strip.level", { before: same[0], after: same[1] });
  return [
    clarity,
    ...(same === undefined && (rises(before.focus) || rises(after.focus)) ? [format.say("strip.rises")] : []),
    sayLasting(before.focus, format),
  ];
}

/** Clarity within so many points is one to the eye (our own judgement). */
const levelWithin = 2;

/** Whether clarity is level from all steps from which what has to be seen can be made out. */
function isLevel(focus: MeasuredFocus): boolean {
  const seen = shownSteps
    .filter((step) => lastsTo(focus, step))
    .map((step) => focus.from.find(({ distance }) => distance === step)?.clarity ?? 0);
  return Math.max(...seen) - Math.min(...seen) <= levelWithin;
}

/** Whether clarity is more from one of the steps than from the step before, by a point or more. */
function rises(focus: MeasuredFocus): boolean {
  const seen = shownSteps
    .filter((step) => lastsTo(focus, step))
    .map((step) => focus.from.find(({ distance }) => distance === step)?.clarity ?? null);
  return seen.some((clarity, at) => {
    const before = seen[at - 1] ?? null;
    return clarity !== null && before !== null && clarity >= before + 1;
  });
}

function isWide([height, width]: readonly [number, number]): boolean {
  return width / height >= squarest;
}

/** `what has to be seen has a clarity of 87 %`, or that it is too small. */
function sayFocus({ focus }: Measure, step: number, format: Format): string {
  return lastsTo(focus, step)
    ? format.say("strip.focusClarity", { clarity: formatFocusFrom(focus, step, format) })
    : format.say("strip.focusLost");
}

function sayBoth({ before, after }: Comparison, step: number, format: Format): readonly [string, string] {
  return [formatFocusFrom(before.focus, step, format), formatFocusFrom(after.focus, step, format)];
}

/** Both sides have the focus of the original: a colour moves no outline. */
function lastsTo(focus: MeasuredFocus, step: number): boolean {
  return focus.lastsTo !== null && step <= focus.lastsTo;
}
