// Floor 8. The method page: the definitions are its template's, every number on it is computed here by the code that measures.

import type { GalleryResult } from "../../analysis/result.ts";
import {
  type Cloth,
  defaultCloth,
  measureLuminance,
  measureReflectance,
  widestCloth,
} from "../../colour/cloth.ts";
import type { Hex, LinearRgb } from "../../colour/colour.ts";
import { linearOf } from "../../colour/colourtext.ts";
import {
  clearFrom,
  gradeOf,
  measureContrast,
  measureContrastRatio,
  softFrom,
  strongFrom,
} from "../../colour/contrast.ts";
import { measureDifference } from "../../colour/difference.ts";
import { type EdgeMetric, edgeMetrics } from "../../measure/edgemetric.ts";
import { distanceSteps } from "../../measure/focusclarity.ts";
import { likenessWarning } from "../../measure/nearestflag.ts";
import { measureBlur } from "../../regions/eyeblur.ts";
import { gridColumns, gridRows } from "../../regions/flaggrid.ts";
import { measuringHeight } from "../../regions/raster.ts";
import { sayColour } from "../../words/colourphrase.ts";
import { finestPart } from "../../words/focusfact.ts";
import type { Format } from "../../words/format.ts";
import { gradeIds } from "../../words/gradeword.ts";
import { linkFrom } from "../address.ts";
import { orderStudies } from "../front/card.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { type Limits, presentLimits } from "./shownlimit.ts";
import { presentWorked, type WorkedFlag } from "./workedflag.ts";

export interface MethodPage {
  readonly frame: Frame;
  /** Reflectance of the blackest and the whitest cloth in percent, and where both are on a line from 0 to 100. */
  readonly cloth: { readonly black: string; readonly white: string; readonly marks: readonly number[] };
  /** How much of each light is in luminance. */
  readonly luminance: Readonly<Record<"red" | "green" | "blue", string>>;
  /** The published ranges of reflectance, in percent: of building materials, and of paint; the sign stands behind the upper end. */
  readonly ranges: Readonly<Record<"black" | "white" | "paintBlack" | "paintWhite", string>>;
  /** What laws that fix the cloth come to, one after the other. */
  readonly laws: string;
  /** From where flags are measured, or undefined where numbers are of the full drawing. */
  readonly viewing: ViewingView | undefined;
  readonly limits: Limits;
  /** What a change of each kind comes to, before and after. */
  readonly examples: ReturnType<typeof presentExamples>;
  /** Height of the measuring picture in pixels. */
  readonly pixels: string;
  readonly steps: readonly StepRow[];
  readonly published: PublishedRow;
  readonly walk: PairRow;
  readonly pairs: readonly PairRow[];
  /** A pair whose grade is another on the usual cloth and on the widest. */
  readonly near: PairRow & {
    readonly widest: { readonly contrast: string; readonly grade: string; readonly x: number };
  };
  /** Where the grades part on a line from 0 to 100. */
  readonly gradeMarks: readonly number[];
  /** A flag that is taken through the steps; undefined in a gallery without one. */
  readonly worked: WorkedFlag | undefined;
  /** Measures of an edge that the page's own text has nothing of. */
  readonly beside: readonly { readonly about: string; readonly source: string }[];
  /** The grid by which flags are compared, and under which mean ΔE00 a page says so. */
  readonly likeness: { readonly columns: string; readonly rows: string; readonly threshold: string };
}

/** The viewing distance and the finest part told apart from it, both in flag heights. */
export interface ViewingView {
  readonly distance: number;
  readonly finest: string;
}

/** What one distance step makes of a flag: the finest part and the blur of an eye, in percent of its height. */
export interface StepRow {
  readonly distance: string;
  readonly finest: string;
  readonly blur: string;
}

/** A published worked example beside what our code makes of the same two reflectances. */
export interface PublishedRow {
  readonly reflectances: string;
  readonly published: string;
  readonly computed: string;
}

/** One pair of colours taken through every step. */
export interface PairRow {
  readonly key: string;
  readonly hexes: readonly [Hex, Hex];
  readonly names: readonly [string, string];
  readonly luminances: readonly [string, string];
  readonly reflectances: readonly [string, string];
  readonly contrast: string;
  /** The contrast on a line from 0 to 100. */
  readonly x: number;
  readonly grade: string;
  readonly ratio: string;
  readonly deltaE00: string;
}

interface Pair {
  readonly names: readonly [string, string];
  readonly hexes: readonly [Hex, Hex];
}

/** Shades are ours; which of these pairs read clearly is common practice, without a source. */
const walkPair: Pair = { names: ["red", "black"], hexes: ["#c8202f", "#000000"] };
const pairs: readonly Pair[] = [
  { names: ["white", "dark blue"], hexes: ["#ffffff", "#12235c"] },
  { names: ["yellow", "green"], hexes: ["#fcd20f", "#0b7a3b"] },
  { names: ["red", "white"], hexes: ["#c8202f", "#ffffff"] },
  { names: ["yellow", "mid green"], hexes: ["#fcd20f", "#1c8c2c"] },
  { names: ["yellow", "light blue"], hexes: ["#fcd20f", "#6cb4e4"] },
  { names: ["white", "yellow"], hexes: ["#ffffff", "#fcd20f"] },
  { names: ["red", "green"], hexes: ["#c8202f", "#0b7a3b"] },
  walkPair,
];

/** Source: a worked example published with the formula; the others are in `tests/reference/`. */
const published = { pair: [62, 20], contrast: 49 } as const;

type Fixed = readonly [name: string, percent: number];
type Law = readonly [Fixed, Fixed];

/** Reflectance in percent that three laws fix. Source: read second-hand; named in `tests/reference/law.ts`. */
const laws: readonly Law[] = [
  [
    ["red", 9.5],
    ["yellow", 56.7],
  ],
  [
    ["orange", 21.5],
    ["white", 72.6],
  ],
  [
    ["blue", 2.7],
    ["white", 91.5],
  ],
];

const methodPath = "/method/";

/** The method page of a gallery, with its own cloth. */
export function presentMethod(result: GalleryResult, format: Format): MethodPage {
  const { gallery } = result;
  const { black, white } = gallery.cloth;
  const weigh = (light: LinearRgb) => format.number(measureLuminance(light), 4);
  return {
    frame: presentFrame(
      {
        path: methodPath,
        title: format.say("method.title"),
        description: format.say("method.description"),
        section: "method",
        ...pictureFirst(orderStudies(result.studies), gallery, format),
      },
      gallery,
      format,
    ),
    cloth: {
      black: format.number(black, 0),
      white: format.number(white, 0),
      marks: [black, white],
    },
    luminance: {
      red: weigh({ linearR: 1, linearG: 0, linearB: 0 }),
      green: weigh({ linearR: 0, linearG: 1, linearB: 0 }),
      blue: weigh({ linearR: 0, linearG: 0, linearB: 1 }),
    },
    ranges: {
      black: format.number(defaultCloth.black, 0),
      white: format.percent(defaultCloth.white),
      paintBlack: format.number(widestCloth.black, 0),
      paintWhite: format.percent(widestCloth.white),
    },
    laws: laws.map((colours) => sayLaw(colours, format)).join(format.say("list.semicolon")),
    viewing: presentViewing(gallery.viewingDistance, format),
    limits: presentLimits(format),
    examples: presentExamples(format),
    pixels: format.number(measuringHeight, 0),
    steps: distanceSteps.map((step) => presentStep(step, format)),
    published: {
      reflectances: format.list(published.pair.map((percent) => format.percent(percent))),
      published: format.contrast(published.contrast),
      computed: format.contrast(measureContrast(...published.pair), 2),
    },
    walk: measurePair(walkPair, gallery.cloth, format),
    pairs: pairs.map((pair) => measurePair(pair, gallery.cloth, format)),
    likeness: {
      columns: format.number(gridColumns, 0),
      rows: format.number(gridRows, 0),
      threshold: format.number(likenessWarning, 0),
    },
    beside: edgeMetrics.flatMap(({ about, source }: EdgeMetric) =>
      about === undefined ? [] : [{ about, source }],
    ),
    near: presentNear(walkPair, format),
    gradeMarks: [softFrom, clearFrom, strongFrom],
    worked: presentWorked(result, linkFrom(methodPath), format),
  };
}

/** Contrasts of one edge, and clarities of a flag, that make an outcome or a verdict. */
function presentExamples(format: Format) {
  const move = (before: number, after: number) => [format.percent(before), format.percent(after)] as const;
  return {
    gained: move(40, 52),
    better: move(20, 30),
    same: move(50, 51),
    clearer: move(63, 64),
    atAPrice: move(57, 86),
    lessClear: move(60, 51),
    mixed: move(91, 88),
  };
}

function sayLaw([first, second]: Law, format: Format): string {
  const contrast = measureContrast(first[1], second[1]);
  const say = ([colour, percent]: typeof first): string =>
    format.say("method.lawColour", {
      colour: sayColour(colour, format),
      reflectance: format.percent(percent, 1),
    });
  return format.say("method.law", {
    first: say(first),
    second: say(second),
    contrast: format.contrast(contrast, 1),
    grade: format.say(gradeIds[gradeOf(contrast)]),
  });
}

function presentViewing(distance: number, format: Format): ViewingView | undefined {
  if (distance === 0) return undefined;
  return { distance, finest: format.number(finestPart(distance), 4) };
}

function presentStep(distance: number, format: Format): StepRow {
  return {
    distance: format.number(distance, 0),
    finest: format.percent(100 * finestPart(distance), 1),
    blur: format.percent(100 * measureBlur(distance, 1), 1),
  };
}

function measurePair({ names, hexes }: Pair, cloth: Cloth, format: Format): PairRow {
  const [first, second] = hexes.map(linearOf);
  if (first === undefined || second === undefined) throw new RangeError("a pair has two colours");
  const reflectances = [measureReflectance(first, cloth), measureReflectance(second, cloth)] as const;
  const contrast = measureContrast(...reflectances);
  return {
    key: names.join("-"),
    hexes,
    names: [sayColour(names[0], format), sayColour(names[1], format)],
    luminances: [format.number(measureLuminance(first), 3), format.number(measureLuminance(second), 3)],
    reflectances: [format.number(reflectances[0], 1), format.number(reflectances[1], 1)],
    contrast: format.contrast(contrast, 1),
    x: Math.round(10 * contrast) / 10,
    grade: format.say(gradeIds[gradeOf(contrast)]),
    ratio: format.number(measureContrastRatio(first, second), 2),
    deltaE00: format.number(measureDifference(first, second), 0),
  };
}

function presentNear(pair: Pair, format: Format): MethodPage["near"] {
  const { contrast, grade, x } = measurePair(pair, widestCloth, format);
  return { ...measurePair(pair, defaultCloth, format), widest: { contrast, grade, x } };
}
