// Floor 6. How a drawing is looked at: from where, for what, and before which change.
import type { Hex } from "../../colour/colour.ts";
import type { Raster } from "../../regions/raster.ts";
import type { Instance } from "../../svg/instance.ts";

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
  | "distance steps"
  | "colours along lines"
  | "near limit";

/** How a drawing is looked at. `distance` in flag heights; 0 is the full drawing. */
export interface Viewing {
  readonly distance: number;
  /** Height of the measuring picture in pixels, and what renders it; default 720 and librsvg. For checks. */
  readonly heightPixels?: number;
  readonly render?: (svg: string) => Promise<Raster>;
  /** Called when a part of the work is done, for benchmarks. */
  readonly lap?: (part: Part) => void;
  /** Whether nothing is to be said of parts near the limit of sight, as in a survey. */
  readonly isBrief?: boolean;
  /** False where nobody asks what is left of the focus from other distances. */
  readonly followsFocus?: boolean;
  readonly focus?: NamedFocus;
  /** Names of colours that are settled: what the author calls them. */
  readonly names?: ReadonlyMap<Hex, string>;
  /**
   * A change that will be measured: paints it treats differently are not joined, though near-equal. `part`: what readers
   * call the part that it selects.
   */
  readonly change?: {
    readonly replace: Hex;
    readonly only?: ReadonlySet<Instance>;
    readonly part?: string;
  };
}
