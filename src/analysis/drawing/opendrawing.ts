// Floor 6. The beginning of every way through a drawing: read, resolve, measure; and the end of most: a redesign written.
import type { Cloth } from "../../colour/cloth.ts";
import type { Hex } from "../../colour/colour.ts";
import type { Focus } from "../../content/study/study.ts";
import { hasError, type Outcome, type Problem } from "../../problem/problem.ts";
import { readDrawing } from "../../svg/gate/sanitise.ts";
import { type ResolvedDrawing, resolveDrawing } from "../../svg/instance.ts";
import type { Drawing } from "../../svg/tree.ts";
import { describeDrawing, writeDrawing } from "../../svg/writesvg.ts";
import { listColours, planFocus } from "../planchange.ts";
import { checkEffects } from "./effectshown.ts";
import { type Inspection, inspectDrawing, inspectScene } from "./inspect.ts";
import { notDrawable, nothingDrawn } from "./norendering.ts";
import { findSpread, tellLost } from "./unmeasured.ts";
import { findUnpainted } from "./unpainted.ts";
import type { Viewing } from "./viewing.ts";

export interface OpenOptions {
  /** In flag heights; 0 is the full drawing. */
  readonly distance: number;
  readonly focus?: Focus;
  /** What the author calls colours of the drawing. */
  readonly names?: ReadonlyMap<Hex, string>;
  /** Less than everything, as for {@link Viewing}. */
  readonly isBrief?: boolean;
  /** False where only colours, edges and the focus as it is are asked for. */
  readonly followsFocus?: boolean;
}

/** How a drawing is measured and changed. `palette`: name → CSS colour; its reader reports what is no opaque colour. */
export interface AnalyseOptions extends OpenOptions {
  readonly cloth: Cloth;
  readonly palette: ReadonlyMap<string, string>;
}

/** A drawing with all that is known of it before any change. */
export interface OpenedDrawing {
  readonly drawing: Drawing;
  readonly resolved: ResolvedDrawing;
  readonly viewing: Viewing;
  readonly inspection: Inspection;
}

/** What is written into the metadata of every redesign. */
export const unofficialNote = "Unofficial study: a proposal for discussion, not a flag in use.";

/**
 * Opens a drawing. With a named focus the colours are looked at first, because a focus may name one.
 *
 * Problems: those of readDrawing and planFocus; study/nothing-drawn, study/not-drawable, study/colour-lost, study/effect, and
 * the warning study/unpainted.
 */
export async function openDrawing(
  file: string,
  bytes: Uint8Array,
  options: OpenOptions & { readonly palette?: ReadonlyMap<string, string> },
): Promise<Outcome<OpenedDrawing>> {
  const { value: drawing, problems: found } = await readShown(file, bytes);
  const problems: Problem[] = [...found];
  if (drawing === undefined) return { value: undefined, problems };
  const resolved = resolveDrawing(drawing);
  const viewing: Viewing = {
    distance: options.distance,
    ...(options.isBrief === undefined ? {} : { isBrief: options.isBrief }),
    ...(options.names === undefined ? {} : { names: options.names }),
  };
  const steps = options.followsFocus === undefined ? {} : { followsFocus: options.followsFocus };
  const first = options.focus === undefined ? steps : { followsFocus: false };
  const inspected = await inspectSafely(resolved, { ...viewing, ...first });
  problems.push(...inspected.problems);
  if (inspected.value === undefined) return { value: undefined, problems };
  if (options.focus === undefined)
    return {
      value: { drawing, resolved, viewing, inspection: inspected.value },
      problems,
    };
  const focus = planFocus(
    resolved,
    listColours(resolved, inspected.value),
    options.focus,
    options.palette ?? new Map(),
  );
  problems.push(...focus.problems);
  if (focus.value === undefined || hasError(focus.problems)) return { value: undefined, problems };
  const focused = { ...viewing, focus: focus.value };
  const inspection = await inspectScene(inspected.value.ground.scene, { ...focused, ...steps });
  return {
    value: { drawing, resolved, viewing: focused, inspection },
    problems,
  };
}

/**
 * Reads a drawing that is to be shown, measured or not.
 *
 * Problems: those of readDrawing and checkEffects.
 */
export async function readShown(file: string, bytes: Uint8Array): Promise<Outcome<Drawing>> {
  const { value, problems } = readDrawing(file, bytes);
  const effects = value === undefined ? [] : await checkEffects(value);
  if (effects.length === 0) return { value, problems };
  // What is refused for what it leaves out need not be warned of it.
  return {
    value: undefined,
    problems: [...problems.filter(({ rule }) => rule !== "svg/effect"), ...effects],
  };
}

/** Returns a recoloured drawing as SVG text that says it is a proposal. */
export function writeRedesign(drawing: Drawing): string {
  return writeDrawing(describeDrawing(drawing, unofficialNote));
}

async function inspectSafely(resolved: ResolvedDrawing, viewing: Viewing): Promise<Outcome<Inspection>> {
  const { file } = resolved.drawing;
  try {
    const inspection = await inspectDrawing(resolved, viewing);
    const { scene } = inspection.ground;
    const lost = scene.lost.length > 0 ? scene.lost : findSpread(inspection.table, inspection.looks);
    if (lost.length > 0) return { value: undefined, problems: lost.map((each) => tellLost(file, each)) };
    if (inspection.paints.length > 0) return { value: inspection, problems: findUnpainted(file, scene) };
    return { value: undefined, problems: [nothingDrawn(file)] };
  } catch (error) {
    return { value: undefined, problems: [notDrawable(file, error, "rendered")] };
  }
}
