// Floor 8. The picture of the whole field: every flag of a survey on one axis of clarity, a row for every ten points.

import type { SurveyEntry } from "../../analysis/survey/surveyentry.ts";
import { roundMark } from "../../measure/clarity.ts";
import { isWhole } from "../../measure/percenttext.ts";
import type { Format } from "../../words/format.ts";
import type { FlagRow } from "./flagrow.ts";

export interface FieldView {
  /** From 0 to 100 percent, empty rows among them: it is an axis. */
  readonly rows: readonly FieldRow[];
  /** The least clear flag, shown until another is pointed at. */
  readonly least: FieldDot;
  /** Whether there are so few that the axis can lie, with the flags piled up on it. */
  readonly isSmall: boolean;
  /** How many flags have no edge and so no place on the axis, in a sentence. */
  readonly without: string | undefined;
}

export interface FieldRow {
  readonly label: string;
  readonly dots: readonly FieldDot[];
}

/** One flag. `row` is the id of its row in the table. */
export interface FieldDot {
  readonly row: string;
  readonly name: string;
  readonly clarity: string;
  readonly weakest: string | undefined;
  readonly src: string;
  readonly width: number;
  readonly height: number;
  readonly fit: "wide" | "tall";
  readonly hasStudy: boolean;
}

/** Points of clarity a row spans. */
const step = 10;

/** Most flags of an axis that lies, in all and in one pile (our own judgement). */
const mostPiled = 60;
const highestPile = 12;

/** `rows` are those of `entries`, in the same order; a flag without a row in the table has no place to lead to. */
export function presentField(
  entries: readonly SurveyEntry[],
  rows: readonly FlagRow[],
  format: Format,
): FieldView | undefined {
  const bins = new Map<number, FieldDot[]>();
  for (const [index, row] of rows.entries()) {
    const clarity = entries[index]?.flag.clarity ?? null;
    if (clarity === null) continue;
    const bin = Math.floor((isWhole(clarity / 100) ? 100 : Math.min(99, roundMark(clarity))) / step);
    bins.set(bin, [...(bins.get(bin) ?? []), presentDot(row, format)]);
  }
  const least = bins.get(Math.min(...bins.keys()))?.[0];
  if (least === undefined) return undefined;
  const without = rows.length - [...bins.values()].reduce((sum, dots) => sum + dots.length, 0);
  return {
    rows: Array.from({ length: 100 / step + 1 }, (_, bin) => ({
      label: labelOf(bin, format),
      dots: bins.get(bin) ?? [],
    })),
    least,
    isSmall: rows.length <= mostPiled && [...bins.values()].every((dots) => dots.length <= highestPile),
    without: without === 0 ? undefined : format.say("field.without", { count: without }),
  };
}

function presentDot({ id, name, clarity, weakest, plate, studies }: FlagRow, { say }: Format): FieldDot {
  const { src, width, height, fit } = plate;
  const [one, other] = weakest?.swatches ?? [];
  return {
    row: id,
    name,
    clarity: clarity.text,
    weakest:
      one &&
      other &&
      say("field.weakest", { one: one.name, other: other.name, contrast: weakest?.text ?? "" }),
    src,
    width,
    height,
    fit,
    hasStudy: studies.length > 0,
  };
}

/** Rows are of whole percent: `40–49%`; the last is 100 alone. */
function labelOf(bin: number, format: Format): string {
  const last = format.percent(Math.min(100, bin * step + step - 1));
  return bin * step === 100 ? last : `${format.number(bin * step, 0)}–${last}`;
}
