// Floor 2, part of step 2. Ids and what points at them: unique, plain, and pointing at something.
import * as allow from "./allow.ts";
import type { Reporter } from "./report.ts";
import { mapElements, type SvgElement, type SvgNode, walkElements } from "./tree.ts";
import { findReference } from "./value.ts";

const plainId = /^[A-Za-z_][\w.-]*$/;

/**
 * Returns the tree with ids made plain and dangling references removed, or undefined after an error.
 *
 * Problems: svg/duplicate-id; warnings svg/id, svg/dangling.
 */
export function checkReferences(root: SvgElement, reporter: Reporter): SvgElement | undefined {
  const ids = new Map<string, SvgElement>();
  for (const element of walkElements(root)) {
    const id = element.attributes["id"];
    if (id === undefined) continue;
    if (ids.has(id)) {
      reporter.error(
        "svg/duplicate-id",
        element.attributePlaces["id"] ?? element.place,
        `The id ${JSON.stringify(id)} stands on two elements.`,
        `Give one of them another id, such as ${JSON.stringify(`${id}-2`)}, and where url(#…) or href mean that one, change it too.`,
      );
      return undefined;
    }
    ids.set(id, element);
  }
  return dropDangling(renameIds(root, ids, reporter), reporter);
}

function renameIds(root: SvgElement, ids: ReadonlyMap<string, SvgElement>, reporter: Reporter): SvgElement {
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
  if (renamed.size === 0) return root;
  const rename = (name: string, value: string): string => {
    if (name === "id") return renamed.get(value) ?? value;
    if (name === "href" || name === "xlink:href") return `#${renamed.get(value.slice(1)) ?? value.slice(1)}`;
    return renameIn(value);
  };
  const renameIn = (text: string): string =>
    text.replace(/url\(\s{0,99}(["']?)#([\s\S]{0,999}?)\1\s{0,99}\)/g, (whole, quote: string, id: string) =>
      renamed.has(id) ? `url(${quote}#${renamed.get(id)}${quote})` : whole,
    );
  const renameText = (node: SvgNode): SvgNode =>
    node.type === "text" ? { ...node, value: renameIn(node.value) } : node;
  return mapElements(root, (element) => {
    const attributes: Record<string, string> = Object.create(null);
    for (const [name, value] of Object.entries(element.attributes)) attributes[name] = rename(name, value);
    return {
      ...element,
      attributes,
      children: element.name === "style" ? element.children.map(renameText) : element.children,
    };
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
        reporter.warn(
          "svg/dangling",
          element.attributePlaces[name] ?? element.place,
          `${name} points at ${value.trim()}, which is not in the drawing; it was ${next === undefined ? "removed" : `replaced by ${next}`}.`,
        );
      }
      if (next !== undefined) attributes[name] = next;
    }
    return changed ? { ...element, attributes } : element;
  });
}

function keepReference(
  name: string,
  value: string,
  ids: ReadonlyMap<string, SvgElement>,
): string | undefined {
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
