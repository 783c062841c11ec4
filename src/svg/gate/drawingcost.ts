// Floor 2, part of step 2. What a drawing would cost to resolve and to draw, counted before anything is drawn: a
// renderer that is stuck can only be killed.

import { isDashTooFine } from "../style/attributevalue.ts";
import { type SvgElement, type ViewBox, walkElements } from "../tree.ts";
import { limit } from "./drawinglimit.ts";
import type { Reporter } from "./drawingreport.ts";
import { idsOf } from "./reference.ts";
import { type Extent, Graph } from "./referencegraph.ts";

/**
 * Returns whether the drawing may be resolved and drawn.
 *
 * Problems: svg/number (dashes), svg/circle, svg/too-many-instances.
 */
export function checkCost(root: SvgElement, { width, height }: ViewBox, reporter: Reporter): boolean {
  const diagonal = Math.hypot(width, height);
  const measured = new Graph(root, idsOf(root), diagonal).measure(root);
  if (!("instances" in measured)) {
    reporter.error(
      "svg/circle",
      measured[0]?.place ?? root.place,
      `References run in a circle: ${measured.map(nameOf).join(" → ")}.`,
      "Make one of them point elsewhere, or remove it.",
    );
    return false;
  }
  return checkDashes(root, measured, diagonal, reporter) && checkExtent(measured, root, reporter);
}

function checkDashes(root: SvgElement, { length }: Extent, diagonal: number, reporter: Reporter): boolean {
  for (const element of walkElements(root)) {
    const dashes = element.attributes["stroke-dasharray"];
    if (
      dashes === undefined ||
      !(
        isDashTooFine(dashes, diagonal) ||
        isDashTooFine(dashes, (length * limit.dashesPerDiagonal) / limit.dashes)
      )
    )
      continue;
    reporter.error(
      "svg/number",
      element.place,
      `The dash pattern ${JSON.stringify(dashes.slice(0, 60))} is too fine to be drawn.`,
      "Use dashes that can be seen, or a plain stroke.",
    );
    return false;
  }
  return true;
}

function checkExtent(extent: Extent, root: SvgElement, reporter: Reporter): boolean {
  const reason = findExcess(extent);
  if (reason === undefined) return true;
  reporter.error("svg/too-many-instances", root.place, reason, "Repeat shapes less often.");
  return false;
}

function findExcess({ instances, vertices, layers, depth }: Extent): string | undefined {
  if (instances > limit.instances)
    return `Repetitions by <use> and patterns come to ${formatCount(instances)} shapes; at most ${limit.instances} are drawn.`;
  if (vertices > limit.vertices)
    return `The paths have ${formatCount(vertices)} points with their repetitions; at most ${limit.vertices} are drawn.`;
  if (layers > limit.layers)
    return `Masks, clip paths, patterns and translucent groups come to ${formatCount(layers)}; at most ${limit.layers} are drawn.`;
  return depth > limit.chain
    ? `References lead on from one to another more than ${limit.chain} times.`
    : undefined;
}

function formatCount(count: number): string {
  return count > 1e9 ? `over ${Math.min(count, 1e15).toExponential(0)}` : String(count);
}

function nameOf(element: SvgElement): string {
  const id = element.attributes["id"];
  return id === undefined ? `<${element.name}>` : `<${element.name} id="${id}">`;
}
