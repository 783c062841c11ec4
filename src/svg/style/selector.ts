// Floor 2. The selectors that style sheets of drawings and studies may use, as data, and what they match.
//
// A small set that every browser reads alike, matched on the file as its author wrote it: Selectors 4, sections 5, 6, 14
// and 15 (combinators, types, ids, classes, attributes that are equal, :first-child, :nth-child(), :not()).
import type { XmlElement } from "../xml/xmlnode.ts";

/** An element where it stands; `author` is absent for what the author did not write. A `use` is a parent of its target. */
export interface SelectNode {
  readonly author: XmlElement | undefined;
  readonly parent: SelectNode | null;
  /** Whether it is the only one of its parent, wherever its author wrote it. */
  readonly isAlone?: boolean;
}

export type SimpleSelector =
  | { readonly kind: "type" | "id" | "class"; readonly name: string }
  | { readonly kind: "attribute"; readonly name: string; readonly value: string }
  /** Of its parent's elements every `step`th from the `offset`th, counted from 1. */
  | { readonly kind: "nth"; readonly step: number; readonly offset: number }
  | { readonly kind: "not"; readonly selectors: readonly Selector[] };

/** What one element has to be, and how it is related to the one before. */
export interface Compound {
  readonly combinator: "descendant" | "child" | undefined;
  readonly tests: readonly SimpleSelector[];
}

export interface Selector {
  /** As they are written: the last is what is matched. */
  readonly compounds: readonly Compound[];
  /** Selectors 4, section 17: ids, then classes, attributes and pseudo-classes, then types. */
  readonly specificity: readonly [number, number, number];
}

/** Whether `selector` matches `node`. */
export function matches(selector: Selector, node: SelectNode): boolean {
  return matchesFrom(selector.compounds, selector.compounds.length - 1, node);
}

function matchesFrom(compounds: readonly Compound[], at: number, node: SelectNode): boolean {
  const compound = compounds[at];
  if (compound === undefined || node.author === undefined) return false;
  const { author } = node;
  if (!compound.tests.every((test) => passes(test, author, node))) return false;
  if (compound.combinator === undefined) return true;
  for (let above = node.parent; above !== null; above = above.parent) {
    if (matchesFrom(compounds, at - 1, above)) return true;
    if (compound.combinator === "child") return false;
  }
  return false;
}

function passes(test: SimpleSelector, element: XmlElement, node: SelectNode): boolean {
  if (test.kind === "type") return test.name === "*" || element.local === test.name;
  if (test.kind === "nth") return isNth(test, node.isAlone === true ? 1 : element.index);
  if (test.kind === "not") return !test.selectors.some((selector) => matches(selector, node));
  if (test.kind === "id") return readAttribute(element, "id") === test.name;
  if (test.kind === "attribute") return readAttribute(element, test.name) === test.value;
  return (readAttribute(element, "class") ?? "").split(/[ \t\n\r\f]+/).includes(test.name);
}

/** Selectors 4, section 14.4.1: some n of 0 or more makes `step · n + offset` the index. */
function isNth({ step, offset }: { readonly step: number; readonly offset: number }, index: number): boolean {
  if (step === 0) return index === offset;
  const n = (index - offset) / step;
  return n >= 0 && Number.isInteger(n);
}

/** Returns an attribute without a namespace as the author wrote it. */
export function readAttribute(element: XmlElement, name: string): string | undefined {
  return element.attributes.find(({ local, uri }) => local === name && uri === "")?.value;
}

/** Adds up what the parts of a selector count; `:not()` counts as its most specific argument. */
export function measureSpecificity(tests: readonly SimpleSelector[]): [number, number, number] {
  const sum: [number, number, number] = [0, 0, 0];
  for (const test of tests) {
    if (test.kind === "id") sum[0] += 1;
    else if (test.kind === "type") sum[2] += test.name === "*" ? 0 : 1;
    else if (test.kind !== "not") sum[1] += 1;
    else {
      const best = test.selectors
        .map(({ specificity }) => specificity)
        .sort(compareSpecificity)
        .at(-1);
      for (const index of [0, 1, 2] as const) sum[index] += best?.[index] ?? 0;
    }
  }
  return sum;
}

/** Negative when `a` is less specific than `b`. */
export function compareSpecificity(
  a: readonly [number, number, number],
  b: readonly [number, number, number],
): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
}
