// Floor 2, part of step 2. Ids and what points at them: unique, resolvable, without circles, and not too many.
import * as allow from "./allow.ts";
import { type Cascade, resolveCascade } from "./cascade.ts";
import { isDashTooFine } from "./value.ts";
import { limit } from "./limit.ts";
import type { Reporter } from "./report.ts";
import { findHref, mapElements, type SvgElement, walkElements } from "./tree.ts";
import { findReference } from "./value.ts";

const plainId = /^[A-Za-z_][\w.-]*$/;

/**
 * Returns the tree with ids made plain and dangling references removed, or undefined after an error.
 *
 * Problems: svg/duplicate-id, svg/circle, svg/too-many-instances, svg/number (dashes); warnings svg/id, svg/dangling.
 */
export function checkReferences(root: SvgElement, reporter: Reporter): SvgElement | undefined {
  const ids = new Map<string, SvgElement>();
  for (const element of walkElements(root)) {
    const id = element.attributes["id"];
    if (id === undefined) continue;
    if (ids.has(id)) {
      reporter.error("svg/duplicate-id", element.attributePlaces["id"] ?? element.place, `The id ${JSON.stringify(id)} stands on two elements.`, "Give one of them another id, and what points at it too.");
      return undefined;
    }
    ids.set(id, element);
  }
  const plain = dropDangling(renameIds(root, ids, reporter), reporter);
  return checkGraph(plain, reporter) ? plain : undefined;
}

function renameIds(root: SvgElement, ids: ReadonlyMap<string, SvgElement>, reporter: Reporter): SvgElement {
  const renamed = new Map<string, string>();
  for (const [id, element] of ids) {
    if (plainId.test(id)) continue;
    let next = `id-${renamed.size + 1}`;
    while (ids.has(next)) next += "-";
    renamed.set(id, next);
    reporter.warn("svg/id", element.attributePlaces["id"] ?? element.place, `The id ${JSON.stringify(id)} was renamed to ${next}.`, "Ids are safest in letters, digits, - and _.");
  }
  if (renamed.size === 0) return root;
  const rename = (name: string, value: string): string => {
    if (name === "id") return renamed.get(value) ?? value;
    if (name === "href" || name === "xlink:href") return `#${renamed.get(value.slice(1)) ?? value.slice(1)}`;
    return value.replace(/url\(\s*(["']?)#([\s\S]*?)\1\s*\)/g, (whole, quote: string, id: string) => (renamed.has(id) ? `url(${quote}#${renamed.get(id)}${quote})` : whole));
  };
  return mapElements(root, (element) => {
    const attributes: Record<string, string> = Object.create(null);
    for (const [name, value] of Object.entries(element.attributes)) attributes[name] = rename(name, value);
    return { ...element, attributes };
  });
}

/** A paint that points at nothing becomes its fallback or `none` (SVG 2, 13.2); other references are dropped. */
function dropDangling(root: SvgElement, reporter: Reporter): SvgElement {
  const ids = idsOf(root);
  return mapElements(root, (element) => {
    const attributes: Record<string, string> = Object.create(null);
    let changed = false;
    for (const [name, value] of Object.entries(element.attributes)) {
      const next = keepReference(name, value, ids);
      if (next !== value) {
        changed = true;
        reporter.warn("svg/dangling", element.attributePlaces[name] ?? element.place, `${name} points at ${value.trim()}, which is not in the drawing; it was ${next === undefined ? "removed" : `replaced by ${next}`}.`);
      }
      if (next !== undefined) attributes[name] = next;
    }
    return changed ? { ...element, attributes } : element;
  });
}

function keepReference(name: string, value: string, ids: ReadonlyMap<string, SvgElement>): string | undefined {
  if (name === "href" || name === "xlink:href") return ids.has(value.slice(1)) ? value : undefined;
  if (name === "style" || !allow.properties.has(name)) return value;
  const id = findReference(value);
  if (typeof id !== "string" || ids.has(id)) return value;
  if (name !== "fill" && name !== "stroke") return undefined;
  const fallback = value.replace(/^\s*url\([^)]*\)/, "").trim();
  return fallback === "" ? "none" : fallback;
}

/** Returns the elements of a tree by id. */
export function idsOf(root: SvgElement): ReadonlyMap<string, SvgElement> {
  const ids = new Map<string, SvgElement>();
  for (const element of walkElements(root)) {
    const id = element.attributes["id"];
    if (id !== undefined && !ids.has(id)) ids.set(id, element);
  }
  return ids;
}

function checkGraph(root: SvgElement, reporter: Reporter): boolean {
  const graph = new Graph(root, resolveCascade(root));
  for (const element of walkElements(root)) {
    const dashes = graph.cascade.get(element)?.get("stroke-dasharray");
    if (dashes !== undefined && isDashTooFine(dashes.value, diagonalOf(root))) {
      reporter.error("svg/number", element.place, `The dash pattern ${JSON.stringify(dashes.value)} is too fine to be drawn.`, "Use dashes that can be seen, or a plain stroke.");
      return false;
    }
  }
  const measured = graph.measure(root);
  if (Array.isArray(measured)) {
    const [start] = measured;
    reporter.error("svg/circle", start?.place ?? root.place, `References run in a circle: ${measured.map(nameOf).join(" → ")}.`, "Make one of them point elsewhere, or remove it.");
    return false;
  }
  if (measured.instances > limit.instances || measured.depth > 4 * limit.depth) {
    reporter.error(
      "svg/too-many-instances",
      root.place,
      measured.instances > limit.instances
        ? `Repetitions by <use> and patterns come to ${formatCount(measured.instances)} shapes; at most ${limit.instances} are drawn.`
        : `Repetitions by <use> are nested ${measured.depth} deep.`,
      "Repeat shapes less often.",
    );
    return false;
  }
  return true;
}

function diagonalOf(root: SvgElement): number {
  const [, , width = 0, height = 0] = (root.attributes["viewBox"] ?? `0 0 ${root.attributes["width"]} ${root.attributes["height"]}`).trim().split(/[\s,]+/).map(Number.parseFloat);
  return Math.hypot(width, height);
}

function formatCount(count: number): string {
  return count > 1e9 ? `over ${Math.min(count, 1e15).toExponential(0)}` : String(count);
}

function nameOf(element: SvgElement): string {
  const id = element.attributes["id"];
  return id === undefined ? `<${element.name}>` : `<${element.name} id="${id}">`;
}

interface Extent {
  readonly instances: number;
  readonly depth: number;
}

/** Follows every reference of an element and everything below it, once each. */
class Graph {
  private readonly known = new Map<SvgElement, Extent>();
  private readonly path: SvgElement[] = [];
  private readonly ids: ReadonlyMap<string, SvgElement>;
  readonly cascade: Cascade;

  constructor(root: SvgElement, cascade: Cascade) {
    this.ids = idsOf(root);
    this.cascade = cascade;
  }

  /** Returns how much drawing `element` costs with all it refers to, or the elements of a circle. */
  measure(element: SvgElement): Extent | SvgElement[] {
    const known = this.known.get(element);
    if (known !== undefined) return known;
    const seen = this.path.indexOf(element);
    if (seen >= 0) return [...this.path.slice(seen), element].filter((step, index, all) => index === 0 || index === all.length - 1 || step.attributes["id"] !== undefined);
    this.path.push(element);
    let instances = 1;
    let depth = 0;
    for (const { target, times } of this.next(element)) {
      const extent = this.measure(target);
      if (Array.isArray(extent)) return extent;
      instances += extent.instances * times;
      depth = Math.max(depth, extent.depth);
    }
    this.path.pop();
    const extent = { instances, depth: depth + 1 };
    this.known.set(element, extent);
    return extent;
  }

  private *next(element: SvgElement): Generator<{ readonly target: SvgElement; readonly times: number }> {
    for (const child of element.children) if (child.type === "element") yield { target: child, times: 1 };
    const href = findHref(element);
    const pointed = href === undefined ? undefined : this.ids.get(href.slice(1));
    if (pointed !== undefined) yield { target: pointed, times: 1 };
    for (const [property, declaration] of this.cascade.get(element) ?? []) {
      const id = findReference(declaration.value);
      const target = typeof id === "string" ? this.ids.get(id) : undefined;
      if (target !== undefined) yield { target, times: property.startsWith("marker") ? countVertices(element) : 1 };
    }
  }
}

function countVertices(element: SvgElement): number {
  const data = element.attributes["d"] ?? element.attributes["points"] ?? "";
  return 1 + Math.ceil((data.match(/[\d.]+/g)?.length ?? 0) / 2);
}
