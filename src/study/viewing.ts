// Floor 5. How a drawing is looked at: from where, for what, and before which change.
import type { Hex } from "../colour/colour.ts";
import type { Instance } from "../svg/instance.ts";

/** A focus that the author names: a colour of the drawing, or shapes. */
export type NamedFocus = { readonly colour: Hex } | { readonly select: ReadonlySet<Instance> };

/** How a drawing is looked at. `distance` in flag heights; 0 is the full drawing. */
export interface Viewing {
  readonly distance: number;
  readonly focus?: NamedFocus;
  /** A change that will be measured: paints it treats differently are not joined, though near-equal. */
  readonly change?: { readonly replace: Hex; readonly only?: ReadonlySet<Instance> };
}
