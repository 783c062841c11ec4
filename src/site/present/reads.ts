// Floor 6. How far the focus reads: in words, and as a line of distance steps with the two reaches on it.
import type { Comparison } from "../../measure/comparison.ts";
import type { MeasuredFocus } from "../../measure/measure.ts";
import { distanceSteps } from "../../measure/reads.ts";
import type { Format } from "./format.ts";

export interface ReadsView {
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  /** Where the gallery measures from, if that is one of the steps or lies between two. */
  readonly measuredX: number | undefined;
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  readonly tickY: number;
  readonly axis: { readonly x1: number; readonly x2: number };
  readonly reaches: readonly Reach[];
}

export interface Reach {
  readonly label: string;
  readonly text: string;
  readonly y: number;
  readonly from: number;
  /** Undefined where the focus fails at the first step. */
  readonly to: number | undefined;
  /** Whether it may reach further than the last step. */
  readonly isOpen: boolean;
}

const last = distanceSteps[distanceSteps.length - 1] ?? 320;
const first = distanceSteps[0];

const panel = { width: 340, height: 148, left: 1, right: 26, rows: [34, 86], tickY: 130 };
const stepWidth = (panel.width - panel.left - panel.right) / (distanceSteps.length - 0.4);

/** The figure, or undefined where there is no focus. */
export function presentReads(comparison: Comparison, format: Format): ReadsView | undefined {
  const { before, after } = comparison;
  if (before.focus.source === "none") return undefined;
  const reachOf = (label: string, focus: MeasuredFocus, y: number): Reach => ({
    label,
    text: formatReach(focus, format),
    y,
    from: panel.left,
    to: focus.readsTo === null ? undefined : placeStep(focus.readsTo),
    isOpen: focus.readsTo === last,
  });
  const [above, below] = panel.rows;
  return {
    title: "How far the focus reads",
    description: `Original: ${formatReach(before.focus, format)}. Redesign: ${formatReach(after.focus, format)}. In flag heights, tried at ${format.list(distanceSteps.map((step) => format.number(step, 0)))}.`,
    width: panel.width,
    height: panel.height,
    measuredX: before.distance === 0 ? undefined : placeStep(before.distance),
    ticks: distanceSteps.map((step) => ({ x: placeStep(step), text: format.number(step, 0) })),
    tickY: panel.tickY,
    axis: { x1: panel.left, x2: panel.width },
    reaches: [reachOf("Original", before.focus, above ?? 0), reachOf("Redesign", after.focus, below ?? 0)],
  };
}

/** Every step doubles the distance. */
function placeStep(distance: number): number {
  const steps = Math.log2(distance / first) + 0.6;
  return Math.round((panel.left + Math.max(0, steps) * stepWidth) * 10) / 10;
}

/** A reach in flag heights, short enough for a table: `under 10`, `80`, `320 or more`. */
export function formatReach({ source, readsTo }: MeasuredFocus, format: Format): string {
  if (source === "none") return "no focus";
  if (readsTo === null) return `under ${format.number(first, 0)}`;
  const reach = format.number(readsTo, 0);
  return readsTo === last ? `${reach} or more` : reach;
}

/** Both reaches and the clarity of the focus alone, in words; nothing where there is no focus. */
export function describeReach({ before, after }: Comparison, format: Format): readonly string[] {
  if (before.focus.source === "none") return [];
  return [
    sayReach(before.focus.readsTo, after.focus.readsTo, format),
    ...sayClarity(before.focus, after.focus, format),
  ];
}

function sayReach(was: number | null, is: number | null, format: Format): string {
  const say = (readsTo: number) => `${format.number(readsTo, 0)}${readsTo === last ? " or more" : ""}`;
  const nearest = `${format.number(first, 0)} flag heights, the nearest distance tried`;
  if (was === null && is === null) return `The focus does not read from ${nearest}, before or after.`;
  if (was === null) return `The focus did not read from ${nearest}; it now reads to ${say(is ?? first)}.`;
  if (is === null) return `The focus read to ${say(was)} flag heights; now it does not read from ${nearest}.`;
  if (was === is) return `The focus reads to ${say(is)} flag heights, as before.`;
  return `The focus ${is > was ? "now reads" : "reads only"} to ${say(is)} flag heights, after ${say(was)}.`;
}

function sayClarity(before: MeasuredFocus, after: MeasuredFocus, format: Format): readonly string[] {
  const [was, is] = [format.percent(before.clarity), format.percent(after.clarity)];
  if (before.clarity === null || after.clarity === null || was === is) return [];
  return [`The clarity of its edges alone goes from ${was} to ${is}.`];
}
