// Floor 5. The whole sequence for one drawing: read, measure, change, measure again, preview.
import type { Cloth } from "../colour/cloth.ts";
import { hexOf, linearOf } from "../colour/parse.ts";
import { simulate, type Vision } from "../colour/vision.ts";
import { compareLooks } from "../measure/compare.ts";
import type { Comparison } from "../measure/comparison.ts";
import { type Frame, measureLooks } from "../measure/figures.ts";
import type { Measure } from "../measure/measure.ts";
import { hasError, type Outcome, type Problem } from "../problem/problem.ts";
import { readDrawing } from "../svg/gate.ts";
import { type ResolvedDrawing, resolveDrawing } from "../svg/instance.ts";
import { mapColours, recolour } from "../svg/recolour.ts";
import type { Drawing } from "../svg/tree.ts";
import { describeDrawing, writeDrawing } from "../svg/write.ts";
import { type Inspection, inspectDrawing } from "./inspect.ts";
import { lookAt } from "./look.ts";
import { type Locate, listColours, type PlannedChange, planChange, planFocus } from "./plan.ts";
import type { EdgeLine, StudyDrawings, StudyResult } from "./result.ts";
import type { Change, Focus, Gallery, Study } from "./study.ts";
import { toEdgeLines } from "./traced.ts";
import type { Viewing } from "./viewing.ts";

export interface AnalyseOptions {
  readonly cloth: Cloth;
  /** In flag heights; 0 is the full drawing. */
  readonly distance: number;
  readonly palette: ReadonlyMap<string, string>;
  readonly focus?: Focus;
  /** Says where a value of the change or the focus stands, for messages; default the drawing's file. */
  readonly locate?: Locate;
}

/** One comparison with its drawings as SVG text. */
export interface DrawnComparison {
  readonly comparison: Comparison;
  readonly change: StudyResult["change"];
  readonly original: string;
  readonly redesign: string;
}

interface Compared extends DrawnComparison {
  readonly edgeLines: readonly EdgeLine[];
  readonly resolvedOriginal: ResolvedDrawing;
  readonly resolvedRedesign: ResolvedDrawing;
}

/** What is written into the metadata of every redesign. */
const unofficialNote = "Unofficial study: a proposal for discussion, not a flag in use.";

/** Measures one drawing. Problems: those of readDrawing and planFocus; study/nothing-drawn, study/not-drawable. */
export async function measureDrawing(
  file: string,
  bytes: Uint8Array,
  options: AnalyseOptions,
): Promise<Outcome<Measure>> {
  const problems: Problem[] = [];
  const inspected = await inspectFile(file, bytes, options, problems);
  if (inspected === undefined) return { value: undefined, problems };
  const { table, looks } = inspected.inspection;
  return {
    value: measureLooks(frameOf(file, options.distance, inspected.inspection), table, looks, options.cloth),
    problems,
  };
}

/** Compares a drawing with itself after `change`. Problems: those of measureDrawing, planChange and recolour. */
export async function compareDrawing(
  file: string,
  bytes: Uint8Array,
  change: Change,
  options: AnalyseOptions,
): Promise<Outcome<DrawnComparison>> {
  const compared = await compare(file, bytes, change, options);
  if (compared.value === undefined) return compared;
  const { comparison, change: said, original, redesign } = compared.value;
  return { value: { comparison, change: said, original, redesign }, problems: compared.problems };
}

/** Computes a study. Problems as in compareDrawing, placed in study.md where they come from it. */
export async function analyseStudy(
  study: Study,
  bytes: Uint8Array,
  gallery: Gallery,
): Promise<Outcome<StudyResult>> {
  const file = study.originalFile;
  const compared = await compare(file, bytes, study.change, {
    cloth: gallery.cloth,
    distance: gallery.viewingDistance,
    palette: gallery.palette,
    locate: (path) => ({ file: study.file, ...study.places.get(path) }),
    ...(study.focus === undefined ? {} : { focus: study.focus }),
  });
  if (compared.value === undefined) return { value: undefined, problems: compared.problems };
  const { comparison, change, edgeLines } = compared.value;
  return {
    value: { study, change, comparison, drawings: drawStudy(compared.value), edgeLines },
    problems: compared.problems,
  };
}

interface InspectedFile {
  readonly drawing: Drawing;
  readonly resolved: ResolvedDrawing;
  readonly viewing: Viewing;
  readonly inspection: Inspection;
}

/** Reads and inspects a file; what is wrong goes to `problems`. With a named focus the colours are looked at first. */
async function inspectFile(
  file: string,
  bytes: Uint8Array,
  options: AnalyseOptions,
  problems: Problem[],
): Promise<InspectedFile | undefined> {
  const read = readDrawing(file, bytes);
  problems.push(...read.problems);
  if (read.value === undefined) return undefined;
  const resolved = resolveDrawing(read.value);
  const viewing: Viewing = { distance: options.distance };
  const inspected = await inspectSafely(resolved, viewing);
  problems.push(...inspected.problems);
  if (inspected.value === undefined || options.focus === undefined) {
    return inspected.value === undefined
      ? undefined
      : { drawing: read.value, resolved, viewing, inspection: inspected.value };
  }
  const focus = planFocus(
    resolved,
    listColours(resolved, inspected.value),
    options.focus,
    options.locate ?? (() => ({ file })),
  );
  problems.push(...focus.problems);
  if (focus.value === undefined || hasError(focus.problems)) return undefined;
  const focused = { ...viewing, focus: focus.value };
  return {
    drawing: read.value,
    resolved,
    viewing: focused,
    inspection: await inspectDrawing(resolved, focused),
  };
}

async function compare(
  file: string,
  bytes: Uint8Array,
  change: Change,
  options: AnalyseOptions,
): Promise<Outcome<Compared>> {
  const problems: Problem[] = [];
  const inspected = await inspectFile(file, bytes, options, problems);
  if (inspected === undefined) return { value: undefined, problems };
  const { resolved, inspection, viewing, drawing } = inspected;
  const planned = planChange(
    resolved,
    listColours(resolved, inspection),
    change,
    options.palette,
    options.locate ?? (() => ({ file })),
  );
  problems.push(...planned.problems);
  if (planned.value === undefined) return { value: undefined, problems };
  const recoloured = recolour(resolved, planned.value);
  problems.push(...recoloured.problems);
  if (recoloured.value === undefined) return { value: undefined, problems };
  const said = {
    replace: planned.value.replace,
    with: planned.value.with,
    ...(change.only === undefined ? {} : { only: change.only }),
  };
  const described = describeDrawing(recoloured.value, unofficialNote);
  const { table, before, after, frame, edgeLines } = await lookTwice(
    resolved,
    viewing,
    recoloured.value,
    planned.value,
  );
  const value = {
    comparison: compareLooks(said, frame, table, before, after, options.cloth),
    change: said,
    original: writeDrawing(drawing),
    redesign: writeDrawing(described),
    edgeLines,
    resolvedOriginal: resolved,
    resolvedRedesign: resolveDrawing(described),
  };
  return { value, problems };
}

/** One edge table, with what its paints look like before and after. */
async function lookTwice(
  resolved: ResolvedDrawing,
  viewing: Viewing,
  redesign: Drawing,
  planned: PlannedChange,
) {
  const { drawing } = resolved;
  const change = { replace: planned.replace, ...(planned.only === undefined ? {} : { only: planned.only }) };
  const inspection = await inspectDrawing(resolved, { ...viewing, change });
  const { map, view, table, traced, paints, looks } = inspection;
  const declared = paints.map((paint) =>
    paint.declared === planned.replace && (planned.only === undefined || paint.selected)
      ? planned.with
      : paint.declared,
  );
  const labels = table.order.map((index) => index + 1);
  const after = await lookAt(redesign, map, paints, labels, declared);
  return {
    table,
    before: looks,
    after,
    frame: frameOf(drawing.file, viewing.distance, inspection),
    edgeLines: toEdgeLines(traced, table, view.height),
  };
}

function frameOf(file: string, distance: number, { proportions, warnings }: Inspection): Frame {
  return { file, proportions, distance, warnings };
}

async function inspectSafely(resolved: ResolvedDrawing, viewing: Viewing): Promise<Outcome<Inspection>> {
  const { file } = resolved.drawing;
  const refuse = (rule: string, reason: string, hint: string): Outcome<Inspection> => ({
    value: undefined,
    problems: [{ rule, severity: "error", file, reason, hint }],
  });
  try {
    const inspection = await inspectDrawing(resolved, viewing);
    if (inspection.paints.length > 0) return { value: inspection, problems: [] };
    return refuse(
      "study/nothing-drawn",
      "The drawing shows nothing.",
      "Check that its shapes have a fill and lie inside the viewBox.",
    );
  } catch (error) {
    const cause = error instanceof Error ? error.message.trim() : String(error);
    return refuse(
      "study/not-drawable",
      `The drawing could not be rendered: ${cause}.`,
      "Simplify it in a drawing program and export it again.",
    );
  }
}

function drawStudy({ original, redesign, resolvedOriginal, resolvedRedesign }: Compared): StudyDrawings {
  const see = (vision: Vision) => {
    const draw = (resolved: ResolvedDrawing): string =>
      writeDrawing(mapColours(resolved, (hex) => hexOf(simulate(linearOf(hex), vision))));
    return { original: draw(resolvedOriginal), redesign: draw(resolvedRedesign) };
  };
  return {
    original,
    redesign,
    seen: { protan: see("protan"), deutan: see("deutan"), tritan: see("tritan"), grey: see("grey") },
  };
}
