// Floor 6. The gain chart of the front page: one line a study, from its clear-edge share before to after.
import type { StudyResult } from "../../study/result.ts";
import type { Linker } from "../address.ts";
import type { Format } from "./format.ts";
import { formatStudyPath } from "./status.ts";

export interface GainView {
  readonly title: string;
  /** Most gained first. The rest opens on demand, so that the chart stays a chart. */
  readonly rows: readonly GainRow[];
  readonly rest: readonly GainRow[];
  readonly restLabel: string;
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  readonly width: number;
}

export interface GainRow {
  readonly title: string;
  readonly address: string;
  readonly before: string;
  readonly after: string;
  /** Where both stand on the line, in its units. */
  readonly x: readonly [number, number];
  readonly way: "up" | "down" | "level";
}

const width = 100;
const mostRows = 24;

/** The chart, or undefined where no study has an edge. */
export function presentGain(
  results: readonly StudyResult[],
  link: Linker,
  format: Format,
): GainView | undefined {
  const measured = results.flatMap((result) => {
    const [before, after] = result.comparison.clearEdgeShare;
    return before === null || after === null ? [] : [{ study: result.study, before, after }];
  });
  if (measured.length === 0) return undefined;
  const rows = measured
    .sort(
      (first, second) =>
        second.after - second.before - (first.after - first.before) || first.before - second.before,
    )
    .map(({ study, before, after }): GainRow => {
      const x = [before, after].map((share) => Math.round(share * width * 10) / 10) as [number, number];
      return {
        title: study.title,
        address: link(formatStudyPath(study.slug)),
        before: format.share(before),
        after: format.share(after),
        x,
        way: x[1] > x[0] ? "up" : x[1] < x[0] ? "down" : "level",
      };
    });
  return {
    title: "What each change does to the clear-edge share",
    rows: rows.slice(0, mostRows),
    rest: rows.slice(mostRows),
    restLabel: `${format.number(Math.max(0, rows.length - mostRows), 0)} more`,
    ticks: [0, 0.5, 1].map((share) => ({ x: share * width, text: format.share(share) })),
    width,
  };
}
