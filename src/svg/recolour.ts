// Floor 2, step 7. One colour change: every colour is changed where it is declared; nothing else in the drawing moves.
import type { Hex } from "../colour/colour.ts";
import { parseColour } from "../colour/colourtext.ts";
import { formatColour } from "./colourspelling.ts";
import type { Instance, ResolvedDrawing } from "./instance.ts";
import { recolourSelected } from "./limitedchange.ts";
import { type Drawing, type SvgElement, walkElements } from "./tree.ts";
import { EditList } from "./treeedit.ts";

export interface ColourChange {
  readonly replace: Hex;
  readonly with: Hex;
  /** Only these showings change; absent: everywhere. */
  readonly only?: ReadonlySet<Instance>;
}

const black: Hex = "#000000";
const colourProperties = ["fill", "stroke", "color", "stop-color"] as const;

/** Returns the drawing after `change`. The geometry, and every byte that is no changed colour, stays as it was. */
export function recolour(resolved: ResolvedDrawing, change: ColourChange): Drawing {
  if (change.only === undefined)
    return mapColours(resolved, (hex) => (hex === change.replace ? change.with : hex));
  const edits = new EditList();
  recolourSelected(resolved, change, change.only, edits);
  return { ...resolved.drawing, root: edits.apply(resolved.drawing.root) };
}

/** Returns the drawing with every declared colour put through `map`. */
export function mapColours(resolved: ResolvedDrawing, map: (hex: Hex) => Hex): Drawing {
  const edits = new EditList();
  recolourEverywhere(resolved, map, edits);
  return { ...resolved.drawing, root: edits.apply(resolved.drawing.root) };
}

function recolourEverywhere(resolved: ResolvedDrawing, map: (hex: Hex) => Hex, edits: EditList): void {
  const { root } = resolved.drawing;
  const masked = elementsInMasks(root);
  for (const element of walkElements(root)) {
    if (masked.has(element)) continue;
    for (const property of colourProperties) {
      const colour = parseColour(element.attributes[property] ?? "");
      if (colour === undefined || map(colour.hex) === colour.hex) continue;
      edits.set(element, property, formatColour(map(colour.hex), colour.alpha01));
    }
  }
  changeInitial(resolved, map(black), edits);
}

/** Shapes without a declared fill are black: the new black is declared once, on the root, where they inherit it. */
function changeInitial(resolved: ResolvedDrawing, next: Hex, edits: EditList): void {
  if (next === black) return;
  const { root } = resolved.drawing;
  for (const name of ["fill", "color"] as const) {
    const isUsed = resolved.instances.some(
      (instance) =>
        instance.shown &&
        [instance.fill, instance.stroke].some(
          (source) => source.kind === "colour" && source.initial === name,
        ),
    );
    if (!isUsed || root.attributes[name] !== undefined) continue;
    edits.set(root, name, next);
    for (const element of walkElements(root)) {
      if (element.name === "mask" && element.attributes[name] === undefined) edits.set(element, name, black);
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
