// Words of a language that stand in code instead of the catalogue: what a reader would see untranslated.
import { parseSync } from "oxc-parser";
import type { SourceFile } from "./source.ts";

/** A text with words in it. `line` counts from 1. */
export interface Literal {
  readonly path: string;
  readonly line: number;
  readonly text: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

/** Parts of the tree that no reader sees: types, imports, what is thrown at a developer. */
const unseen = new Set([
  "ImportDeclaration",
  "ExportNamedDeclaration source",
  "ThrowStatement",
  "TSLiteralType",
]);

/** Attributes whose words are for style sheets and programs. */
const machineAttributes =
  /^(class|id|rel|href|src|type|key|role|d|sizes|as|media|for|name|http-equiv|crossorigin|target|viewBox|transform|points|data-[a-z-]*|html[A-Z].*)$/;

/** Two words, a word that begins like a sentence, a word beside a value, or what stands between two texts in one language. */
const words = /\p{L}{2,}[,;:.]? \p{L}|^\p{Lu}\p{Ll}+[.:]?$|^ ?\p{Ll}{2,} $|^ \p{Ll}{2,}[ ,.]|^[,;:] +$/u;

/** Lists the texts of `file` that hold words of a language. */
export function listLiterals(file: SourceFile): readonly Literal[] {
  const found: Literal[] = [];
  const add = (node: Node, text: string): void => {
    found.push({
      path: file.path,
      line: file.text.slice(0, node.start).split("\n").length,
      text: text.trim(),
    });
  };
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) {
      for (const one of value) visit(one);
      return;
    }
    if (typeof value !== "object" || value === null || !("type" in value)) return;
    const node = value as Node;
    if (unseen.has(node.type)) return;
    if (node.type === "JSXAttribute" && machineAttributes.test(nameOf(node["name"]))) return;
    if (node.type === "JSXText" && /\p{L}|^\s*[,;:]/u.test(String(node["value"])))
      add(node, String(node["value"]));
    if (node.type === "Literal" && typeof node["value"] === "string" && words.test(node["value"]))
      add(node, node["value"]);
    if (node.type === "TemplateElement") {
      const { cooked } = node["value"] as { readonly cooked: string };
      if (words.test(cooked)) add(node, cooked);
    }
    const isSelector = node.type === "CallExpression" && isSelecting(node["callee"]);
    for (const [key, child] of Object.entries(node))
      if (key !== "type" && !(isSelector && key === "arguments")) visit(child);
  };
  visit(parseSync(file.path, file.text).program);
  return found;
}

/** Lists the words that `css`, a style sheet, writes itself: texts in `content` with letters in them. */
export function listStyleWords(css: string): readonly string[] {
  return [...css.matchAll(/\bcontent:([^;}]*)/g)].flatMap(([, value = ""]) =>
    [...value.matchAll(/"([^"]*)"|'([^']*)'/g)]
      .map(([, double, single]) => double ?? single ?? "")
      .filter((text) => /\p{L}{2}/u.test(text.replace(/\\[\da-f]{1,6} ?/gi, ""))),
  );
}

/** Whether a call asks the page for elements: its text is a selector. */
function isSelecting(callee: unknown): boolean {
  const { property } = callee as { readonly property?: { readonly name?: string } };
  return /^(?:querySelector(?:All)?|closest|matches)$/.test(property?.name ?? "");
}

function nameOf(name: unknown): string {
  return String((name as { readonly name: unknown }).name);
}
