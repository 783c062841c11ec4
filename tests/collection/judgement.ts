// For npm run truth: is what is said of the numbers right? Over all files of both open collections: exclusions and verdicts
// that the marks deny, options that nobody can see, first advice by family of colour, comparisons against a measurement of
// the redesign's own file, the focus at twice the measuring height, and grades that hang on the cloth.
import { readFileSync } from "node:fs";
import { compareDrawing, measureDrawing } from "../../src/analysis/analyse.ts";
import { inspectDrawing } from "../../src/analysis/drawing/inspect.ts";
import { type OpenedDrawing, openDrawing } from "../../src/analysis/drawing/opendrawing.ts";
import { type OptionsReport, rankOpened } from "../../src/analysis/options/rankoptions.ts";
import { findSubjects } from "../../src/analysis/options/subject.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import type { Hex } from "../../src/colour/colour.ts";
import { wordOf } from "../../src/colour/colourname.ts";
import { linearOf, parseColour } from "../../src/colour/colourtext.ts";
import { measureDifference } from "../../src/colour/difference.ts";
import { defaultPalette } from "../../src/content/gallery/palette.ts";
import type { Change, Focus } from "../../src/content/study/study.ts";
import { compareLooks } from "../../src/measure/comparelooks.ts";
import type { Comparison } from "../../src/measure/comparison.ts";
import { findLastsTo } from "../../src/measure/focusclarity.ts";
import { type Frame, measureLooks } from "../../src/measure/measurelooks.ts";
import type { Measure } from "../../src/measure/measurement.ts";
import type { Option } from "../../src/measure/options/tryoptions.ts";
import { isSameColour } from "../../src/measure/outcome.ts";
import { listCollection } from "./files.ts";

const settings = { cloth: defaultCloth, palette: defaultPalette, distance: 40 };

/** How far a comparison is from a measurement of the redesign's file: lengths as fractions, clarity in points. */
export interface Disagreement {
  readonly change: string;
  readonly length: number;
  readonly clarity: number;
}

export interface Judgements {
  readonly files: number;
  readonly options: number;
  readonly exclusions: number;
  /** Exclusions that raise the focus's clarity by more than 5 points. */
  readonly wrongExclusions: readonly string[];
  /** Ranked options by which a charge loses a third of its outline, and options under ΔE*ab 10. */
  readonly wrongOptions: readonly string[];
  /** Verdicts that clarity and strength deny. */
  readonly wrongVerdicts: readonly string[];
  /** How often a family of colour is what the first advice puts in; `clear` and `none` where there is none. */
  readonly advice: ReadonlyMap<string, number>;
  readonly compared: number;
  readonly disagreements: readonly Disagreement[];
  readonly foci: number;
  /** Files whose focus lasts to another step when measured twice as high. */
  readonly unsteadyFoci: readonly string[];
  readonly edges: number;
  readonly nearLine: number;
}

/** Checks every `every`th file, beginning with the one at `from`; the focus at twice the height where `looksTwice`. */
export async function checkJudgements(every = 1, from = 0, looksTwice = true): Promise<Judgements> {
  const files = listCollection().filter((_, index) => index % every === from);
  const found = {
    files: files.length,
    options: 0,
    exclusions: 0,
    wrongExclusions: [] as string[],
    wrongOptions: [] as string[],
    wrongVerdicts: [] as string[],
    advice: new Map<string, number>(),
    compared: 0,
    disagreements: [] as Disagreement[],
    foci: 0,
    unsteadyFoci: [] as string[],
    edges: 0,
    nearLine: 0,
  };
  for (const { name, path } of files) {
    const bytes = readFileSync(path);
    const { value: opened } = await openDrawing(name, bytes, settings);
    if (opened === undefined) throw new Error(`${name} was refused`);
    const report = rankOpened(opened, settings);
    found.options += report.options.length;
    found.exclusions += report.vanishing.length;
    found.wrongExclusions.push(...listWrongExclusions(name, report));
    found.wrongOptions.push(...listWrongOptions(name, report));
    found.wrongVerdicts.push(...listWrongVerdicts(name, opened, report));
    const advice = adviceOf(report);
    found.advice.set(advice, (found.advice.get(advice) ?? 0) + 1);
    for (const change of pickChanges(opened, report)) {
      const disagreement = await compareWithFile(name, bytes, change, opened);
      if (disagreement === undefined) continue;
      found.compared += 1;
      if (disagreement.length > 0.01 || disagreement.clarity > 1) found.disagreements.push(disagreement);
    }
    if (opened.inspection.table.focus.source !== "none") {
      found.foci += 1;
      if (looksTwice && !(await isSteady(opened))) found.unsteadyFoci.push(name);
    }
    const { edges } = measureOpened(opened);
    found.edges += edges.length;
    found.nearLine += edges.filter(({ nearLine }) => nearLine).length;
  }
  return found;
}

/** Returns what was found, a line each, with what is wrong below it. */
export function describeJudgements(found: Judgements): readonly string[] {
  const listed = (what: string, wrong: readonly string[], of: number): readonly string[] => [
    `${what}: ${wrong.length} of ${of}`,
    ...wrong.map((each) => `  ${each}`),
  ];
  const tried = found.options + found.exclusions;
  const advice = [...found.advice].sort(([, one], [, other]) => other - one);
  return [
    ...listed(
      "exclusions that raise the clarity of the focus by more than 5 points",
      found.wrongExclusions,
      found.exclusions,
    ),
    ...listed(
      "options under ΔE*ab 10, or that merge a third of an outline",
      found.wrongOptions,
      found.options,
    ),
    ...listed("verdicts that clarity and strength deny", found.wrongVerdicts, tried),
    `first advice: ${advice.map(([word, count]) => `${word} ${count}`).join(", ")}`,
    ...listed(
      "comparisons over 1 % of length or 1 point from the measure of the redesign",
      found.disagreements.map(
        ({ change, length, clarity }) =>
          `${change}  length ${length.toFixed(4)}  clarity ${clarity.toFixed(2)}`,
      ),
      found.compared,
    ),
    ...listed("drawings whose focus lasts to another step at 1440 pixels", found.unsteadyFoci, found.files),
    `grades that hang on the cloth: ${found.nearLine} of ${found.edges} edges`,
  ];
}

function frameOf({ inspection, viewing }: OpenedDrawing): Frame {
  return { file: "", proportions: inspection.proportions, distance: viewing.distance, warnings: [] };
}

function measureOpened(opened: OpenedDrawing): Measure {
  const { table, looks } = opened.inspection;
  return measureLooks(frameOf(opened), table, looks, defaultCloth);
}

const nameOf = (file: string, { replace, with: next }: Pick<Option, "replace" | "with">): string =>
  `${file} ${replace} → ${next}`;

function listWrongExclusions(file: string, { vanishing, focusClarity }: OptionsReport): readonly string[] {
  return vanishing
    .filter((option) => (option.focusClarity ?? 0) - (focusClarity ?? 0) > 5)
    .map((option) => nameOf(file, option));
}

function listWrongOptions(file: string, { options }: OptionsReport): readonly string[] {
  return options
    .filter(({ mergedOutline, deltaEab }) => mergedOutline >= 1 / 3 || deltaEab < 10)
    .map((option) => nameOf(file, option));
}

function listWrongVerdicts(file: string, opened: OpenedDrawing, report: OptionsReport): readonly string[] {
  const { subjects } = findSubjects(opened);
  return [...report.options, ...report.vanishing].flatMap((option) => {
    const subject = subjects.find(({ table, paint }) => table.paints[paint]?.id === option.id);
    if (subject === undefined) return [nameOf(file, option)];
    const { table, looks, paint } = subject;
    const after = looks.map((look, index) =>
      index === paint ? { hex: option.with, name: option.name, uneven: null } : look,
    );
    const change = { replace: option.replace, with: option.with };
    return isDenied(compareLooks(change, frameOf(opened), table, looks, after, defaultCloth))
      ? [nameOf(file, option)]
      : [];
  });
}

/** Clearer where clarity and strength stand or fall, or less clear where they stand or rise. */
function isDenied({ verdict, clarity, strength }: Comparison): boolean {
  const [up, down] = [1, -1].map((sign) =>
    [clarity, strength].some(([before, after]) => sign * ((after ?? 0) - (before ?? 0)) > 0),
  );
  return verdict.startsWith("clearer") ? !up : verdict === "less clear" ? !down : false;
}

function adviceOf({ changeFirst, options, clarity }: OptionsReport): string {
  const [first] = options;
  if (changeFirst !== null && first !== undefined) return wordOf(first.with);
  return (clarity ?? 100) >= 90 ? "clear" : "none";
}

/** The best change of each of the three first colours that merges nothing, and the first of one shape alone. */
function pickChanges({ resolved }: OpenedDrawing, { options }: OptionsReport): readonly Change[] {
  const ids = [...new Set(options.map(({ id }) => id))].slice(0, 3);
  const whole = ids.flatMap(
    (id) => options.find((option) => option.id === id && option.merged.length === 0) ?? [],
  );
  const changes = whole.map(({ replace, with: next }) => ({ replace, with: next }));
  const [first] = changes;
  const shape = resolved.instances.find(
    ({ fill, element, shown }) =>
      shown &&
      fill.kind === "colour" &&
      fill.hex === first?.replace &&
      element.attributes["id"] !== undefined,
  );
  const only = shape === undefined ? "path:first-child" : `[id="${shape.element.attributes["id"]}"]`;
  return first === undefined ? [] : [...changes, { ...first, only }];
}

/**
 * Undefined where the change cannot be made, and where two colours become one, whether they meet or not: what a comparison
 * still tells apart is one paint of the file.
 */
async function compareWithFile(
  file: string,
  bytes: Uint8Array,
  change: Change,
  { inspection }: OpenedDrawing,
): Promise<Disagreement | undefined> {
  const named = [...inspection.paints].find(
    ({ flat, declared }) => flat && declared !== change.replace && declared !== change.with,
  );
  if (named?.declared == null) return undefined;
  const next = parseColour(change.with)?.hex ?? "#000000";
  const others = inspection.looks.filter((_, index) => inspection.paints[index]?.declared !== change.replace);
  if (others.some(({ hex }) => isSameColour(differ(hex, next)))) return undefined;
  const focus: Focus = { colour: named.declared };
  const { value } = await compareDrawing(file, bytes, change, { ...settings, focus });
  if (value === undefined || value.comparison.edges.some(({ outcome }) => outcome === "merged"))
    return undefined;
  const redesign = new TextEncoder().encode(value.redesign);
  const { value: measure } = await measureDrawing(file, redesign, { ...settings, focus });
  if (measure === undefined) return undefined;
  const said = sumLengths(value.comparison.after);
  const is = sumLengths(measure);
  const all = [...is.values()].reduce((sum, length) => sum + length, 0);
  const moved = [...new Set([...said.keys(), ...is.keys()])].reduce(
    (sum, pair) => sum + Math.abs((said.get(pair) ?? 0) - (is.get(pair) ?? 0)),
    0,
  );
  return {
    change: `${file} ${change.replace} → ${change.with}${change.only === undefined ? "" : ` only ${change.only}`}`,
    length: all === 0 ? 0 : moved / all,
    clarity: Math.abs((value.comparison.clarity[1] ?? 0) - (measure.clarity ?? 0)),
  };
}

/** Lengths by the two colours that meet, near-equal ones as one: a file knows nothing of paints that look alike. */
function sumLengths({ edges, colours }: Measure): ReadonlyMap<string, number> {
  const bySize = [...colours].sort((one, other) => other.share - one.share);
  const lookOf = (id: string): string => {
    const hex = colours.find((colour) => colour.id === id)?.hex ?? "#000000";
    return bySize.find((colour) => isSameColour(differ(colour.hex, hex)))?.hex ?? hex;
  };
  const sums = new Map<string, number>();
  for (const { a, b, length } of edges) {
    const pair = [lookOf(a), lookOf(b)].sort().join(" ");
    sums.set(pair, (sums.get(pair) ?? 0) + length);
  }
  return sums;
}

function differ(one: Hex, other: Hex): number {
  return measureDifference(linearOf(one), linearOf(other));
}

async function isSteady({ resolved, inspection, viewing }: OpenedDrawing): Promise<boolean> {
  const twice = await inspectDrawing(resolved, { ...viewing, heightPixels: 1440 });
  return findLastsTo(twice.table.focus.steps) === findLastsTo(inspection.table.focus.steps);
}
