// Floor 5. Looks at YAML word by word, before it is read: what we refuse to use, and what an author did not mean.
import { CST, Lexer } from "yaml";

/** A word of the YAML that may deserve a message. `offset` from 0 into the text. */
export interface Token {
  readonly kind:
    | "tag"
    | "anchor"
    | "alias"
    | "merge key"
    | "second document"
    | "bare hash"
    | "open bracket"
    | "open quote";
  readonly offset: number;
  readonly text: string;
}

/** A word as the lexer gives it. */
interface Word {
  readonly text: string;
  readonly offset: number;
  readonly type: string | null;
  readonly isPlain: boolean;
}

/**
 * Finds, in order of their ends: tags (`!!js`), anchors (`&a`), aliases (`*a`), merge keys (`<<`), marks of a second
 * document, and what only matters where something is missing:
 * - bare hash: a comment such as `#c00` right where a value should stand, because nobody put quotes around it;
 * - open bracket: a bracket that is never closed;
 * - open quote: a quoted text that is never closed or runs over a line end.
 */
export function findTokens(yaml: string): Token[] {
  const found: Token[] = [];
  const brackets: Token[] = [];
  let before = "";
  let hasContent = false;
  for (const word of splitWords(yaml)) {
    const { type, text, offset } = word;
    if (text === CST.FLOW_END) found.push(...brackets.splice(0).slice(-1));
    if (type === "flow-map-start" || type === "flow-seq-start")
      brackets.push({ kind: "open bracket", offset, text });
    if (type === "flow-map-end" || type === "flow-seq-end") brackets.pop();
    const kind = kindOf(word, before, hasContent);
    if (kind !== undefined) found.push({ kind, offset, text: kind === "bare hash" ? hashOf(text) : text });
    if (type !== "space" && type !== "newline" && text !== CST.FLOW_END) {
      before = word.isPlain ? "" : text;
      hasContent ||= type !== "comment" && type !== "directive-line";
    }
  }
  return [...found, ...brackets.slice(-1)];
}

function splitWords(yaml: string): Word[] {
  const words: Word[] = [];
  let offset = 0;
  let isPlain = false;
  for (const text of new Lexer().lex(yaml)) {
    // Marks that the lexer puts in by itself: they have no place in the text.
    if (text === CST.FLOW_END) words.push({ text, offset, type: null, isPlain: false });
    if (text === CST.SCALAR || text === CST.DOCUMENT || text === CST.FLOW_END) {
      isPlain = text === CST.SCALAR;
      continue;
    }
    words.push({ text, offset, type: isPlain ? null : CST.tokenType(text), isPlain });
    isPlain = false;
    offset += text.length;
  }
  return words;
}

function kindOf(
  { type, text, isPlain }: Word,
  before: string,
  hasContent: boolean,
): Token["kind"] | undefined {
  if (isPlain) return text === "<<" ? "merge key" : undefined;
  if (type === "tag" || type === "anchor" || type === "alias") return type;
  if (type === "directive-line") return "tag";
  if ((type === "doc-start" || type === "doc-end") && hasContent) return "second document";
  if (type === "comment" && [":", "-", ",", "[", "{"].includes(before) && hashOf(text) !== "")
    return "bare hash";
  if (type === "single-quoted-scalar" || type === "double-quoted-scalar") {
    const isClosed = text.length > 1 && text.at(-1) === text[0];
    return isClosed && !text.includes("\n") ? undefined : "open quote";
  }
  return undefined;
}

/** Returns what stands behind the # of a comment with the #, up to where a value would end, or "". */
function hashOf(comment: string): string {
  return /^#[^\s#,:{}[\]]+/.exec(comment)?.[0] ?? "";
}
