// Floor 2, step 5. Which paints a drawing shows and on which shapes: the input of the label map.
import type { Hex } from "../colour/colour.ts";
import type { Instance, PaintSource, ResolvedDrawing } from "./instance.ts";
import { type List, listed, type PaintIndex } from "./paintnumber.ts";
import { followServer } from "./paintserver.ts";
import type { SvgElement } from "./tree.ts";

export type PaintProperty = "fill" | "stroke";

/** One fill or stroke of one shape. `key` tells which paint it is; see {@link Paint}. */
export interface PaintUse {
  readonly instance: Instance;
  readonly property: PaintProperty;
  readonly key: string;
  readonly source: PaintSource;
}

/**
 * One paint. `declared` is its colour where it has one of its own; gradients and patterns have none.
 * `flat` is false for translucent paint, gradients and patterns: what shows has to be looked at.
 */
export interface Paint {
  readonly key: string;
  readonly declared: Hex | null;
  readonly flat: boolean;
  /** Whether this is the part of a paint that a selector picked out. */
  readonly selected: boolean;
}

export interface PaintedShapes {
  readonly resolved: ResolvedDrawing;
  readonly uses: readonly PaintUse[];
  /** By first appearance in the drawing. */
  readonly paints: List<PaintIndex, Paint>;
  /** Shapes that show at less than half and are left out, one element each. */
  readonly faint: readonly SvgElement[];
}

/** Some shapes, picked out: those in `instances` whose paint has the colour `replace`, or any colour. */
export interface Selection {
  readonly instances: ReadonlySet<Instance>;
  readonly replace: Hex | "any";
}

/** Opacity under which a shape is left out of the labels (design rule of ours). */
export const visibleFrom = 0.5;

/** Finds all paints. With `selection` the selected part of a paint is a paint of its own. */
export function findPaints(resolved: ResolvedDrawing, selection?: Selection): PaintedShapes {
  const uses: PaintUse[] = [];
  const paints = new Map<string, Paint>();
  const faint = new Set<SvgElement>();
  for (const instance of resolved.instances) {
    if (!instance.shown) continue;
    for (const property of ["fill", "stroke"] as const) {
      const { source, alpha01 } = followServer(instance[property], resolved);
      if (source.kind === "none") continue;
      const opacity = alpha01 * (property === "fill" ? instance.fillOpacity : instance.strokeOpacity);
      if (opacity < visibleFrom) {
        if (opacity > 0) faint.add(instance.element);
        continue;
      }
      const paint = describePaint(
        source,
        opacity,
        selection?.instances.has(instance) === true ? selection.replace : undefined,
      );
      if (!paints.has(paint.key)) paints.set(paint.key, paint);
      uses.push({ instance, property, key: paint.key, source });
    }
  }
  return { resolved, uses, paints: listed([...paints.values()]), faint: [...faint] };
}

function describePaint(source: PaintSource, opacity: number, selected: Hex | "any" | undefined): Paint {
  if (source.kind === "server") {
    const isSelected = selected === "any";
    return {
      key: `url(#${source.id})${isSelected ? " s" : ""}`,
      declared: null,
      flat: false,
      selected: isSelected,
    };
  }
  const hex = source.kind === "colour" ? source.hex : "#000000";
  const isSelected = hex === selected || selected === "any";
  const isFlat = opacity > 0.995;
  const key = `${hex}${isFlat ? "" : `/${opacity.toFixed(2)}`}${isSelected ? " s" : ""}`;
  return { key, declared: hex, flat: isFlat, selected: isSelected };
}
