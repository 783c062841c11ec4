// Floor 2. CSS text → rules and declarations with the offsets of their values. The door to css-tree.
import * as csstree from "css-tree";

/** One declaration. Offsets from 0 into the text it was parsed from; `end` is behind a following semicolon. */
export interface CssDeclaration {
  readonly property: string;
  readonly value: string;
  readonly important: boolean;
  readonly start: number;
  readonly end: number;
  readonly valueStart: number;
  readonly valueEnd: number;
}

export interface CssRule {
  /** One selector of the rule's list. */
  readonly selector: string;
  /** Selectors 4, section 15: ids, then classes, attributes and pseudo-classes, then types. */
  readonly specificity: readonly [number, number, number];
  readonly declarations: readonly CssDeclaration[];
}

/** Something in a sheet that is no plain rule: an at-rule, or text that cannot be parsed. */
export interface CssOddity {
  readonly what: string;
  readonly start: number;
  readonly end: number;
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
  const oddities: CssOddity[] = [];
  const tree = csstree.parse(text, {
    context: "declarationList",
    positions: true,
    parseValue: false,
  });
  return { declarations: readBlock(tree, text, 0, oddities), oddities };
}

/** Parses the content of a `style` element. Every selector of a list becomes a rule of its own. */
export function parseSheet(text: string): CssSheet {
  const rules: CssRule[] = [];
  const oddities: CssOddity[] = [];
  const tree = csstree.parse(text, { positions: true, parseValue: false });
  if (tree.type !== "StyleSheet") return { rules, oddities };
  tree.children.forEach((node) => {
    if (node.type === "Rule" && node.prelude.type === "SelectorList") {
      const declarations = readBlock(node.block, text, 0, oddities);
      node.prelude.children.forEach((selector) => {
        rules.push({
          selector: csstree.generate(selector),
          specificity: measureSpecificity(selector),
          declarations,
        });
      });
    } else if (node.type === "Atrule") {
      oddities.push({
        what: `@${node.name}`,
        start: node.loc?.start.offset ?? 0,
        end: node.loc?.end.offset ?? text.length,
      });
    } else if (node.type !== "Comment" && node.type !== "CDO" && node.type !== "CDC") {
      oddities.push({
        what: text.slice(node.loc?.start.offset ?? 0, (node.loc?.start.offset ?? 0) + 30),
        start: node.loc?.start.offset ?? 0,
        end: node.loc?.end.offset ?? text.length,
      });
    }
  });
  return { rules, oddities };
}

/** Returns where the comments of a sheet or of a list of declarations stand. */
export function findComments(text: string): readonly { readonly start: number; readonly end: number }[] {
  const comments: { start: number; end: number }[] = [];
  csstree.tokenize(text, (type, start, end) => {
    if (type === csstree.tokenTypes.Comment) comments.push({ start, end });
  });
  return comments;
}

/** What a string of a selector or of url() may hold: nothing that would be something else outside the quotes. */
const plainString = /^["'][^@/\\<>:;{}*]*["']$/;

/**
 * Returns the first token that could load something, run, or end the sheet, or that would once the quotes around it
 * are lost: at-rules, addresses, `<!--`, `javascript:`. Undefined where there is none.
 */
export function findLive(text: string): string | undefined {
  let live: string | undefined;
  let isAddress = false;
  const { tokenTypes } = csstree;
  const always: readonly number[] = [
    tokenTypes.AtKeyword,
    tokenTypes.BadString,
    tokenTypes.BadUrl,
    tokenTypes.CDO,
    tokenTypes.CDC,
    tokenTypes.Comment,
  ];
  csstree.tokenize(text, (type, start, end) => {
    const token = text.slice(start, end);
    const isLive =
      always.includes(type) ||
      (type === tokenTypes.String && !plainString.test(token)) ||
      (type === tokenTypes.Ident && /(?:java|vb)script$/i.test(token)) ||
      (type === tokenTypes.Url && !/^url\(\s*#/i.test(token)) ||
      (isAddress && type !== tokenTypes.WhiteSpace && !/^["']#/.test(token));
    if (type !== tokenTypes.WhiteSpace)
      isAddress =
        type === tokenTypes.Function &&
        /^(?:url|src|image|image-set|-webkit-image-set|expression)\($/i.test(token);
    if (isLive) live ??= token;
  });
  return live;
}

function readBlock(
  block: csstree.CssNode,
  text: string,
  base: number,
  oddities: CssOddity[],
): CssDeclaration[] {
  const declarations: CssDeclaration[] = [];
  if (block.type !== "Block" && block.type !== "DeclarationList") return declarations;
  block.children.forEach((node) => {
    const start = (node.loc?.start.offset ?? 0) + base;
    const nodeEnd = (node.loc?.end.offset ?? text.length) + base;
    if (node.type === "Declaration" && node.value.type === "Raw") {
      const valueStart = node.value.loc?.start.offset ?? start;
      const valueEnd = node.value.loc?.end.offset ?? nodeEnd;
      const trimmed = trimRange(text, valueStart, valueEnd);
      declarations.push({
        property: node.property.toLowerCase(),
        value: text.slice(trimmed[0], trimmed[1]),
        important: node.important !== false,
        start,
        end: skipSemicolon(text, nodeEnd),
        valueStart: trimmed[0],
        valueEnd: trimmed[1],
      });
    } else if (node.type !== "Comment") {
      oddities.push({
        what: text.slice(start, Math.min(nodeEnd, start + 30)),
        start,
        end: skipSemicolon(text, nodeEnd),
      });
    }
  });
  return declarations;
}

function trimRange(text: string, start: number, end: number): readonly [number, number] {
  let from = start;
  let to = end;
  while (from < to && /\s/.test(text[from] ?? "")) from += 1;
  while (to > from && /\s/.test(text[to - 1] ?? "")) to -= 1;
  return [from, to];
}

function skipSemicolon(text: string, offset: number): number {
  const rest = /^\s*;/.exec(text.slice(offset));
  return rest === null ? offset : offset + rest[0].length;
}

function measureSpecificity(selector: csstree.CssNode): [number, number, number] {
  const sum: [number, number, number] = [0, 0, 0];
  if (selector.type !== "Selector") return sum;
  selector.children.forEach((part) => {
    if (part.type === "IdSelector") sum[0] += 1;
    else if (part.type === "ClassSelector" || part.type === "AttributeSelector") sum[1] += 1;
    else if (part.type === "TypeSelector" && part.name !== "*") sum[2] += 1;
    else if (part.type === "PseudoElementSelector") sum[2] += 1;
    else if (part.type === "PseudoClassSelector") addPseudo(part, sum);
  });
  return sum;
}

/** `:not()`, `:is()` and `:has()` count as their most specific argument, `:where()` as nothing (Selectors 4, 15). */
function addPseudo(part: csstree.PseudoClassSelector, sum: [number, number, number]): void {
  if (part.name === "where") return;
  if (!["not", "is", "has"].includes(part.name)) {
    sum[1] += 1;
    return;
  }
  let best: [number, number, number] = [0, 0, 0];
  part.children?.forEach((list) => {
    if (list.type !== "SelectorList") return;
    list.children.forEach((selector) => {
      const found = measureSpecificity(selector);
      if (compareSpecificity(found, best) > 0) best = found;
    });
  });
  for (const index of [0, 1, 2] as const) sum[index] += best[index];
}

/** Negative when `a` is less specific than `b`. */
export function compareSpecificity(
  a: readonly [number, number, number],
  b: readonly [number, number, number],
): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
}
