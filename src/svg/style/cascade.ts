// Floor 2, part of step 2. Which declaration of a property wins on each element of a file.
// CSS Cascade 4, section 6, with presentation attributes below every rule (SVG 2, section 6.6).
import type { Place } from "../../problem/problem.ts";
import { limit } from "../gate/drawinglimit.ts";
import type { Reporter } from "../gate/drawingreport.ts";
import { walkXml, type XmlElement } from "../xml/xmlnode.ts";
import { trimBlanks } from "./attributevalue.ts";
import { parseDeclarations } from "./csstext.ts";
import { type Declared, readDeclaration } from "./declaration.ts";
import { isEffectAttribute } from "./effectproperty.ts";
import { properties } from "./property.ts";
import { matches, readAttribute, type SelectNode, type Selector, type SimpleSelector } from "./selector.ts";
import { readSheets, type SheetRule } from "./stylesheet.ts";

/** Finds what is declared of an element that stands at `node`, by property. */
export type Cascade = (node: SelectNode & { readonly author: XmlElement }) => ReadonlyMap<string, Declared>;

type Weighed = Declared & { readonly important: boolean };

/**
 * Reads the style sheets below `root`, or returns undefined where they would take too long to match.
 *
 * Problems: those of readSheets; svg/selector for a rule that a `use` sees otherwise; for each element those of
 * readDeclaration, and svg/css for a style that cannot be read.
 */
export function readCascade(root: XmlElement, reporter: Reporter): Cascade {
  const rules = readSheets(root, reporter);
  const isSlow = reportSlow(root, rules, reporter);
  if (!isSlow) reportDivided(root, rules, reporter);
  return (node) => {
    const winners = new Map<string, Weighed>();
    const declare = (declared: Weighed): void => {
      const standing = winners.get(declared.property);
      if (standing === undefined || !standing.important || declared.important)
        winners.set(declared.property, declared);
    };
    for (const each of readAttributes(node.author, reporter)) declare(each);
    if (!isSlow)
      for (const { selector, declared } of rules) if (matches(selector, node)) declared.forEach(declare);
    for (const each of readStyle(node.author, reporter)) declare(each);
    return winners;
  };
}

function readAttributes({ attributes }: XmlElement, reporter: Reporter): readonly Weighed[] {
  return attributes.flatMap(({ uri, local, value, place }) =>
    uri !== "" || !(properties.has(local) || isEffectAttribute(local)) || local === "marker"
      ? []
      : readDeclaration(local, trimBlanks(value), place, reporter).map((each) => ({
          ...each,
          important: false,
        })),
  );
}

function readStyle({ attributes }: XmlElement, reporter: Reporter): readonly Weighed[] {
  const style = attributes.find(({ uri, local }) => uri === "" && local === "style");
  if (style === undefined) return [];
  const { declarations, oddities } = parseDeclarations(style.value);
  for (const { what } of oddities) reportStyle(what, style.place, reporter);
  return declarations.flatMap(({ property, value, important }) =>
    readDeclaration(property, value, style.place, reporter).map((each) => ({ ...each, important })),
  );
}

function reportStyle(what: string, place: Place, reporter: Reporter): void {
  reporter.error(
    "svg/css",
    place,
    `style is no plain list of declarations: ${JSON.stringify(what.slice(0, 60))}.`,
    'Write style="property: value; …".',
  );
}

/** Refuses sheets whose selectors would take long to match: a descendant combinator tries every ancestor. */
function reportSlow(root: XmlElement, rules: readonly SheetRule[], reporter: Reporter): boolean {
  if (rules.length === 0) return false;
  const { elements, depth } = sizeOf(root);
  let tests = 0;
  for (const { selector, place } of rules) {
    tests += elements * countTests(selector, depth);
    if (tests <= limit.selectorTests) continue;
    reporter.error(
      "svg/css",
      place,
      "The style sheet has selectors that take too long to match.",
      "Use plain selectors such as .a or g.a, or write colours as fill attributes.",
    );
    return true;
  }
  return false;
}

/**
 * Refuses rules that find an element where it was written and not where a `use` shows it, or the other way round: there
 * browsers match selectors inside what is shown alone (SVG 2, section 5.6.2), and one element has one set of attributes.
 */
function reportDivided(root: XmlElement, rules: readonly SheetRule[], reporter: Reporter): void {
  const looking = rules.filter(({ selector }) => looksAround(selector));
  if (looking.length === 0) return;
  const written = new Map<XmlElement, SelectNode>();
  stand(root, null, written);
  for (const target of findShown(root)) {
    const shown = new Map<XmlElement, SelectNode>();
    stand(target, null, shown);
    for (const [element, node] of shown) {
      const here = written.get(element) ?? node;
      const rule = looking.find(({ selector }) => matches(selector, node) !== matches(selector, here));
      if (rule === undefined) continue;
      reporter.error(
        "svg/selector",
        rule.place,
        `The style sheet selects <${element.local}> of line ${element.place.line} by what is around it, which is other where <use> shows it.`,
        "Give the element a class and select by that alone, such as .a.",
      );
      return;
    }
  }
}

function looksAround({ compounds }: Selector): boolean {
  const isAround = (test: SimpleSelector): boolean =>
    test.kind === "nth" || (test.kind === "not" && test.selectors.some(looksAround));
  return compounds.length > 1 || compounds.some(({ tests }) => tests.some(isAround));
}

function stand(element: XmlElement, parent: SelectNode | null, nodes: Map<XmlElement, SelectNode>): void {
  const node = { author: element, parent, isAlone: parent === null };
  nodes.set(element, node);
  for (const child of element.children) if (child.kind === "element") stand(child, node, nodes);
}

/** What `use` elements show, each once. */
function findShown(root: XmlElement): ReadonlySet<XmlElement> {
  const elements = [...walkXml(root)];
  const ids = new Map(elements.map((element) => [`#${readAttribute(element, "id")}`, element]));
  const shown = new Set<XmlElement>();
  for (const { local, attributes } of elements) {
    if (local !== "use") continue;
    for (const attribute of attributes) {
      const target = attribute.local === "href" ? ids.get(attribute.value.trim()) : undefined;
      if (target !== undefined) shown.add(target);
    }
  }
  return shown;
}

/** Most comparisons that one element can take. */
function countTests({ compounds }: Selector, depth: number): number {
  const ancestors = compounds.filter(({ combinator }) => combinator === "descendant").length;
  const inside = compounds.flatMap(({ tests }) =>
    tests.flatMap((test) => (test.kind === "not" ? test.selectors : [])),
  );
  const own = compounds.reduce((sum, { tests }) => sum + tests.length, 0);
  return (own + inside.reduce((sum, selector) => sum + countTests(selector, depth), 0)) * depth ** ancestors;
}

function sizeOf(element: XmlElement): { readonly elements: number; readonly depth: number } {
  let elements = 1;
  let depth = 0;
  for (const child of element.children) {
    if (child.kind !== "element") continue;
    const size = sizeOf(child);
    elements += size.elements;
    depth = Math.max(depth, size.depth);
  }
  return { elements, depth: depth + 1 };
}
