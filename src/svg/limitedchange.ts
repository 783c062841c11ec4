// Floor 2, part of step 7. A change limited to some showings of some shapes: the narrowest place is found at which
// the colour of all of them, and of nothing else, can be declared.
import type { Hex } from "../colour/colour.ts";
import { parseColour } from "../colour/colourtext.ts";
import { formatColour } from "./colourspelling.ts";
import { type CopyColours, expandUse, findExpandable } from "./copyuse.ts";
import type { Instance, PaintSource, ResolvedDrawing, Site } from "./instance.ts";
import { findPaints, type PaintProperty } from "./paint.ts";
import { readSelectors } from "./style/csstext.ts";
import { matches } from "./style/selector.ts";
import type { SvgElement } from "./tree.ts";
import type { EditList } from "./treeedit.ts";

interface Target {
  readonly instance: Instance;
  readonly property: PaintProperty;
  readonly source: PaintSource & { readonly kind: "colour" };
}

/**
 * Returns the showings that `selector` names, with everything inside them, or a sentence on what is wrong with it.
 * A selector may reach through `use` as if its target stood inside it.
 */
export function selectInstances(resolved: ResolvedDrawing, selector: string): ReadonlySet<Instance> | string {
  const selectors = readSelectors(selector);
  if (typeof selectors === "string") return selectors;
  const test = (instance: Instance): boolean => selectors.some((each) => matches(each, instance));
  const selected = new Set<Instance>();
  for (const instance of resolved.instances) {
    if ((instance.parent !== null && selected.has(instance.parent)) || test(instance)) selected.add(instance);
  }
  return selected;
}

/** Adds the edits for a limited change. */
export function recolourSelected(
  resolved: ResolvedDrawing,
  change: { readonly replace: Hex; readonly with: Hex },
  only: ReadonlySet<Instance>,
  edits: EditList,
): void {
  const all = colourUses(resolved);
  const targets = all.filter(({ instance, source }) => source.hex === change.replace && only.has(instance));
  const isTarget = new Set(targets);
  const covers = (uses: readonly Target[]): boolean => uses.every((use) => isTarget.has(use));
  const expanded = new Set<Instance>();
  for (const target of targets) {
    const { instance, property, source } = target;
    const value = formatColour(change.with, source.alpha01);
    const place = findOverride(target, all, covers);
    const use = findExpandable(instance);
    if (source.site !== null && isDeclaredFor(target, all, covers))
      edits.set(source.site.element, source.site.name, value);
    else if (place !== undefined) edits.set(place, property, value);
    // What cannot change where it is declared gets a copy of its own.
    else if (use !== undefined) expanded.add(use);
    else throw new Error(`the colour of <${instance.element.name}> has no place of its own`);
  }
  for (const use of expanded)
    edits.replace(use.element, expandUse(use, coloursIn(use, targets, change.with)));
  recolourStops(change, only, edits);
}

/** Whether the declaration of a target's colour gives it to targets only. */
function isDeclaredFor(
  { source }: Target,
  all: readonly Target[],
  covers: (uses: readonly Target[]) => boolean,
): boolean {
  const { site } = source;
  const isSame = (other: Site | null): boolean =>
    other !== null && other.element === site?.element && other.name === site.name;
  return site !== null && covers(all.filter((use) => isSame(use.source.site)));
}

function coloursIn(use: Instance, targets: readonly Target[], next: Hex): CopyColours {
  const colours = new Map<Instance, Map<PaintProperty, string>>();
  for (const { instance, property, source } of targets) {
    if (findExpandable(instance) !== use) continue;
    const own = colours.get(instance) ?? new Map<PaintProperty, string>();
    colours.set(instance, own.set(property, formatColour(next, source.alpha01)));
  }
  return colours;
}

function colourUses(resolved: ResolvedDrawing): readonly Target[] {
  const uses: Target[] = [];
  for (const { instance, property, source } of findPaints(resolved).uses)
    if (source.kind === "colour") uses.push({ instance, property, source });
  return uses;
}

/** The shape itself if all its showings change, else the nearest `use` or group through which only targets inherit. */
function findOverride(
  target: Target,
  all: readonly Target[],
  covers: (uses: readonly Target[]) => boolean,
): SvgElement | undefined {
  const { instance, property, source } = target;
  const same = all.filter((use) => use.property === property && use.instance.element === instance.element);
  if (covers(same)) return instance.element;
  if (source.owner === instance) return undefined;
  for (let at = instance.parent; at !== null && at !== source.owner; at = at.parent) {
    const { element } = at;
    const through = all.filter((use) => use.property === property && inheritsThrough(use, element));
    if (through.includes(target) && covers(through)) return element;
  }
  return undefined;
}

function inheritsThrough(use: Target, element: SvgElement): boolean {
  for (let at: Instance | null = use.instance; at !== null && at !== use.source.owner; at = at.parent)
    if (at.element === element) return true;
  return false;
}

function recolourStops(
  change: { readonly replace: Hex; readonly with: Hex },
  only: ReadonlySet<Instance>,
  edits: EditList,
): void {
  for (const { element } of only) {
    if (element.name !== "stop") continue;
    const colour = parseColour(element.attributes["stop-color"] ?? "");
    if (colour?.hex === change.replace)
      edits.set(element, "stop-color", formatColour(change.with, colour.alpha01));
  }
}
