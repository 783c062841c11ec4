// Floor 6. The whole sequence for one drawing: read, measure, change, measure again, preview.

import type { Hex } from "../colour/colour.ts";
import { type NamedColour, nameColour } from "../colour/colourname.ts";
import { hexOf, linearOf } from "../colour/colourtext.ts";
import { simulate, type Vision } from "../colour/vision.ts";
import { defaultPalette, isUsualPalette } from "../content/gallery/palette.ts";
import type { Change } from "../content/study/study.ts";
import { compareLooks } from "../measure/comparelooks.ts";
import type { Comparison } from "../measure/comparison.ts";
import type { PaintLook } from "../measure/edgefigure.ts";
import type { EdgeTable } from "../measure/edgetable.ts";
import { type Frame, measureLooks } from "../measure/measurelooks.ts";
import type { Measure } from "../measure/measurement.ts";
import type { Outcome, Problem } from "../problem/problem.ts";
import type { Raster } from "../regions/raster.ts";
import { measureThinnest } from "../regions/view/distanceview.ts";
import { readConstruction } from "../svg/construction.ts";
import { judgeWritten } from "../svg/gate/sanitise.ts";
import { type ResolvedDrawing, resolveDrawing } from "../svg/instance.ts";
import { type List, labelOf, type Rank } from "../svg/paintnumber.ts";
import { mapColours, recolour } from "../svg/recolour.ts";
import type { Drawing } from "../svg/tree.ts";
import { describeDrawing, writeDrawing } from "../svg/writesvg.ts";
import { askForFocus, findHiddenCharge, proposeFocus } from "./drawing/hiddencharge.ts";
import { type Inspection, inspectDrawing, inspectScene } from "./drawing/inspect.ts";
import {
  type AnalyseOptions,
  type OpenedDrawing,
  openDrawing,
  unofficialNote,
} from "./drawing/opendrawing.ts";
import { lookAlong, lookAt, nameChanged, reachOf, renderTrue } from "./drawing/paintlook.ts";
import type { Scene } from "./drawing/scene.ts";
import { refuseSmall } from "./drawing/smallcolour.ts";
import { toEdgeLines } from "./drawing/tracededge.ts";
import { findLost, findSpread, type Lost, tellLost } from "./drawing/unmeasured.ts";
import { isUnseen, tellUnseen } from "./drawing/unseenchange.ts";
import { rankOpened } from "./options/rankoptions.ts";
import { listColours, type PlannedChange, planChange } from "./planchange.ts";
import type { EdgeLine, MeasuredStudy, StudyDrawings } from "./result.ts";
import { checkNames, settleNames } from "./settlename.ts";

/** One comparison with its drawings as SVG text. */
export interface DrawnComparison {
  readonly comparison: Comparison;
  readonly change: MeasuredStudy["change"];
  /** What the new colour is called. */
  readonly name: string;
  readonly original: string;
  readonly redesign: string;
}

interface Compared extends DrawnComparison {
  readonly opened: OpenedDrawing;
  /** Those of the original. */
  readonly colours: readonly NamedColour[];
  readonly edgeLines: readonly EdgeLine[];
  readonly resolvedOriginal: ResolvedDrawing;
  readonly resolvedRedesign: ResolvedDrawing;
}

/** Measures one drawing. Problems: those of openDrawing. */
export async function measureDrawing(
  file: string,
  bytes: Uint8Array,
  options: AnalyseOptions,
): Promise<Outcome<Measure>> {
  const { value: opened, problems } = await openDrawing(file, bytes, options);
  if (opened === undefined) return { value: undefined, problems };
  const { table, looks } = opened.inspection;
  const frame = frameOf(file, options.distance, opened.inspection);
  return { value: measureLooks(frame, table, looks, options.cloth), problems };
}

/** Compares a drawing with itself after `change`. Problems: those of measureDrawing, planChange and recolour. */
export async function compareDrawing(
  file: string,
  bytes: Uint8Array,
  change: Change,
  options: AnalyseOptions,
): Promise<Outcome<DrawnComparison>> {
  return drawnOnly(await compare(file, bytes, change, options));
}

/**
 * The same of a drawing that was opened by these options and the {@link settleNames} of `change`, without following its focus.
 * Problems: those of planChange and recolour.
 */
export async function compareOpened(
  opened: OpenedDrawing,
  change: Change,
  options: AnalyseOptions,
): Promise<Outcome<DrawnComparison>> {
  return drawnOnly(await changeOpened(opened, change, options));
}

function drawnOnly({ value, problems }: Outcome<Compared>): Outcome<DrawnComparison> {
  if (value === undefined) return { value, problems };
  const { comparison, change, name, original, redesign } = value;
  return { value: { comparison, change, name, original, redesign }, problems };
}

/**
 * Computes a study. Problems as in compareDrawing, those of what study.md says by its dotted path; warnings study/focus-hidden
 * for a charge that runs into a stripe of its own paint, study/colour-unseen for a change that nobody can see,
 * study/name-absent for a name of a colour that is nowhere.
 */
export async function analyseStudy(
  bytes: Uint8Array,
  written: Change,
  options: AnalyseOptions,
): Promise<Outcome<MeasuredStudy>> {
  const compared = await compare("", bytes, written, options);
  if (compared.value === undefined) return { value: undefined, problems: compared.problems };
  const { comparison, change, edgeLines, opened } = compared.value;
  const drawings = drawStudy(compared.value);
  const problems = [...compared.problems, ...drawings.problems];
  if (drawings.value === undefined) return { value: undefined, problems };
  const hidden = await findHiddenCharge(opened);
  const asking = hidden === undefined ? [] : [askForFocus(hidden)];
  const isLost = isUnseen(opened.inspection, change.replace, change.only !== undefined);
  const unseen = isLost ? [tellUnseen(change.replace)] : [];
  return {
    value: {
      change,
      comparison,
      drawings: drawings.value,
      edgeLines,
      construction: readConstruction(compared.value.resolvedRedesign),
      ...(hidden === undefined ? {} : { focusToName: proposeFocus(hidden) }),
    },
    problems: [...problems, ...checkNames(written, compared.value.colours, options), ...asking, ...unseen],
  };
}

async function compare(
  file: string,
  bytes: Uint8Array,
  change: Change,
  options: AnalyseOptions,
): Promise<Outcome<Compared>> {
  const names = settleNames(change, options);
  // What is left of the focus is asked of the drawing before the change, and that is looked at below.
  const opened = await openDrawing(file, bytes, { ...options, names, followsFocus: false });
  if (opened.value === undefined) return { value: undefined, problems: opened.problems };
  const { value, problems } = await changeOpened(opened.value, change, options);
  return { value, problems: [...opened.problems, ...problems] };
}

async function changeOpened(
  opened: OpenedDrawing,
  change: Change,
  options: AnalyseOptions,
): Promise<Outcome<Compared>> {
  const { resolved, inspection, drawing } = opened;
  const { file } = drawing;
  const names = settleNames(change, options);
  const problems: Problem[] = [];
  const colours = listColours(resolved, inspection);
  const offer = (replace: Hex) => listOffers(opened, options, replace);
  const words = { palette: options.palette, names, offer };
  const planned = planChange(resolved, colours, change, words);
  problems.push(...planned.problems);
  if (planned.value === undefined) return { value: undefined, problems };
  const { joined, shapes } = inspection.ground.scene;
  const { replace } = planned.value;
  if (joined > 0 && shapes.paints.every(({ declared }) => declared !== replace)) {
    return { value: undefined, problems: [...problems, refuseSmall(replace, joined)] };
  }
  const recoloured = recolour(resolved, planned.value);
  const described = describeDrawing(recoloured, unofficialNote);
  const written = judgeWritten(described);
  problems.push(...written.problems);
  if (written.value === undefined) return { value: undefined, problems };
  const said = {
    replace: planned.value.replace,
    with: planned.value.with,
    ...(change.only === undefined ? {} : { only: change.only }),
    ...(change.part === undefined ? {} : { part: change.part }),
  };
  const { table, before, after, frame, edgeLines, lost } = await lookTwice(
    opened,
    recoloured,
    planned.value,
    change.part,
  );
  if (lost.length > 0)
    return { value: undefined, problems: [...problems, ...lost.map((each) => tellLost(file, each, true))] };
  const value = {
    name:
      [...after].find(({ hex }) => hex === planned.value?.with)?.name ??
      planned.value.called ??
      nameColour(planned.value.with),
    comparison: compareLooks(said, frame, table, before, after, options.cloth),
    change: said,
    original: writeDrawing(drawing),
    redesign: written.value,
    edgeLines,
    opened,
    colours,
    resolvedOriginal: resolved,
    resolvedRedesign: resolveDrawing(described),
  };
  return { value, problems };
}

/**
 * What `try` would put in the place of `replace`, by the names it prints: with the gallery's palette, and behind that with
 * the usual one, which `try` has at the command line. Single words of that one are left to CSS.
 */
function listOffers(opened: OpenedDrawing, options: AnalyseOptions, replace: Hex): readonly NamedColour[] {
  const offers = (palette: AnalyseOptions["palette"]): readonly NamedColour[] =>
    rankOpened(opened, { ...options, palette }).options.flatMap((option) =>
      option.replace === replace ? [{ hex: option.with, name: option.name }] : [],
    );
  if (isUsualPalette(options.palette)) return offers(options.palette);
  const usual = offers(defaultPalette).filter(({ name }) => name.includes(" "));
  return [...offers(options.palette), ...usual];
}

/**
 * One edge table, with what its paints look like before and after. Only a change that selects parts, which then stand for
 * themselves, needs another rendering of the original.
 */
async function lookTwice(
  { resolved, viewing, inspection: { ground } }: OpenedDrawing,
  redesign: Drawing,
  planned: PlannedChange,
  part: string | undefined,
) {
  const { drawing } = resolved;
  const change = {
    replace: planned.replace,
    ...(planned.only === undefined ? {} : { only: planned.only }),
    ...(part === undefined ? {} : { part }),
  };
  const changed = { ...viewing, change };
  const inspection =
    planned.only === undefined
      ? await inspectScene(ground.scene, changed)
      : await inspectDrawing(resolved, changed);
  const { map, view, table, traced, paints, looks } = inspection;
  const declared = paints.map((paint) =>
    paint.declared === planned.replace && (planned.only === undefined || paint.selected)
      ? planned.with
      : paint.declared,
  );
  const labels = table.order.map(labelOf);
  const { scene } = inspection.ground;
  const picture = looksAsDeclared(scene) ? undefined : await renderTrue(redesign, map);
  const reach = reachOf(measureThinnest(viewing.distance) * map.height);
  const whole = nameChanged(looks, lookAt(picture, map, paints, labels, declared), planned);
  const after = lookAlong(whole, labels, { picture, map, lines: traced, reach });
  return {
    table,
    before: looks,
    after,
    frame: frameOf(drawing.file, viewing.distance, inspection),
    edgeLines: toEdgeLines(traced, table, {
      width: view.width,
      height: view.height,
      marks: inspection.ground.focus.marks,
    }),
    lost: picture === undefined ? [] : findLostAfter(picture, scene, table, after),
  };
}

/** Whether what a change of colour does to a drawing is known without looking. */
function looksAsDeclared({ shapes, joined }: Scene): boolean {
  return joined === 0 && shapes.faint.length === 0 && shapes.paints.every(({ flat }) => flat);
}

/** What nobody told apart may be now: colours of one gradient, near shades, or a faint shape over what is changed. */
function findLostAfter(
  picture: Raster,
  { map, runs, shapes, looks, areas }: Scene,
  { order, edges }: EdgeTable,
  after: List<Rank, PaintLook>,
): readonly Lost[] {
  const changed = new Map([...order.entries()].map(([rank, paint]) => [paint, after[rank]?.hex]));
  const hexes = looks.map(({ hex }, paint) => changed.get(paint) ?? hex);
  const lost = findLost(picture, map, shapes.paints, hexes, areas.flagPixels, runs);
  return lost.length > 0 ? lost : findSpread({ edges }, after);
}

function frameOf(file: string, distance: number, { proportions, warnings }: Inspection): Frame {
  return { file, proportions, distance, warnings };
}

/** Problems: svg/written, where the colours of some vision make a drawing too long. */
function drawStudy({
  original,
  redesign,
  resolvedOriginal,
  resolvedRedesign,
}: Compared): Outcome<StudyDrawings> {
  const all: { readonly drawing: Drawing; readonly text: string }[] = [];
  const draw = (resolved: ResolvedDrawing, vision: Vision): string => {
    const drawing = mapColours(resolved, (hex) => hexOf(simulate(linearOf(hex), vision)));
    const text = writeDrawing(drawing);
    all.push({ drawing, text });
    return text;
  };
  const see = (vision: Vision) => ({
    original: draw(resolvedOriginal, vision),
    redesign: draw(resolvedRedesign, vision),
  });
  const seen = { protan: see("protan"), deutan: see("deutan"), tritan: see("tritan"), grey: see("grey") };
  // They differ in nothing but colours: what holds for the longest holds for all.
  const longest = all.reduce((a, b) => (b.text.length > a.text.length ? b : a));
  const { value, problems } = judgeWritten(longest.drawing);
  return { value: value === undefined ? undefined : { original, redesign, seen }, problems };
}
