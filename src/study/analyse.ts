// Floor 5. The whole sequence for one drawing: read, measure, change, measure again, preview.
import type { Cloth } from "../colour/cloth.ts";
import type { Hex } from "../colour/colour.ts";
import { hexOf, linearOf } from "../colour/parse.ts";
import { simulate, visions } from "../colour/vision.ts";
import { compareLooks } from "../measure/compare.ts";
import type { Comparison } from "../measure/comparison.ts";
import { measureLooks } from "../measure/figures.ts";
import type { Measure } from "../measure/measure.ts";
import { hasError, type Outcome, type Problem } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import { readDrawing } from "../svg/gate.ts";
import { type Instance, type ResolvedDrawing, resolveDrawing } from "../svg/instance.ts";
import { selectInstances } from "../svg/limited.ts";
import { mapColours, recolour } from "../svg/recolour.ts";
import type { Drawing } from "../svg/tree.ts";
import { describeDrawing, writeDrawing } from "../svg/write.ts";
import { type Inspection, inspectDrawing, lookAt } from "./inspect.ts";
import { resolveReplace, resolveWith, type Whereabouts } from "./resolve.ts";
import type { StudyDrawings, StudyResult } from "./result.ts";
import type { Change, Gallery, Study } from "./study.ts";

export interface AnalyseOptions {
  readonly cloth: Cloth;
  /** In flag heights. */
  readonly distance: number;
  readonly palette: ReadonlyMap<string, string>;
}

/** One comparison with its drawings as SVG text. */
export interface DrawnComparison {
  readonly comparison: Comparison;
  readonly change: StudyResult["change"];
  readonly original: string;
  readonly redesign: string;
  readonly resolvedOriginal: ResolvedDrawing;
  readonly resolvedRedesign: ResolvedDrawing;
}

/** What is written into the metadata of every redesign. */
export const unofficialNote = "Unofficial study: a proposal for discussion, not a flag in use.";

/** Measures one drawing. Problems: those of readDrawing, study/nothing-drawn, study/not-drawable. */
export async function measureDrawing(
  file: string,
  bytes: Uint8Array,
  options: AnalyseOptions,
): Promise<Outcome<Measure>> {
  const read = readDrawing(file, bytes);
  if (read.value === undefined) return { value: undefined, problems: read.problems };
  const inspected = await inspect(read.value, resolveDrawing(read.value));
  const problems = [...read.problems, ...inspected.problems];
  if (inspected.value === undefined) return { value: undefined, problems };
  const { table, looks } = inspected.value;
  return { value: measureLooks(frameOf(file, inspected.value), table, looks, options.cloth), problems };
}

/**
 * Compares a drawing with itself after `change`. `whereabouts` says where a value of the change stands, for messages.
 *
 * Problems: those of measureDrawing, resolveReplace, resolveWith and recolour; study/wrong-selector,
 * study/selects-nothing, study/nothing-changes.
 */
export async function compareDrawing(
  file: string,
  bytes: Uint8Array,
  change: Change,
  options: AnalyseOptions,
  whereabouts: (key: keyof Change) => Whereabouts = () => ({ file }),
): Promise<Outcome<DrawnComparison>> {
  const read = readDrawing(file, bytes);
  const problems: Problem[] = [...read.problems];
  if (read.value === undefined) return { value: undefined, problems };
  const resolved = resolveDrawing(read.value);
  const whole = await inspect(read.value, resolved);
  problems.push(...whole.problems);
  if (whole.value === undefined) return { value: undefined, problems };
  const planned = planChange(resolved, whole.value, change, options, whereabouts);
  problems.push(...planned.problems);
  if (planned.value === undefined) return { value: undefined, problems };
  const recoloured = recolour(resolved, planned.value);
  problems.push(...recoloured.problems);
  if (recoloured.value === undefined) return { value: undefined, problems };
  const comparison = await compareInspected(
    resolved,
    whole.value,
    recoloured.value,
    planned.value,
    change,
    options.cloth,
  );
  const resolvedChange = {
    replace: planned.value.replace,
    with: planned.value.with,
    ...(change.only === undefined ? {} : { only: change.only }),
  };
  return {
    value: {
      comparison,
      change: resolvedChange,
      original: writeDrawing(read.value),
      redesign: writeDrawing(describeDrawing(recoloured.value, unofficialNote)),
      resolvedOriginal: resolved,
      resolvedRedesign: resolveDrawing(recoloured.value),
    },
    problems,
  };
}

/** Computes a study. Problems as in compareDrawing, placed in study.md where they come from it. */
export async function analyseStudy(
  study: Study,
  bytes: Uint8Array,
  gallery: Gallery,
): Promise<Outcome<StudyResult>> {
  const options = { cloth: gallery.cloth, distance: gallery.viewingDistance, palette: gallery.palette };
  const file = study.file.replace(/study\.md$/, study.original);
  const compared = await compareDrawing(file, bytes, study.change, options, (key) => ({
    file: study.file,
    ...study.places.get(`change.${key}`),
  }));
  if (compared.value === undefined) return { value: undefined, problems: compared.problems };
  const { comparison, change } = compared.value;
  return {
    value: { study, change, comparison, drawings: drawStudy(compared.value) },
    problems: compared.problems,
  };
}

interface PlannedChange {
  readonly replace: Hex;
  readonly with: Hex;
  readonly only?: ReadonlySet<Instance>;
}

function planChange(
  resolved: ResolvedDrawing,
  whole: Inspection,
  change: Change,
  options: AnalyseOptions,
  whereabouts: (key: keyof Change) => Whereabouts,
): Outcome<PlannedChange> {
  const colours = listColours(resolved, whole);
  const replace = resolveReplace(change.replace, colours, whereabouts("replace"));
  const next = resolveWith(change.with, options.palette, whereabouts("with"));
  const only =
    change.only === undefined ? {} : select(resolved, change.only, replace.hex, whereabouts("only"));
  const problems = [replace.problem, next.problem, only.problem].filter((problem) => problem !== undefined);
  if (replace.hex === undefined || next.hex === undefined || hasError(problems))
    return { value: undefined, problems };
  if (replace.hex === next.hex) {
    problems.push({
      rule: "study/nothing-changes",
      severity: "error",
      ...whereabouts("with"),
      reason: `The change replaces ${replace.hex} by itself.`,
      hint: "Choose another colour for with:.",
    });
    return { value: undefined, problems };
  }
  return {
    value: {
      replace: replace.hex,
      with: next.hex,
      ...(only.instances === undefined ? {} : { only: only.instances }),
    },
    problems,
  };
}

/** Colours that can be replaced: those the drawing declares, the colours of gradient stops among them. */
function listColours(
  resolved: ResolvedDrawing,
  whole: Inspection,
): readonly { readonly hex: Hex; readonly name: string }[] {
  const listed = new Map<Hex, string>();
  for (const [index, paint] of whole.paints.entries()) {
    const name = whole.looks[index]?.name ?? "";
    if (paint.declared !== null && !listed.has(paint.declared)) listed.set(paint.declared, name);
  }
  for (const hex of declaredColours(resolved))
    if (!listed.has(hex)) listed.set(hex, "in a gradient or pattern");
  return [...listed].map(([hex, name]) => ({ hex, name }));
}

function declaredColours(resolved: ResolvedDrawing): ReadonlySet<Hex> {
  const found = new Set<Hex>();
  mapColours(resolved, (hex) => {
    found.add(hex);
    return hex;
  });
  found.delete("#000000");
  return found;
}

function select(
  resolved: ResolvedDrawing,
  selector: string,
  replace: Hex | undefined,
  at: Whereabouts,
): { readonly instances?: ReadonlySet<Instance>; readonly problem?: Problem } {
  const instances = selectInstances(resolved, selector);
  const refuse = (rule: string, reason: string, hint: string): { readonly problem: Problem } => ({
    problem: { rule, severity: "error", ...at, reason, hint },
  });
  if (typeof instances === "string") {
    return refuse(
      "study/wrong-selector",
      `${quoteText(selector)} is not a CSS selector: ${instances}.`,
      'Type a selector such as "#wheel" or "g.star path".',
    );
  }
  if (instances.size === 0) {
    const ids = [...resolved.ids.keys()].slice(0, 12).map((id) => `#${id}`);
    return refuse(
      "study/selects-nothing",
      `${quoteText(selector)} matches nothing in the drawing.`,
      ids.length === 0
        ? "The drawing has no ids: give the element an id in the SVG file."
        : `It has: ${ids.join(", ")}.`,
    );
  }
  const has = [...instances].some(
    (instance) =>
      instance.element.name === "stop" ||
      [instance.fill, instance.stroke].some(
        (source) => source.kind === "server" || (source.kind === "colour" && source.hex === replace),
      ),
  );
  if (replace !== undefined && !has) {
    return refuse(
      "study/selects-nothing",
      `${quoteText(selector)} matches nothing that has the colour ${replace}.`,
      "Select the elements that have the colour, or leave only: out.",
    );
  }
  return { instances };
}

async function compareInspected(
  resolved: ResolvedDrawing,
  whole: Inspection,
  redesign: Drawing,
  planned: PlannedChange,
  change: Change,
  cloth: Cloth,
): Promise<Comparison> {
  const inspected =
    planned.only === undefined
      ? whole
      : await inspectDrawing(resolved, { instances: planned.only, replace: planned.replace });
  const declared = inspected.paints.map((paint) => {
    const isChanged = paint.declared === planned.replace && (planned.only === undefined || paint.selected);
    return isChanged ? planned.with : paint.declared;
  });
  const after = await lookAt(redesign, inspected.map, inspected.table, inspected.paints, declared);
  const said = {
    replace: planned.replace,
    with: planned.with,
    ...(change.only === undefined ? {} : { only: change.only }),
  };
  return compareLooks(
    said,
    frameOf(resolved.drawing.file, inspected),
    inspected.table,
    inspected.looks,
    after,
    cloth,
  );
}

function frameOf(file: string, inspected: Inspection) {
  return { file, proportions: inspected.proportions, distance: 0, warnings: inspected.warnings };
}

async function inspect(drawing: Drawing, resolved: ResolvedDrawing): Promise<Outcome<Inspection>> {
  const refuse = (rule: string, reason: string, hint: string): Outcome<Inspection> => ({
    value: undefined,
    problems: [{ rule, severity: "error", file: drawing.file, reason, hint }],
  });
  try {
    const inspection = await inspectDrawing(resolved);
    if (inspection.paints.length > 0) return { value: inspection, problems: [] };
    return refuse(
      "study/nothing-drawn",
      "The drawing shows nothing.",
      "Check that its shapes have a fill and lie inside the viewBox.",
    );
  } catch (error) {
    return refuse(
      "study/not-drawable",
      `The drawing could not be rendered: ${error instanceof Error ? error.message.trim() : String(error)}.`,
      "Simplify it in a drawing program and export it again.",
    );
  }
}

function drawStudy({
  original,
  redesign,
  resolvedOriginal,
  resolvedRedesign,
}: DrawnComparison): StudyDrawings {
  const see = (resolved: ResolvedDrawing, vision: (typeof visions)[number]): string =>
    writeDrawing(mapColours(resolved, (hex) => hexOf(simulate(linearOf(hex), vision))));
  const [protan, deutan, tritan, grey] = visions.map((vision) => ({
    original: see(resolvedOriginal, vision),
    redesign: see(resolvedRedesign, vision),
  }));
  if (protan === undefined || deutan === undefined || tritan === undefined || grey === undefined)
    throw new RangeError("a kind of vision is missing");
  return { original, redesign, seen: { protan, deutan, tritan, grey } };
}
