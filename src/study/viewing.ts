// Floor 5. How a drawing is looked at: from where, for what, and before which change.
import type { Cloth } from "../colour/cloth.ts";
import type { Hex } from "../colour/colour.ts";
import type { Raster } from "../regions/raster.ts";
import type { Instance } from "../svg/instance.ts";

/** A focus that the author names: a colour of the drawing, or shapes. */
export type NamedFocus = { readonly colour: Hex } | { readonly select: ReadonlySet<Instance> };

/** The parts of measuring a drawing, in their order. */
export type Part =
  | "labels"
  | "colours"
  | "check"
  | "distance view"
  | "focus"
  | "lines"
  | "colours along lines"
  | "reads to"
  | "near limit";

/** How a drawing is looked at. `distance` in flag heights; 0 is the full drawing. */
export interface Viewing {
  readonly distance: number;
  /** Height of the measuring picture in pixels, and what renders it; default 720 and librsvg. For checks. */
  readonly heightPixels?: number;
  readonly render?: (svg: string) => Promise<Raster>;
  /** Called when a part of the work is done, for benchmarks. */
  readonly lap?: (part: Part) => void;
  /**
   * Less than everything, as a survey shows it: the focus is followed only until it fails with today's colours on this
   * cloth, and nothing is said of parts near the limit of sight.
   */
  readonly asked?: { readonly cloth: Cloth };
  readonly focus?: NamedFocus;
  /** A change that will be measured: paints it treats differently are not joined, though near-equal. */
  readonly change?: { readonly replace: Hex; readonly only?: ReadonlySet<Instance> };
}
