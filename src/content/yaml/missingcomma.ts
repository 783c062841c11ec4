// Floor 5. A comma that is missing in braces or brackets, or another sign in its place: the line as it should be typed.
import { quoteText } from "../../problem/quote.ts";
import type { Slip } from "./brokenline.ts";

/** A place between two values, as indices into the text: behind the first, and where the second begins. */
interface Gap {
  readonly end: number;
  readonly next: number;
  /** What stands there in place of the comma, or "", and where. */
  readonly sign: string;
  readonly at: number;
  readonly word: string;
}

/** Most commas that are put into one line. */
const most = 8;

/**
 * Returns where a comma is missing in the group or list that is open in `line` (from 1) of `lines`, with the line of the
 * gap, or undefined where none is.
 *
 * Example: for `change: { replace: "#3b3f46" with: "#a0a5ad" }` the hint is
 * `Type: change: { replace: "#3b3f46", with: "#a0a5ad" }`.
 */
export function findMissingComma(lines: readonly string[], line: number): Slip | undefined {
  const first = findStart(lines, line);
  if (first === undefined) return undefined;
  let text = lines.slice(first, line).join("\n");
  const gap = findGap(text);
  if (gap === undefined) return undefined;
  for (let more: Gap | undefined = gap, count = 0; more && count < most; count += 1) {
    text = `${text.slice(0, more.end)}, ${text.slice(more.next)}`;
    more = findGap(text);
  }
  const before = lines.slice(first, line).join("\n").slice(0, gap.end).split("\n");
  const after = lines.slice(first, line).join("\n").slice(0, gap.at).split("\n");
  const isOneLine = before.length === after.length;
  const typed = isOneLine ? text.split("\n")[before.length - 1] : `${(before.at(-1) ?? "").trimEnd()},`;
  const column = isOneLine ? (after.at(-1) ?? "").length + 1 : Math.max(1, (before.at(-1) ?? "").length);
  return {
    line: first + before.length,
    column,
    length: isOneLine ? (gap.sign || gap.word).length : 1,
    reason:
      gap.sign === ""
        ? `A comma is missing before ${quoteText(gap.word)}.`
        : `Before ${quoteText(gap.word)} comes a comma, and ${quoteText(gap.sign)} stands there.`,
    hint: `Type: ${typed?.trim()}`,
  };
}

/** The index of the last line up to `line` whose value begins with a bracket. */
function findStart(lines: readonly string[], line: number): number | undefined {
  const at = lines.slice(0, line).findLastIndex((text) => /(?:^\s*-|:)\s+[[{]/.test(text));
  return at < 0 ? undefined : at;
}

const quoted = /"(?:[^"\\]|\\.)*"|'(?:[^']|'')*'/y;
const wrongSign = /^(?:[;\uff0c\u3001\uff1b|/+&]|and(?=\s))/;

/** A key of one of the groups that a study or a gallery has. Without a quote before it, other words may be of a text. */
const knownKey = /^(?:replace|with|only|note|select|colour|title|author|source|licence|black|white):\s/;

/** Walks from the first bracket on, and stops at the first place where a comma should be and is not. */
function findGap(text: string): Gap | undefined {
  const open: string[] = [];
  let hasColon = false;
  let ended = -1;
  for (let at = text.search(/[[{]/); at >= 0 && at < text.length; ) {
    const sign = text.charAt(at);
    quoted.lastIndex = at;
    const whole = /[\s,:[{]/.test(text.charAt(at - 1)) ? quoted.exec(text)?.[0] : undefined;
    if (ended >= 0 && /[^\s,:\]}]/.test(sign)) {
      const gap = readGap(text, ended, at, open.at(-1) === "[");
      return gap !== undefined && (hasColon || open.at(-1) === "[") ? gap : undefined;
    }
    if (whole !== undefined) {
      at += whole.length;
      ended = at;
      continue;
    }
    if (sign === "[" || sign === "{") {
      open.push(sign);
      hasColon = false;
      ended = -1;
    } else if (sign === "]" || sign === "}") {
      open.pop();
      if (open.length === 0) return undefined;
      ended = at + 1;
      hasColon = true;
    } else if (sign === ",") {
      hasColon = false;
      ended = -1;
    } else if (sign === ":" && /[\s"'[{]/.test(text.charAt(at + 1))) {
      hasColon = true;
      ended = -1;
    } else if (hasColon && /\s/.test(text.charAt(at - 1)) && knownKey.test(text.slice(at))) {
      const end = text.slice(0, at).trimEnd().length;
      if (text.charAt(end - 1) !== ":") return { end, next: at, sign: "", at, word: wordAt(text, at) };
    }
    at += 1;
  }
  return undefined;
}

/** In braces a key has to follow, in brackets a quote or a bracket, or it is another mistake. */
function readGap(text: string, end: number, at: number, isList: boolean): Gap | undefined {
  const sign = wrongSign.exec(text.slice(at))?.[0] ?? "";
  const behind = at + sign.length;
  const next = behind + Math.max(0, text.slice(behind).search(/\S/));
  if (sign === "" && at === end) return undefined;
  const follows = isList ? /^["'[{]/ : /^(?:["'][^"'\n]+["']|[\w-][\w -]*):\s/;
  if (!follows.test(text.slice(next))) return undefined;
  return { end, next, sign, at, word: wordAt(text, next) };
}

function wordAt(text: string, at: number): string {
  const word = /^(?:[[{]|["'][^"'\n]*["']?|[^\s,:\]}]+(?: [^\s,:\]}]+)*)/.exec(text.slice(at))?.[0] ?? "";
  return word.replace(/^(["'])(.*)\1$/, "$2");
}
