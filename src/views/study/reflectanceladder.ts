// Floor 8. The ladder of reflectance as finished geometry: the colours of a flag by the reflectance of their cloth, and
// from where to where the changed one goes.

import type { StudyResult } from "../../analysis/result.ts";
import type { Cloth } from "../../colour/cloth.ts";
import type { Hex } from "../../colour/colour.ts";
import type { MeasuredColour } from "../../measure/measurement.ts";
import type { Format } from "../../words/format.ts";
import { findChanged, nameWhole } from "../../words/paintname.ts";
import { capitalise } from "../../words/phrase.ts";
import { spreadApart } from "./labelspacing.ts";

/** In pixels at the usual size of text; 100 percent above, 0 below. */
export interface LadderView {
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly ticks: readonly { readonly x: number; readonly y: number; readonly text: string }[];
  readonly axis: string;
  /** The part of the axis from the whitest cloth of the gallery to the blackest. */
  readonly cloth: string;
  readonly rungs: readonly Rung[];
  /** An arrow from the colour that is replaced to the one that takes its place. */
  readonly move: string | undefined;
}

/** One colour: a tick on the axis, and beside it chip and name. Those that share the flag with many others have no label. */
export interface Rung {
  readonly hex: Hex;
  readonly tick: Box;
  readonly label:
    | {
        readonly chip: Box;
        readonly x: number;
        readonly y: number;
        readonly text: string;
        readonly leader: string;
      }
    | undefined;
}

type Box = Readonly<Record<"x" | "y" | "width" | "height", number>>;

const size = { width: 216, height: 244, top: 38, bottom: 232 };
/** Where figures end, the axis stands, chips and names begin. */
const across = { figures: 34, axis: 62, chips: 78, names: 98 };
const tick = { width: 14, height: 4 };
const chip = { width: 16, height: 12 };
const labelGap = 18;
/** Colours with a label, by area. */
const mostNamed = 8;
/** Pixels under which an arrow would have no room for its head. */
const leastMove = 6;

/** The ladder of one study. */
export function presentLadder(result: StudyResult, cloth: Cloth, format: Format): LadderView {
  const { before, after } = result.comparison;
  const [was, is] = findChanged(result);
  const colours = [...new Map([...before.colours, ...after.colours].map((one) => [one.hex, one])).values()];
  const heightOf = (reflectance: number) =>
    round(size.bottom - (reflectance / 100) * (size.bottom - size.top));
  const heightAt = (hex: Hex) => colours.filter((one) => one.hex === hex).map((one) => one.reflectance)[0];
  const [from, to] = [heightAt(was.hex), heightAt(is.hex)];
  const isMove =
    from !== undefined && to !== undefined && Math.abs(heightOf(from) - heightOf(to)) >= leastMove;
  return {
    title: format.say("ladder.title"),
    description: describeLadder(colours, [was, is], format),
    width: size.width,
    height: size.height,
    ticks: [0, 50, 100].map((tick) => ({ x: across.figures, y: heightOf(tick), text: format.percent(tick) })),
    axis: drawUpright(heightOf(100), heightOf(0)),
    cloth: drawUpright(heightOf(cloth.white), heightOf(cloth.black)),
    rungs: placeRungs(colours, [was.hex, is.hex], heightOf, format),
    move: isMove ? drawArrow(heightOf(from), heightOf(to)) : undefined,
  };
}

function drawUpright(from: number, to: number): string {
  return `M${across.axis} ${from}V${to}`;
}

/** On the side of the figures, from chip to chip. */
function drawArrow(from: number, to: number): string {
  const edge = across.axis - tick.width / 2 - 3;
  const head = `M${edge - 5} ${to - 4}L${edge} ${to}L${edge - 5} ${to + 4}`;
  return `M${edge} ${from}H${edge - 11}V${to}H${edge}${head}`;
}

function placeRungs(
  colours: readonly MeasuredColour[],
  changed: readonly Hex[],
  heightOf: (reflectance: number) => number,
  format: Format,
): readonly Rung[] {
  const largest = [...colours].sort(
    (first, second) =>
      Number(changed.includes(second.hex)) - Number(changed.includes(first.hex)) ||
      second.share - first.share,
  );
  const named = new Set(largest.slice(0, mostNamed));
  const ordered = [...colours].sort((first, second) => second.reflectance - first.reflectance);
  const labelled = ordered.filter((colour) => named.has(colour));
  const heights = spreadApart(
    labelled.map(({ reflectance }) => heightOf(reflectance)),
    labelGap,
    size.top,
    size.bottom,
  );
  return ordered.map((colour) => {
    const at = labelled.indexOf(colour);
    return placeRung(colour, heightOf(colour.reflectance), heights[at], format);
  });
}

function placeRung(colour: MeasuredColour, y: number, labelY: number | undefined, format: Format): Rung {
  const x = across.axis - tick.width / 2;
  return {
    hex: colour.hex,
    tick: { x, y: round(y - tick.height / 2), ...tick },
    label:
      labelY === undefined
        ? undefined
        : {
            chip: { x: across.chips, y: round(labelY - chip.height / 2), ...chip },
            x: across.names,
            y: round(labelY),
            text: sayColour(colour, format),
            leader: `M${x + tick.width} ${y}L${across.chips} ${round(labelY)}`,
          },
  };
}

function sayColour(colour: MeasuredColour, format: Format): string {
  return format.say("ladder.rung", {
    name: nameWhole(colour),
    reflectance: format.percent(colour.reflectance),
  });
}

/** `Lightest first: white 77 %, gold 45 % and navy 7 %. Black becomes gold.` */
function describeLadder(
  colours: readonly MeasuredColour[],
  [was, is]: ReturnType<typeof findChanged>,
  format: Format,
): string {
  const ordered = [...colours].sort((first, second) => second.reflectance - first.reflectance);
  const listed = format.list(ordered.map((colour) => sayColour(colour, format)));
  const change = format.say("verdict.change", { before: was.name, after: is.name });
  return format.say("ladder.says", { colours: listed, change: capitalise(change) });
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
