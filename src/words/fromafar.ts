// Floor 7. What is left of the focus from afar: how clear it is from each distance step, and to where it lasts, in words
// and as a figure.
import type { Comparison } from "../measure/comparison.ts";
import { distanceSteps, leastLeft, leastSpanArcminutes } from "../measure/focusclarity.ts";
import type { MeasuredFocus } from "../measure/measurement.ts";
import type { Format } from "./format.ts";

/** Steps from left to right, focus clarity from 0 below to 100 above. */
export interface LastingView {
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly levels: readonly { readonly y: number; readonly text: string }[];
  readonly steps: readonly LastingStep[];
  readonly left: number;
  /** Where the step stands that the focus lasts to; undefined where it lasts to none. */
  readonly lasts: number | undefined;
  readonly caption: string;
  readonly top: number;
  readonly floor: number;
}

/** One distance. A side without an edge of the focus has no place. */
export interface LastingStep {
  readonly x: number;
  readonly text: string;
  /** Whether the gallery measures from here. */
  readonly isMeasured: boolean;
  readonly before: number | undefined;
  readonly after: number | undefined;
}

const [first] = distanceSteps;
const last = distanceSteps.at(-1) ?? first;

const panel = { width: 340, height: 196, left: 34, right: 14, top: 34, floor: 160 };
const stepWidth = (panel.width - panel.left - panel.right) / distanceSteps.length;

/** The figure, or undefined where there is no focus. */
export function presentLasting({ before, after }: Comparison, format: Format): LastingView | undefined {
  if (before.focus.source === "none") return undefined;
  const { lastsTo } = before.focus;
  return {
    title: format.say("focus.afar"),
    description: format.say("focus.afarDescription", {
      lasting: sayLasting(before.focus, format),
      steps: distanceSteps
        .map((step) => sayStep(before.focus, after.focus, step, format))
        .join(format.say("list.semicolon")),
    }),
    width: panel.width,
    height: panel.height,
    levels: [0, 50, 100].map((clarity) => ({ y: placeClarity(clarity), text: format.number(clarity, 0) })),
    steps: distanceSteps.map((step) => ({
      x: placeStep(step),
      text: format.number(step, 0),
      isMeasured: step === before.distance,
      before: placeAt(before.focus, step),
      after: placeAt(after.focus, step),
    })),
    left: panel.left,
    lasts: lastsTo === null ? undefined : placeStep(lastsTo),
    caption: format.say("focus.afarCaption", {
      lasts: formatLastsTo(before.focus, format),
      left: format.share(leastLeft),
      arcminutes: leastSpanArcminutes,
    }),
    top: panel.top,
    floor: panel.floor,
  };
}

function placeStep(distance: number): number {
  const nearer = distanceSteps.filter((step) => step < distance).length;
  return round(panel.left + (nearer + 0.5) * stepWidth);
}

function placeAt({ from }: MeasuredFocus, distance: number): number | undefined {
  const clarity = from.find((view) => view.distance === distance)?.clarity ?? null;
  return clarity === null ? undefined : placeClarity(clarity);
}

function placeClarity(clarity: number): number {
  return round(panel.floor - ((panel.floor - panel.top) * clarity) / 100);
}

/** How far a focus lasts: `no emblem found`, `under 10 flag heights`, `80 flag heights`, `320 flag heights or more`. */
export function formatLastsTo(
  { source, lastsTo }: Pick<MeasuredFocus, "source" | "lastsTo">,
  { say }: Format,
): string {
  if (source === "none") return say("focus.noEmblem");
  if (lastsTo === null) return say("focus.lastsUnder", { distance: first });
  return say(lastsTo === last ? "focus.lastsOrMore" : "length.distance", { distance: lastsTo });
}

/** The same in a column whose head has the unit. */
export function listLastsTo(
  { source, lastsTo }: Pick<MeasuredFocus, "source" | "lastsTo">,
  { say, number }: Format,
): string {
  if (source === "none") return say("surveyTable.noLasts");
  if (lastsTo === null) return say("surveyTable.lastsUnder", { distance: first });
  return lastsTo === last ? say("surveyTable.lastsOrMore", { distance: lastsTo }) : number(lastsTo, 0);
}

/** Focus clarity from one distance, or what is missing: `87 %`, `nothing left`. */
export function formatFocusFrom({ from }: MeasuredFocus, distance: number, format: Format): string {
  const view = from.find((one) => one.distance === distance);
  if (view === undefined || view.left === 0) return format.say("focus.nothingLeft");
  return format.percent(view.clarity);
}

/** `What has to be seen is large enough to be made out from up to 80 flag heights away, whatever its colours.` */
export function sayLasting({ lastsTo }: MeasuredFocus, { say }: Format): string {
  if (lastsTo === null) return say("focus.tooSmall", { distance: first });
  return say(lastsTo === last ? "focus.largeEnoughAlways" : "focus.largeEnough", { distance: lastsTo });
}

function sayStep(before: MeasuredFocus, after: MeasuredFocus, step: number, format: Format): string {
  const [was, is] = [formatFocusFrom(before, step, format), formatFocusFrom(after, step, format)];
  const distance = format.number(step, 0);
  return was === is
    ? format.say("focus.step", { distance, is })
    : format.say("focus.stepMove", { distance, was, is });
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
