// Floor 2, part of step 5. What a gradient or a pattern comes to on a shape, where that is less than it says.
import type { Hex } from "../colour/colour.ts";
import { parseColour } from "../colour/colourtext.ts";
import type { PaintSource, ResolvedDrawing } from "./instance.ts";
import { chainOf, type SvgElement } from "./tree.ts";

/** A paint, and how much of it shows at the most, 0 to 1, beside the opacities of the shape. */
export interface Followed {
  readonly source: PaintSource;
  readonly alpha01: number;
}

const none: Followed = { source: { kind: "none" }, alpha01: 1 };

/**
 * A gradient without stops paints nothing, and so does a pattern without content (SVG 2, sections 14.2.1 and 14.3.1); a
 * gradient whose stops are all the same opaque colour paints that colour.
 */
export function followServer(source: PaintSource, resolved: ResolvedDrawing): Followed {
  if (source.kind !== "server") return { source, alpha01: 1 };
  const server = resolved.ids.get(source.id);
  const isPattern = server?.name === "pattern";
  if (server === undefined || !(isPattern || server.name.endsWith("Gradient"))) return none;
  const chain = chainOf(server, resolved.ids);
  if (isPattern) return isEmptyPattern(chain) ? none : { source, alpha01: 1 };
  const colours = findStops(server, resolved).map(stopColour);
  const [first] = colours;
  if (first === undefined) return none;
  const alpha01 = Math.max(...colours.map((colour) => colour.alpha01));
  if (colours.some((colour) => colour.hex !== first.hex || colour.alpha01 !== 1)) return { source, alpha01 };
  return { source: { kind: "colour", hex: first.hex, alpha01: 1, site: null, owner: source.owner }, alpha01 };
}

/** Returns the stops of a gradient, its own or those of the gradient it points at. */
export function findStops(gradient: SvgElement, resolved: ResolvedDrawing): readonly SvgElement[] {
  return (
    chainOf(gradient, resolved.ids)
      .map(stopsOf)
      .find((stops) => stops.length > 0) ?? []
  );
}

function isEmptyPattern(chain: readonly SvgElement[]): boolean {
  return chain.every(({ children }) => children.every(({ type }) => type !== "element"));
}

function stopsOf({ children }: SvgElement): readonly SvgElement[] {
  return children.filter((child): child is SvgElement => child.type === "element" && child.name === "stop");
}

function stopColour({ attributes }: SvgElement): { readonly hex: Hex; readonly alpha01: number } {
  const colour = parseColour(attributes["stop-color"] ?? "") ?? { hex: "#000000", alpha01: 1 };
  return { hex: colour.hex, alpha01: colour.alpha01 * Number(attributes["stop-opacity"] ?? 1) };
}
