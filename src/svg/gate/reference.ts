// Floor 2, part of step 2. Ids and what points at them: unique, plain, and pointing at something.

import type { Place } from "../../problem/problem.ts";
import { splitReference } from "../style/attributevalue.ts";
import { findTarget, mapElements, type SvgElement, walkElements } from "../tree.ts";
import { walkXml } from "../xml/xmlnode.ts";
import * as allow from "./allowlist.ts";
import type { Reporter } from "./drawingreport.ts";

const plainId = /^[A-Za-z_][\w.-]*$/;

/**
 * Returns the tree with ids made plain, those that stand twice and mean nothing dropped, and dangling references removed; or
 * undefined after an error.
 *
 * `hidden`: ids on what is not shown.
 *
 * Problems: svg/duplicate-id, svg/unsupported; warnings svg/id, svg/dangling.
 */
export function checkReferences(
  root: SvgElement,
  hidden: ReadonlyMap<string, Place>,
  reporter: Reporter,
): SvgElement | undefined {
  const twice = findTwice(root);
  if (reportUnclear(root, twice, hidden, reporter)) return undefined;
  const single = mapElements(root, (element) =>
    twice.has(element.attributes["id"] ?? "") ? withoutId(element) : element,
  );
  const ids = idsOf(single);
  const linker = new Linker(ids, renameIds(ids, reporter), reporter);
  return mapElements(single, (element) => linker.link(element));
}

/** Where each id stands that several elements of the file have, also those that are dropped: programs mean one or the other. */
function findTwice({ author }: SvgElement): ReadonlyMap<string, readonly Place[]> {
  const all = new Map<string, Place[]>();
  for (const { attributes } of author === undefined ? [] : walkXml(author)) {
    const id = attributes.find(({ uri, local }) => local === "id" && uri === "");
    if (id === undefined) continue;
    const places = all.get(id.value) ?? [];
    places.push(id.place);
    all.set(id.value, places);
  }
  return new Map([...all].filter(([, places]) => places.length > 1));
}

/** Returns whether something points at an id that stands twice, or on what a `switch` does not show. */
function reportUnclear(
  root: SvgElement,
  twice: ReadonlyMap<string, readonly Place[]>,
  hidden: ReadonlyMap<string, Place>,
  reporter: Reporter,
): boolean {
  if (twice.size + hidden.size === 0) return false;
  for (const element of walkElements(root))
    for (const [name, value] of Object.entries(element.attributes)) {
      const id = pointedAt(name, value);
      if (id === undefined || !(twice.has(id) || hidden.has(id))) continue;
      const { line } = element.attributePlaces[name] ?? element.place;
      const by = `and ${name} in line ${line} points at it.`;
      const [first, second] = twice.get(id) ?? [];
      if (first === undefined) reportHidden(id, hidden.get(id), by, reporter);
      else reportTwice(id, first, second, by, reporter);
      return true;
    }
  return false;
}

function reportTwice(
  id: string,
  { line, column }: Place,
  second: Place | undefined,
  by: string,
  reporter: Reporter,
): void {
  reporter.error(
    "svg/duplicate-id",
    second,
    `The id ${JSON.stringify(id)} stands here and in line ${line}, column ${column}, ${by}`,
    `Give one of them another id, such as ${JSON.stringify(`${id}-2`)}, and where url(#…) or href mean that one, change it too.`,
  );
}

function reportHidden(id: string, place: Place | undefined, by: string, reporter: Reporter): void {
  reporter.error(
    "svg/unsupported",
    place,
    `The id ${JSON.stringify(id)} stands on what <switch> does not show, ${by}`,
    "Move what is pointed at out of <switch>, before it.",
  );
}

/** Returns the id that an attribute points at, or undefined. */
function pointedAt(name: string, value: string): string | undefined {
  if (/^(?:xlink:)?href$/.test(name)) return value.slice(1);
  return name !== "filter" && targets[name] === undefined
    ? undefined
    : (splitReference(value)?.id ?? undefined);
}

function withoutId(element: SvgElement): SvgElement {
  const { id: _, ...attributes } = element.attributes;
  return { ...element, attributes };
}

/** Returns the plain names of ids that are not plain, by what they were. */
function renameIds(ids: ReadonlyMap<string, SvgElement>, reporter: Reporter): ReadonlyMap<string, string> {
  const renamed = new Map<string, string>();
  for (const [id, element] of ids) {
    if (plainId.test(id)) continue;
    let next = `id-${renamed.size + 1}`;
    while (ids.has(next)) next += "-";
    renamed.set(id, next);
    reporter.warn(
      "svg/id",
      element.attributePlaces["id"] ?? element.place,
      `The id ${JSON.stringify(id)} was renamed to ${next}.`,
      "Ids are safest in letters, digits, - and _.",
    );
  }
  return renamed;
}

/** What each kind of reference may point at. */
const targets: Readonly<Record<string, RegExp>> = {
  fill: /^(?:linearGradient|radialGradient|pattern)$/,
  stroke: /^(?:linearGradient|radialGradient|pattern)$/,
  "clip-path": /^clipPath$/,
  mask: /^mask$/,
  "marker-start": /^marker$/,
  "marker-mid": /^marker$/,
  "marker-end": /^marker$/,
};

const shown = new Set([...allow.shapes, "g", "svg", "symbol", "use"]);

class Linker {
  private readonly ids: ReadonlyMap<string, SvgElement>;
  private readonly renamed: ReadonlyMap<string, string>;
  private readonly reporter: Reporter;

  constructor(
    ids: ReadonlyMap<string, SvgElement>,
    renamed: ReadonlyMap<string, string>,
    reporter: Reporter,
  ) {
    this.ids = ids;
    this.renamed = renamed;
    this.reporter = reporter;
  }

  link(element: SvgElement): SvgElement {
    const attributes: Record<string, string> = Object.create(null);
    for (const [name, value] of Object.entries(element.attributes)) {
      const next = this.linkValue(element, name, value);
      if (next !== undefined) attributes[name] = next;
    }
    if (element.name === "use") this.addSize(element, attributes);
    return { ...element, attributes };
  }

  /** A `use` without a size has that of what it shows (SVG 2, section 5.5); the measuring renderer asks the `use` alone. */
  private addSize(use: SvgElement, attributes: Record<string, string>): void {
    const target = findTarget(use, this.ids);
    const hasSize = target?.name === "symbol" || target?.name === "svg";
    for (const name of ["width", "height"]) {
      const size = target?.attributes[name];
      // Any other has its own size, and a use of no width is drawn by browsers alone.
      if (!hasSize) delete attributes[name];
      else if (size !== undefined) attributes[name] ??= size;
    }
  }

  private linkValue(element: SvgElement, name: string, value: string): string | undefined {
    if (name === "id") return this.rename(value);
    if (name === "href" || name === "xlink:href") {
      const id = value.slice(1);
      if (this.points(id, (target) => isShownBy(element, target))) return `#${this.rename(id)}`;
      return this.drop(element, name, value, undefined);
    }
    const reference = targets[name] === undefined ? undefined : splitReference(value);
    if (reference === undefined || reference === null) return value;
    if (this.points(reference.id, (target) => targets[name]?.test(target.name) === true))
      return `url(#${this.rename(reference.id)})`;
    const isPaint = name === "fill" || name === "stroke";
    return this.drop(element, name, value, isPaint ? reference.rest || "none" : undefined);
  }

  private points(id: string, isRight: (target: SvgElement) => boolean): boolean {
    const target = this.ids.get(id);
    return target !== undefined && isRight(target);
  }

  private rename(id: string): string {
    return this.renamed.get(id) ?? id;
  }

  /** A paint that points at nothing becomes its fallback or `none` (SVG 2, 13.2); other references are dropped. */
  private drop(
    element: SvgElement,
    name: string,
    value: string,
    next: string | undefined,
  ): string | undefined {
    const target = this.ids.get(value.startsWith("#") ? value.slice(1) : (splitReference(value)?.id ?? ""));
    const where = target === undefined ? "which is not in the drawing" : `which is <${target.name}>`;
    this.reporter.warn(
      "svg/dangling",
      element.attributePlaces[name] ?? element.place,
      `${name} points at ${value.trim()}, ${where}; it was ${next === undefined ? "removed" : `replaced by ${next}`}.`,
    );
    return next;
  }
}

/** A gradient or pattern has what it lacks from another; a `use` shows shapes. */
function isShownBy(element: SvgElement, target: SvgElement): boolean {
  if (element.name === "use") return shown.has(target.name);
  if (element.name === "pattern") return target.name === "pattern";
  return element.name.endsWith("Gradient") && target.name.endsWith("Gradient");
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
