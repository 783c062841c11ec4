// Floor 2, step 3. Which declaration of a property wins on each element, and where it stands in the file.
// CSS Cascade 4, section 6, with presentation attributes below every rule (SVG 2, section 6.6).
import * as allow from "./allow.ts";
import { compareSpecificity, parseDeclarations, parseSheet } from "./css.ts";
import { compileSelector, createNodes } from "./select.ts";
import { type SvgElement, textOf, walkElements } from "./tree.ts";

/** Where a value is written. `start` and `end` are offsets into the attribute's or the sheet's text. */
export type Site =
  | { readonly kind: "attribute"; readonly element: SvgElement; readonly name: string }
  | { readonly kind: "inline"; readonly element: SvgElement; readonly start: number; readonly end: number }
  | { readonly kind: "sheet"; readonly element: SvgElement; readonly start: number; readonly end: number };

export interface Declaration {
  readonly property: string;
  readonly value: string;
  readonly important: boolean;
  readonly site: Site;
}

/** The winning declaration of every property that is declared on an element. */
export type Cascade = ReadonlyMap<SvgElement, ReadonlyMap<string, Declaration>>;

interface SheetRule {
  readonly specificity: readonly [number, number, number];
  readonly order: number;
  readonly declarations: readonly Declaration[];
  readonly matches: (element: SvgElement) => boolean;
}

/** Returns the cascade of all elements below `root`. A rule whose selector cannot be read matches nothing. */
export function resolveCascade(root: SvgElement): Cascade {
  const rules = readRules(root);
  const cascade = new Map<SvgElement, ReadonlyMap<string, Declaration>>();
  for (const element of walkElements(root)) cascade.set(element, resolveElement(element, rules));
  return cascade;
}

function resolveElement(element: SvgElement, rules: readonly SheetRule[]): ReadonlyMap<string, Declaration> {
  const winners = new Map<string, Declaration>();
  for (const name of Object.keys(element.attributes)) {
    const value = element.attributes[name];
    if (value === undefined || !allow.properties.has(name)) continue;
    winners.set(name, {
      property: name,
      value: value.trim(),
      important: false,
      site: { kind: "attribute", element, name },
    });
  }
  const declare = (declaration: Declaration): void => {
    const standing = winners.get(declaration.property);
    if (standing === undefined || !standing.important || declaration.important)
      winners.set(declaration.property, declaration);
  };
  for (const rule of rules) if (rule.matches(element)) rule.declarations.forEach(declare);
  const inline = element.attributes["style"];
  if (inline !== undefined) {
    for (const { property, value, important, valueStart, valueEnd } of parseDeclarations(inline)
      .declarations) {
      declare({
        property,
        value,
        important,
        site: { kind: "inline", element, start: valueStart, end: valueEnd },
      });
    }
  }
  return winners;
}

function readRules(root: SvgElement): readonly SheetRule[] {
  const sheets = [...walkElements(root)].filter((element) => element.name === "style");
  if (sheets.length === 0) return [];
  const nodes = createNodes(root);
  const rules: SheetRule[] = [];
  for (const element of sheets) {
    for (const rule of parseSheet(textOf(element)).rules) {
      const test = compileSelector(rule.selector);
      if (typeof test === "string") continue;
      const matched = new Set(nodes.filter((node) => test(node)).map((node) => node.element));
      rules.push({
        specificity: rule.specificity,
        order: rules.length,
        matches: (candidate) => matched.has(candidate),
        declarations: rule.declarations.map(({ property, value, important, valueStart, valueEnd }) => ({
          property,
          value,
          important,
          site: { kind: "sheet", element, start: valueStart, end: valueEnd },
        })),
      });
    }
  }
  return rules.sort((a, b) => compareSpecificity(a.specificity, b.specificity) || a.order - b.order);
}
