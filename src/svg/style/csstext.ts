// Floor 2. CSS text → rules and declarations with the offsets at which they stand. Alone imports css-tree.
import * as csstree from "css-tree/dist/csstree.esm";
import { trimBlanks } from "./attributevalue.ts";
import { type Compound, measureSpecificity, type Selector, type SimpleSelector } from "./selector.ts";

/** One declaration; `start` is its offset, from 0, in the text it was parsed from. */
export interface CssDeclaration {
  readonly property: string;
  readonly value: string;
  readonly important: boolean;
  readonly start: number;
}

export interface CssRule {
  readonly start: number;
  readonly selectors: readonly Selector[];
  readonly declarations: readonly CssDeclaration[];
}

/** Something that is not read: an at-rule, a selector outside the set, or text that cannot be parsed. */
export interface CssOddity {
  readonly kind: "at-rule" | "selector" | "text";
  readonly what: string;
  readonly start: number;
}

export interface CssSheet {
  readonly rules: readonly CssRule[];
  readonly oddities: readonly CssOddity[];
}

/** Parses the content of a `style` attribute. */
export function parseDeclarations(text: string): {
  readonly declarations: readonly CssDeclaration[];
  readonly oddities: readonly CssOddity[];
} {
  const plain = blankComments(text);
  const oddities = findMarks(text);
  const tree = csstree.parse(plain, { context: "declarationList", positions: true, parseValue: false });
  return { declarations: readBlock(tree, plain, oddities), oddities };
}

/** Parses the content of a `style` element. */
export function parseSheet(text: string): CssSheet {
  const plain = blankComments(text);
  const rules: CssRule[] = [];
  const oddities = findMarks(text);
  const tree = csstree.parse(plain, { positions: true, parseValue: false });
  if (tree.type !== "StyleSheet") return { rules, oddities };
  tree.children.forEach((node) => {
    const start = node.loc?.start.offset ?? 0;
    const end = node.loc?.end.offset ?? plain.length;
    if (node.type === "Rule") {
      const prelude = text.slice(start, node.block.loc?.start.offset ?? end);
      const selectors = prelude.includes("/*") ? "a comment in a selector" : readSelectors(prelude);
      if (typeof selectors === "string") oddities.push({ kind: "selector", what: selectors, start });
      else rules.push({ start, selectors, declarations: readBlock(node.block, plain, oddities) });
    } else if (node.type === "Atrule") oddities.push({ kind: "at-rule", what: `@${node.name}`, start });
    else if (node.type !== "CDO" && node.type !== "CDC")
      oddities.push({ kind: "text", what: plain.slice(start, start + 30), start });
  });
  return { rules, oddities };
}

/** Whether a name of a property is one that CSS has; what it has not, every browser passes over. */
export function isCssProperty(name: string): boolean {
  return csstree.lexer.getProperty(name) !== null;
}

/** A byte order mark is a letter of a name to browsers, and nothing or a blank to others. */
function findMarks(text: string): CssOddity[] {
  const start = text.indexOf("\uFEFF");
  return start < 0 ? [] : [{ kind: "text", what: "the invisible character U+FEFF", start }];
}

/** Puts blanks in the place of comments, so that what is left stands where it stood. */
function blankComments(text: string): string {
  let plain = "";
  let from = 0;
  csstree.tokenize(text, (type, start, end) => {
    if (type !== csstree.tokenTypes.Comment) return;
    plain += text.slice(from, start) + text.slice(start, end).replace(/[^\n]/g, " ");
    from = end;
  });
  return plain + text.slice(from);
}

function readBlock(block: csstree.CssNode, text: string, oddities: CssOddity[]): CssDeclaration[] {
  const declarations: CssDeclaration[] = [];
  if (block.type !== "Block" && block.type !== "DeclarationList") return declarations;
  block.children.forEach((node) => {
    const start = node.loc?.start.offset ?? 0;
    if (node.type === "Declaration" && node.value.type === "Raw" && typeof node.important === "boolean")
      declarations.push({
        property: node.property.startsWith("--") ? node.property : node.property.toLowerCase(),
        value: trimBlanks(node.value.value),
        important: node.important,
        start,
      });
    else {
      const what = text.slice(start, Math.min(node.loc?.end.offset ?? text.length, start + 30)).trim();
      if (what !== "" && what !== ";") oddities.push({ kind: "text", what, start });
    }
  });
  return declarations;
}

/** Reads a list of selectors; for what is outside the set, a few words that name it. */
export function readSelectors(text: string): readonly Selector[] | string {
  if (/^\s*,|,\s*,|,\s*$/.test(text) || text.trim() === "") return quote(text);
  try {
    const list = csstree.parse(text, { context: "selectorList" });
    return list.type === "SelectorList" ? readList(list.children) : quote(text);
  } catch {
    return quote(text);
  }
}

function quote(text: string): string {
  return JSON.stringify(text.trim().slice(0, 60));
}

function readList(nodes: csstree.List<csstree.CssNode>): readonly Selector[] | string {
  const selectors: Selector[] = [];
  for (const node of nodes.toArray()) {
    const read = node.type === "Selector" ? readSelector(node) : quote(csstree.generate(node));
    if (typeof read === "string") return read;
    selectors.push(read);
  }
  return selectors.length === 0 ? "a selector of nothing" : selectors;
}

function readSelector(node: csstree.Selector): Selector | string {
  const compounds: Compound[] = [];
  let combinator: Compound["combinator"];
  let tests: SimpleSelector[] = [];
  for (const part of node.children.toArray()) {
    if (part.type === "Combinator") {
      if ((part.name !== " " && part.name !== ">") || tests.length === 0)
        return `the combinator ${quote(part.name)}`;
      compounds.push({ combinator, tests });
      combinator = part.name === ">" ? "child" : "descendant";
      tests = [];
    } else {
      const test = readSimple(part);
      if (test === undefined) return csstree.generate(part);
      tests.push(test);
    }
  }
  if (tests.length === 0) return quote(csstree.generate(node));
  compounds.push({ combinator, tests });
  return { compounds, specificity: measureSpecificity(compounds.flatMap((compound) => compound.tests)) };
}

function readSimple(part: csstree.CssNode): SimpleSelector | undefined {
  if (part.type === "TypeSelector")
    return part.name.includes("|") ? undefined : { kind: "type", name: part.name };
  if (part.type === "IdSelector") return { kind: "id", name: part.name };
  if (part.type === "ClassSelector") return { kind: "class", name: part.name };
  if (part.type === "PseudoClassSelector") return readPseudo(part);
  if (part.type !== "AttributeSelector" || part.matcher !== "=" || part.flags !== null) return undefined;
  const value = part.value?.type === "Identifier" ? part.value.name : part.value?.value;
  if (value === undefined || part.name.name.includes("|")) return undefined;
  return { kind: "attribute", name: part.name.name, value };
}

function readPseudo(part: csstree.PseudoClassSelector): SimpleSelector | undefined {
  const name = part.name.toLowerCase();
  const [argument, more] = part.children?.toArray() ?? [];
  if (name === "first-child" && part.children === null) return { kind: "nth", step: 0, offset: 1 };
  if (more !== undefined || argument === undefined) return undefined;
  if (name === "nth-child" && argument.type === "Nth" && argument.selector === null)
    return readNth(argument.nth);
  if (name !== "not" || argument.type !== "SelectorList") return undefined;
  const selectors = readList(argument.children);
  return typeof selectors === "string" ? undefined : { kind: "not", selectors };
}

function readNth(nth: csstree.AnPlusB | csstree.Identifier): SimpleSelector | undefined {
  if (nth.type === "Identifier") {
    const word = nth.name.toLowerCase();
    if (word !== "even" && word !== "odd") return undefined;
    return { kind: "nth", step: 2, offset: word === "odd" ? 1 : 0 };
  }
  const step = /^[+-]?$/.test(nth.a ?? "0") ? Number(`${nth.a}1`) : Number(nth.a ?? 0);
  const offset = Number(nth.b ?? 0);
  return Number.isInteger(step) && Number.isInteger(offset) ? { kind: "nth", step, offset } : undefined;
}
