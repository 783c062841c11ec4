// Floor 6. What another program imports: one drawing as SVG text → its numbers, its changes, the drawing recoloured. Names
// and shapes here are promised; all else in the package may move.
import { type Cloth, defaultCloth } from "../colour/cloth.ts";
import type { Hex } from "../colour/colour.ts";
import { type NamedColour, nameColour } from "../colour/colourname.ts";
import { defaultPalette } from "../content/gallery/palette.ts";
import type { Change } from "../content/study/study.ts";
import type { Comparison } from "../measure/comparison.ts";
import type { Measure } from "../measure/measurement.ts";
import type { Outcome, Problem } from "../problem/problem.ts";
import { readDrawing as admit, judgeWritten } from "../svg/gate/sanitise.ts";
import { type ResolvedDrawing, resolveDrawing } from "../svg/instance.ts";
import { findPaints } from "../svg/paint.ts";
import { recolour as recolourDrawing } from "../svg/recolour.ts";
import { describeDrawing, writeDrawing } from "../svg/writesvg.ts";
import { compareDrawing, measureDrawing } from "./analyse.ts";
import { type AnalyseOptions, unofficialNote } from "./drawing/opendrawing.ts";
import { readTypedFocus } from "./drawing/typedfocus.ts";
import { type OptionsReport, optionsOf } from "./options/rankoptions.ts";
import { declaredColours, planChange } from "./planchange.ts";

export type { Change, Cloth, Comparison, Hex, Measure, OptionsReport, Outcome, Problem };

/** How a drawing is looked at. */
export interface LookOptions {
  /** Called so in problems; `drawing.svg`. */
  readonly file?: string;
  /** From how many flag heights away; 40. 0 is the full drawing. */
  readonly distance?: number;
  /** What has to be seen: a colour of the drawing, or a CSS selector; else it is found. */
  readonly focus?: string;
  /** Reflectance of the darkest and the lightest cloth in percent; 5 and 85. */
  readonly cloth?: Cloth;
  /** Colours to put in the place of others: name → CSS colour. Else the usual ones. */
  readonly palette?: Readonly<Record<string, string>>;
}

/** A drawing as it was admitted. */
export interface ReadDrawing {
  /** The same picture as we write it, which holds nothing that runs or loads. */
  readonly svg: string;
  /** Every colour that a change can replace; those of gradients too. */
  readonly colours: readonly Hex[];
}

/**
 * Reads a drawing. What cannot be measured or shown safely is refused, with line and column.
 *
 * All functions here work in the process that calls them, without a limit of time: drawings of strangers are for the command,
 * which gives each a process of its own.
 */
export function readDrawing(svg: string, file = "drawing.svg"): Outcome<ReadDrawing> {
  const { value, problems } = admit(file, toBytes(svg));
  if (value === undefined) return { value, problems };
  return {
    value: { svg: writeDrawing(value), colours: findColours(resolveDrawing(value)).map(({ hex }) => hex) },
    problems,
  };
}

/** Measures colours and edges. Contrast in percent of cloth reflectances, lengths in flag heights, shares from 0 to 1. */
export function measure(svg: string, options: LookOptions = {}): Promise<Outcome<Measure>> {
  return measureDrawing(nameOf(options), toBytes(svg), settle(svg, options));
}

/** Compares a drawing with itself after one change: each edge before and after, and whether the flag is clearer. */
export async function compare(
  svg: string,
  change: Change,
  options: LookOptions = {},
): Promise<Outcome<Comparison>> {
  const compared = await compareDrawing(nameOf(options), toBytes(svg), change, settle(svg, options));
  return { value: compared.value?.comparison, problems: compared.problems };
}

/** Tries every change of one colour, and ranks them: the clearest first. */
export function rankOptions(svg: string, options: LookOptions = {}): Promise<Outcome<OptionsReport>> {
  return optionsOf(nameOf(options), toBytes(svg), settle(svg, options));
}

/** Returns the drawing with one colour changed, as SVG text that says it is unofficial. No shape moves; nothing is measured. */
export function recolour(svg: string, change: Change, file = "drawing.svg"): Outcome<string> {
  const read = admit(file, toBytes(svg));
  if (read.value === undefined) return { value: undefined, problems: read.problems };
  const resolved = resolveDrawing(read.value);
  const planned = planChange(resolved, findColours(resolved), change, { palette: defaultPalette });
  const problems = [...read.problems, ...planned.problems];
  if (planned.value === undefined) return { value: undefined, problems };
  const written = judgeWritten(describeDrawing(recolourDrawing(resolved, planned.value), unofficialNote));
  return { value: written.value, problems: [...problems, ...written.problems] };
}

/** Those that are shown, and those of gradients and patterns. */
function findColours(resolved: ResolvedDrawing): NamedColour[] {
  const shown = findPaints(resolved).paints.flatMap(({ declared }) => declared ?? []);
  const colours = new Set([...shown, ...declaredColours(resolved)]);
  return [...colours].map((hex) => ({ hex, name: nameColour(hex) }));
}

function toBytes(svg: string): Uint8Array {
  return new TextEncoder().encode(svg);
}

function nameOf({ file = "drawing.svg" }: LookOptions): string {
  return file;
}

function settle(svg: string, { distance = 40, focus, cloth, palette }: LookOptions): AnalyseOptions {
  return {
    distance,
    cloth: cloth ?? defaultCloth,
    palette: palette === undefined ? defaultPalette : new Map(Object.entries(palette)),
    ...(focus === undefined ? {} : { focus: readTypedFocus(toBytes(svg), focus) }),
  };
}
