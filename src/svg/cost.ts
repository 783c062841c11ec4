// Floor 2, part of step 2. What a drawing would cost to resolve and to draw, counted before anything is drawn: a
// renderer that is stuck can only be killed.
import { type Cascade, resolveCascade } from "./cascade.ts";
import { parseSheet } from "./css.ts";
import { type Extent, Graph } from "./graph.ts";
import { limit } from "./limit.ts";
import { idsOf } from "./reference.ts";
import type { Reporter } from "./report.ts";
import { type SvgElement, textOf, walkElements } from "./tree.ts";
import { isDashTooFine } from "./value.ts";

/**
 * Returns whether the drawing may be resolved and drawn.
 *
 * Problems: svg/css (selectors), svg/number (dashes), svg/circle, svg/too-many-instances.
 */
export function checkCost(root: SvgElement, reporter: Reporter): boolean {
  if (!checkSelectors(root, reporter)) return false;
  const cascade = resolveCascade(root);
  const diagonal = diagonalOf(root);
  const measured = new Graph(idsOf(root), cascade, diagonal).measure(root);
  if (!("instances" in measured)) {
    reporter.error(
      "svg/circle",
      measured[0]?.place ?? root.place,
      `References run in a circle: ${measured.map(nameOf).join(" → ")}.`,
      "Make one of them point elsewhere, or remove it.",
    );
    return false;
  }
  return checkDashes(cascade, measured, diagonal, reporter) && checkExtent(measured, root, reporter);
}

/** Refuses sheets whose selectors would take long to match: an ancestor or sibling combinator tries every one. */
function checkSelectors(root: SvgElement, reporter: Reporter): boolean {
  const elements = [...walkElements(root)];
  const depth = depthOf(root);
  const siblings = Math.max(1, ...elements.map((element) => element.children.length));
  let tests = 0;
  for (const sheet of elements) {
    if (sheet.name !== "style") continue;
    for (const { selector } of parseSheet(textOf(sheet)).rules) {
      const ancestors = selector.match(/\s/g)?.length ?? 0;
      const beside = selector.match(/[~+:]/g)?.length ?? 0;
      if (/:has\(/i.test(selector) || selector.length > 1000) tests = Number.POSITIVE_INFINITY;
      tests += elements.length * depth ** ancestors * siblings ** beside;
    }
    if (tests <= limit.selectorTests) continue;
    reporter.error(
      "svg/css",
      sheet.place,
      "The style sheet has selectors that take too long to match.",
      "Use plain selectors such as .a or g.a, or write colours as fill attributes.",
    );
    return false;
  }
  return true;
}

function depthOf(element: SvgElement): number {
  return 1 + Math.max(0, ...element.children.map((child) => (child.type === "element" ? depthOf(child) : 0)));
}

function checkDashes(cascade: Cascade, { length }: Extent, diagonal: number, reporter: Reporter): boolean {
  for (const [element, declarations] of cascade) {
    const dashes = declarations.get("stroke-dasharray")?.value;
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

function diagonalOf(root: SvgElement): number {
  const [, , width = 0, height = 0] = (
    root.attributes["viewBox"] ?? `0 0 ${root.attributes["width"]} ${root.attributes["height"]}`
  )
    .trim()
    .split(/[\s,]+/)
    .map(Number.parseFloat);
  return Math.hypot(width, height);
}

function formatCount(count: number): string {
  return count > 1e9 ? `over ${Math.min(count, 1e15).toExponential(0)}` : String(count);
}

function nameOf(element: SvgElement): string {
  const id = element.attributes["id"];
  return id === undefined ? `<${element.name}>` : `<${element.name} id="${id}">`;
}
