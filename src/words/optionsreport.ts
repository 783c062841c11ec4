// Floor 7. The other single changes of a drawing in words: which colour to change first and why, or why none; what was not
// tried; and the report as JSON prints it.

import type { OptionsReport } from "../analysis/options/rankoptions.ts";
import { nameColour } from "../colour/colourname.ts";
import { roundMark } from "../measure/clarity.ts";
import { areaLimits, flagLimits } from "../measure/limit.ts";
import { type ColourOptions, findFirst, groupByColour } from "../measure/options/rank.ts";
import { type Format, plainFormat } from "./format.ts";
import { describeNoShade } from "./noshade.ts";
import { capitalise } from "./phrase.ts";

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
  const { say, percent, contrast } = format;
  const isDetail =
    roundMark(clarity) >= flagLimits.clear && first.every(({ share }) => share < areaLimits.detail);
  return [
    ...(isDetail ? [say("otherChange.detail", { clarity: percent(clarity) })] : []),
    first.length === 1 ? sayOne(one, report, format) : saySeveral(first, report, format),
    ...(mostGained === null
      ? []
      : [
          say("otherChange.mostGained", {
            colour: nameOf(one.id, report),
            other: mostGained.other,
            contrast: contrast(mostGained.contrast),
          }),
        ]),
  ].join(" ");
}

function nameOf(id: string, { shades }: OptionsReport): string {
  return shades.find((shade) => shade.id === id)?.name ?? id;
}

/** What is said of a colour to change first. */
function valuesOf({ id, share, best }: ColourOptions, report: OptionsReport, format: Format) {
  return {
    colour: nameOf(id, report),
    share: format.share(share),
    best: best.name,
    from: format.percent(report.clarity),
    to: format.percent(best.clarity),
  };
}

function sayOne(one: ColourOptions, report: OptionsReport, format: Format): string {
  return format.say("otherChange.first", valuesOf(one, report, format));
}

/** Colours that come to the same with the same replacement are told together. */
function saySeveral(first: readonly ColourOptions[], report: OptionsReport, format: Format): string {
  const { say } = format;
  const told = first.map((one) => valuesOf(one, report, format));
  const [end] = told;
  const names = told.map((one, index) =>
    say(index === 0 ? "otherChange.shareFirst" : "otherChange.share", one),
  );
  const colours = names.slice(0, -1).join(say("list.comma"));
  const last = names.at(-1) ?? "";
  if (end !== undefined && told.every(({ best, to }) => best === end.best && to === end.to))
    return capitalise(say("otherChange.firstAlike", { ...end, colours, last }));
  const moves = told.map((one, index) =>
    say(index === 0 ? "otherChange.moveFirst" : "otherChange.move", one),
  );
  return say("otherChange.firstOfSeveral", { colours, last, moves: moves.join(say("list.comma")) });
}

function describeNone({ clarity: mark, shades, options }: OptionsReport, { percent, say }: Format): string {
  if (mark === null) return say("edges.none");
  if (shades.length === 0) return say("otherChange.noneTried");
  if (options.length === 0) return say("otherChange.allMerge");
  const clarity = percent(mark);
  if (roundMark(mark) > 100 - flagLimits.gain) return say("otherChange.clear", { clarity });
  return say(roundMark(mark) >= flagLimits.clear ? "otherChange.clearAndNone" : "otherChange.none", {
    clarity,
  });
}

/** Says what was left out, or measured in part, a sentence each. */
export function listNotes({ distance, leftOut, tried }: OptionsReport, { say }: Format): readonly string[] {
  const { uneven, unseen, shared, palette } = leftOut;
  const list = (names: readonly string[]): string => names.join(say("list.comma"));
  return [
    ...(uneven.length > 0 ? [say("otherChange.uneven", { names: list(uneven) })] : []),
    ...(unseen.length > 0 ? [say("otherChange.unseen", { distance, names: list(unseen) })] : []),
    ...(shared.length > 0 ? [say("otherChange.shared", { names: list(shared) })] : []),
    ...(tried === undefined ? [] : [say("otherChange.largest", { all: tried.of, tried: tried.paints })]),
    ...(palette === undefined
      ? []
      : [say("otherChange.palette", { all: palette.of, tried: palette.paints })]),
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
