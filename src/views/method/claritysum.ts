// Floor 8. Clarity as a sum: a bar for each edge, as wide as its weight and filled as far as it counts.

import { clearFrom } from "../../colour/contrast.ts";
import type { Measure } from "../../measure/measurement.ts";
import type { Format } from "../../words/format.ts";
import { formatNames } from "../../words/phrase.ts";

export interface ClaritySum {
  readonly clarity: string;
  /** What it shows, in words. */
  readonly description: string;
  readonly bars: readonly SumBar[];
}

/** One edge. `x` and `width` are percent of all weight, `height` is how far it counts, in percent. */
export interface SumBar {
  readonly place: string;
  readonly names: string;
  readonly contrast: string;
  readonly share: string;
  readonly counts: string;
  readonly x: number;
  readonly width: number;
  readonly height: number;
}

/** Most bars with a place of their own (our own judgement); what is left of the line is edges that weigh next to nothing. */
const mostBars = 8;

/** The sum of a flag that has edges, most weight first. */
export function presentSum({ edges, clarity }: Measure, format: Format): ClaritySum {
  const weighed = edges
    .map((edge) => ({ edge, weight: edge.length + edge.focusLength }))
    .sort((first, second) => second.weight - first.weight);
  const all = weighed.reduce((sum, { weight }) => sum + weight, 0);
  let x = 0;
  const bars = weighed.slice(0, mostBars).map(({ edge, weight }, index): SumBar => {
    const [share, count] = [weight / all, Math.min(1, edge.contrast / clearFrom)];
    const bar = {
      place: format.number(index + 1, 0),
      names: formatNames(edge.names, format),
      contrast: format.contrast(edge.contrast),
      share: format.share(share),
      counts: format.share(count),
      x: round(100 * x),
      width: round(100 * share),
      height: round(100 * count),
    };
    x += share;
    return bar;
  });
  const said = bars
    .map(({ names, share, counts }) => format.say("method.sumBar", { names, share, counts }))
    .join(format.say("list.semicolon"));
  return {
    clarity: format.percent(clarity),
    description: format.say("method.sumAll", { bars: said }),
    bars,
  };
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
