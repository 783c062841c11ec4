// Floor 2, step 7. One colour change: every colour is changed where it is declared; nothing else in the drawing moves.
import type { Hex } from "../colour/colour.ts";
import { parseColour } from "../colour/parse.ts";
import type { Outcome } from "../problem/problem.ts";
import type { Declaration, Site } from "./cascade.ts";
import { EditList } from "./edit.ts";
import type { Instance, ResolvedDrawing } from "./instance.ts";
import { recolourSelected } from "./limited.ts";
import { createReporter } from "./report.ts";
import { formatColour } from "./spelling.ts";
import { type Drawing, type SvgElement, walkElements } from "./tree.ts";

export interface ColourChange {
  readonly replace: Hex;
  readonly with: Hex;
  /** Only these showings change; absent: everywhere. */
  readonly only?: ReadonlySet<Instance>;
}

const colourProperties = ["fill", "stroke", "color", "stop-color"] as const;

/**
 * Returns the drawing after `change`. The geometry, and every byte that is no changed colour, stays as it was.
 *
 * Problems: svg/shared (error): a selected shape has its colour from a place that it shares with others.
 */
export function recolour(resolved: ResolvedDrawing, change: ColourChange): Outcome<Drawing> {
  const reporter = createReporter(resolved.drawing.file, resolved.drawing.lines);
  const edits = new EditList();
  if (change.only !== undefined) recolourSelected(resolved, change, change.only, edits, reporter);
  else recolourEverywhere(resolved, (hex) => (hex === change.replace ? change.with : hex), edits);
  const drawing = { ...resolved.drawing, root: edits.apply(resolved.drawing.root) };
  return { value: reporter.problems.length > 0 ? undefined : drawing, problems: reporter.problems };
}

/** Returns the drawing with every declared colour put through `map` (previews of colour vision). */
export function mapColours(resolved: ResolvedDrawing, map: (hex: Hex) => Hex): Drawing {
  const edits = new EditList();
  recolourEverywhere(resolved, map, edits);
  return { ...resolved.drawing, root: edits.apply(resolved.drawing.root) };
}

function recolourEverywhere(resolved: ResolvedDrawing, map: (hex: Hex) => Hex, edits: EditList): void {
  const masked = elementsInMasks(resolved.drawing.root);
  const protectedSites = new Set<string>();
  for (const element of masked) {
    for (const declaration of resolved.cascade.get(element)?.values() ?? [])
      if (declaration.site.kind === "sheet") protectedSites.add(keyOf(declaration.site));
  }
  for (const [element, declarations] of resolved.cascade) {
    if (masked.has(element)) continue;
    for (const property of colourProperties) {
      const declaration = declarations.get(property);
      const next = declaration === undefined ? undefined : mapValue(declaration, map);
      if (declaration === undefined || next === undefined) continue;
      if (protectedSites.has(keyOf(declaration.site)))
        edits.addStyle(element, `${property}:${next}${declaration.important ? "!important" : ""}`);
      else edits.set(declaration.site, next);
    }
    if (element.name === "stop" && !declarations.has("stop-color") && map("#000000") !== "#000000")
      edits.add(element, "stop-color", map("#000000"));
  }
  changeInitial(resolved, map("#000000"), edits);
}

function mapValue(declaration: Declaration, map: (hex: Hex) => Hex): string | undefined {
  const colour =
    declaration.value.toLowerCase() === "initial" && declaration.property === "fill"
      ? { hex: "#000000" as const, alpha01: 1 }
      : parseColour(declaration.value);
  if (colour === undefined) return undefined;
  const next = map(colour.hex);
  return next === colour.hex ? undefined : formatColour(next, colour.alpha01);
}

/** Shapes without a declared fill are black: the new black is declared once, on the root, where they inherit it. */
function changeInitial(resolved: ResolvedDrawing, next: Hex, edits: EditList): void {
  if (next === "#000000") return;
  const { root } = resolved.drawing;
  for (const name of ["fill", "color"] as const) {
    const isUsed = resolved.instances.some(
      (instance) =>
        instance.shown &&
        [instance.fill, instance.stroke].some(
          (source) => source.kind === "colour" && source.initial === name,
        ),
    );
    const own = resolved.cascade.get(root)?.get(name);
    if (!isUsed || (own !== undefined && !/^(?:inherit|unset)$/i.test(own.value))) continue;
    if (own === undefined) edits.add(root, name, next);
    else edits.set(own.site, next);
    for (const element of walkElements(root)) {
      if (element.name === "mask" && resolved.cascade.get(element)?.has(name) !== true)
        edits.add(element, name, "#000000");
    }
  }
}

function elementsInMasks(root: SvgElement): ReadonlySet<SvgElement> {
  const inside = new Set<SvgElement>();
  for (const element of walkElements(root)) {
    if (element.name === "mask" || element.name === "clipPath")
      for (const child of walkElements(element)) inside.add(child);
  }
  return inside;
}

function keyOf(site: Site): string {
  return site.kind === "attribute"
    ? `a ${site.name}`
    : `${site.kind} ${site.element.place.line}:${site.element.place.column} ${site.start}`;
}
