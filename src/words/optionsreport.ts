// Floor 7. The other single changes of a drawing in words: which colour to change first and why, or why none; what was not
// tried; and the report as JSON prints it.

import type { OptionsReport } from "../analysis/options/rankoptions.ts";
import { nameColour } from "../colour/colourname.ts";
import { roundMark } from "../measure/clarity.ts";
import { areaLimits, flagLimits } from "../measure/limit.ts";
import { type ColourOptions, findFirst, groupByColour } from "../measure/options/rank.ts";
import { type Format, plainFormat } from "./format.ts";
import { describeNoShade } from "./noshade.ts";

/**
 * Says which colours to change first and why, or why none.
 *
 * Example: “Change red first (34 % of the flag): with white in its place clarity rises from 53 % to 100 %. Most is gained
 * where red meets black (contrast 27 % today).”
 */
export function describeFirst(report: OptionsReport, format: Format): string {
  const { clarity, options, mostGained } = report;
  const first = clarity === null ? null : findFirst(groupByColour(options), { clarity });
  const [one] = first ?? [];
  if (clarity === null || first === null || one === undefined) return describeNone(report, format);
  const isDetail =
    roundMark(clarity) >= flagLimits.clear && first.every(({ share }) => share < areaLimits.detail);
  const from = format.percent(clarity);
  return [
    ...(isDetail ? [`The flag as a whole is clear, at ${from}; only a detail gains.`] : []),
    first.length === 1 ? sayOne(one, report, format) : saySeveral(first, report, format),
    ...(mostGained === null
      ? []
      : [
          `Most is gained where ${nameOf(one.id, report)} meets ${mostGained.other} (contrast ${format.contrast(mostGained.contrast)} today).`,
        ]),
  ].join(" ");
}

function nameOf(id: string, { shades }: OptionsReport): string {
  return shades.find((shade) => shade.id === id)?.name ?? id;
}

function sayOne({ id, share, best }: ColourOptions, report: OptionsReport, format: Format): string {
  const move = `from ${format.percent(report.clarity)} to ${format.percent(best.clarity)}`;
  return `Change ${nameOf(id, report)} first (${format.share(share)} of the flag): with ${best.name} in its place clarity rises ${move}.`;
}

/** Colours that come to the same with the same replacement are told together. */
function saySeveral(first: readonly ColourOptions[], report: OptionsReport, format: Format): string {
  const from = format.percent(report.clarity);
  const colours = first.map(
    ({ id, share }, index) =>
      `${nameOf(id, report)} (${format.share(share)}${index === 0 ? " of the flag" : ""})`,
  );
  const ends = first.map(({ best }) => ({ name: best.name, to: format.percent(best.clarity) }));
  const [end] = ends;
  const areAlike = ends.every(({ name, to }) => name === end?.name && to === end.to);
  const either = first.length === 2 ? "either" : "any of them";
  const moves = first.map(
    ({ id }, index) =>
      `with ${ends[index]?.name} for ${nameOf(id, report)}${index === 0 ? ` clarity rises from ${from}` : ""} to ${ends[index]?.to}`,
  );
  return `Change ${colours.slice(0, -1).join(", ")} or ${colours.at(-1)} first: ${
    areAlike
      ? `with ${end?.name} in place of ${either} clarity rises from ${from} to ${end?.to}`
      : moves.join(", ")
  }.`;
}

function describeNone({ clarity, shades, options }: OptionsReport, format: Format): string {
  if (clarity === null) return "One colour: no edges to measure.";
  if (shades.length === 0) return "None of the colours could be tried.";
  if (options.length === 0)
    return `Every change that was tried merges a third of a charge${format.apostrophe}s outline or more.`;
  const [mark, says] = [roundMark(clarity), `a clarity of ${format.percent(clarity)}`];
  if (mark > 100 - flagLimits.gain) return `The flag is clear as it is, at ${says}.`;
  const none = "no single change brings five points more";
  return mark >= flagLimits.clear
    ? `The flag is clear as it is, at ${says}: ${none}.`
    : `The flag has ${says}, and ${none}.`;
}

/** Says what was left out, or measured in part, a sentence each. */
export function listNotes({ distance, leftOut, tried }: OptionsReport, format: Format): readonly string[] {
  const name = (begin: string, names: readonly string[]): readonly string[] =>
    names.length === 0 ? [] : [`${begin}: ${names.join(", ")}.`];
  return [
    ...name("No flat colour, so not tried", leftOut.uneven),
    ...name(`Not seen from ${distance} flag heights away, so not tried`, leftOut.unseen),
    ...name(
      "Also shown translucent or in a gradient or pattern, which the figures leave as it is",
      leftOut.shared,
    ),
    ...(tried === undefined
      ? []
      : [
          `${tried.of} colours: only the ${tried.paints} largest were tried, with each other${format.apostrophe}s colours.`,
        ]),
    ...(leftOut.palette === undefined
      ? []
      : [`The palette has ${leftOut.palette.of} colours: the first ${leftOut.palette.paints} were tried.`]),
  ];
}

/** A report with its reasons and notes in sentences: what `try FILE.svg --json` prints. */
export type ToldReport = ReturnType<typeof tellReport>;

/** Returns a report as the command and files for machines tell it. */
export function tellReport(report: OptionsReport) {
  const { file, clarity, strength, focusClarity, changeFirst, options, vanishing, tried } = report;
  return {
    file,
    clarity,
    strength,
    focusClarity,
    changeFirst,
    reason: describeFirst(report, plainFormat),
    options,
    vanishing,
    shades: report.shades.map((shade) => {
      const { id, hex, name, isClear, lighter, darker } = shade;
      const reason = describeNoShade(nameColour(hex), shade);
      return { id, hex, name, isClear, lighter, darker, ...(reason === undefined ? {} : { reason }) };
    }),
    notes: listNotes(report, plainFormat),
    ...(tried === undefined ? {} : { tried }),
  };
}
