// Floor 5. Says in an author's words what is wrong with the YAML, and what to type instead.
import type { LineCounter, YAMLError } from "yaml";
import type { Place, Problem } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import { control, nameCharacter } from "./clean.ts";
import { problemAt, type Source } from "./source.ts";
import type { Token } from "./tokens.ts";

/** Returns a problem for each line indented with a tab and each control character, before YAML sees the text. */
export function findForbidden(source: Source, yaml: string): Problem[] {
  return yaml.split("\n").flatMap((text, index) => {
    const line = index + 1;
    const tab = /^ *\t+/.exec(text)?.[0];
    const problems: Problem[] = [];
    if (tab !== undefined) {
      const column = tab.indexOf("\t") + 1;
      problems.push(
        problemAt(
          source,
          { line, column, length: tab.length - column + 1 },
          {
            rule: "study/yaml-tab",
            reason: "The line is indented with a tab; YAML allows only spaces there.",
            hint: "Put two spaces in place of each tab.",
          },
        ),
      );
    }
    const found = text.search(control);
    if (found !== -1) {
      problems.push(
        problemAt(
          source,
          { line, column: found + 1 },
          {
            rule: "study/yaml-control",
            reason: `An invisible control character (${nameCharacter(text.slice(found))}) stands in the line.`,
            hint: "Type the line again by hand; copying brought the character along.",
          },
        ),
      );
    }
    return problems;
  });
}

/** Returns the problem of a tag, anchor, alias, merge key or second document. */
export function describeToken(source: Source, place: Place, token: Token): Problem {
  const rule = "study/yaml-feature";
  if (token.kind === "second document") {
    return problemAt(source, place, {
      rule,
      reason: `${quoteText(token.text)} would begin a second YAML document.`,
      hint: "Delete the line.",
    });
  }
  if (token.kind === "merge key") {
    return problemAt(source, place, {
      rule,
      reason: "“<<” is a YAML merge key, which is not used here.",
      hint: "Write every key out.",
    });
  }
  return problemAt(source, place, {
    rule,
    reason: `${quoteText(token.text)} is a YAML ${token.kind}, which is not used here.`,
    hint: quoteValue(source, place.line) ?? "Write the value out in plain text.",
  });
}

/** Returns the problem of a value that begins with # and has no quotes, with the line as it should be typed. */
export function describeBareHash(source: Source, place: Place, token: Token): Problem {
  const line = source.lines[place.line - 1] ?? "";
  const quoted = line.replace(/([:,[-]\s+)(#[^\s#,{}[\]]+)/g, '$1"$2"').trim();
  return problemAt(source, place, {
    rule: "study/quote-hash",
    reason: `Without quotes, # begins a comment, and ${quoteText(token.text)} is lost.`,
    hint: `Put it in quotes: ${quoted}`,
  });
}

/** Returns the problem of a bracket or a quote that is opened and not closed on its line. */
export function describeOpen(source: Source, place: Place, token: Token): Problem {
  const sign = token.text.charAt(0);
  const close = sign === "[" ? "]" : sign === "{" ? " }" : sign;
  const line = (source.lines[place.line - 1] ?? "").trim();
  return problemAt(
    source,
    { ...place, length: 1 },
    {
      rule: "study/yaml-syntax",
      reason: `The ${token.kind === "open quote" ? "quote" : "bracket"} ${sign} is opened here and never closed.`,
      hint: line.endsWith(sign) ? `Close it with ${close.trim()}` : `Close it: ${line}${close}`,
    },
  );
}

/** Returns a problem for the first error on each line, at most ten. */
export function describeSyntax(
  source: Source,
  errors: readonly YAMLError[],
  lineCounter: LineCounter,
): Problem[] {
  const seen = new Set<number>();
  const problems: Problem[] = [];
  for (const error of errors) {
    const { line, col } = lineCounter.linePos(error.pos[0]);
    if (seen.has(line) || problems.length === 10) continue;
    seen.add(line);
    const place = { line: Math.max(1, line), column: Math.max(1, col) };
    problems.push(problemAt(source, place, { rule: "study/yaml-syntax", ...explain(error, source, place) }));
    if (error.code === "RESOURCE_EXHAUSTION") break;
  }
  return problems;
}

interface Explanation {
  readonly reason: string;
  readonly hint: string;
}

/** Shows the line under the one before it, both beginning in the same column. */
function explainIndentation(source: Source, { line }: Place): Explanation {
  const reason = "The spaces before this line do not fit the lines around it.";
  const before = source.lines.slice(0, line - 1).findLast((text) => text.trim() !== "") ?? "";
  const [, lead, rest] = /^( *)(\S.*)$/.exec(before) ?? [];
  const own = (source.lines[line - 1] ?? "").trim();
  if (lead === undefined || rest === undefined || rest === "---")
    return { reason, hint: "Begin keys and list items that belong together in the same column." };
  const inner = rest.endsWith(":") ? `${lead}  ` : lead;
  const hint = `If it belongs to the line before it, type:\n${lead}${rest}\n${inner}${own}`;
  return { reason, hint };
}

/** Puts quotes round the value that begins in a column: up to the end of the line, or of its place in a list. */
function quoteFrom(line: string, column: number): string {
  const [before, rest] = [line.slice(0, column - 1), line.slice(column - 1)];
  const isInside = /[[{][^\]}]*$/.test(before);
  const value = (isInside ? /^[^,\]}]*/.exec(rest)?.[0] : rest)?.trimEnd() ?? rest;
  return `Type: ${before.trimStart()}${JSON.stringify(value)}${rest.slice(value.length)}`;
}

function explain(error: YAMLError, source: Source, place: Place): Explanation {
  const line = source.lines[place.line - 1] ?? "";
  const quote = quoteValue(source, place.line) ?? "Put the value in double quotes.";
  switch (error.code) {
    case "RESOURCE_EXHAUSTION":
      return {
        reason: "Lists and maps are nested too deeply.",
        hint: "No key needs more than three levels.",
      };
    case "BAD_SCALAR_START": {
      const sign = quoteText(line[place.column - 1] ?? "");
      return {
        reason: `A value that begins with ${sign} needs quotes.`,
        hint: quoteFrom(line, place.column),
      };
    }
    case "BAD_DQ_ESCAPE": {
      const reason = "In double quotes a backslash begins an escape, and YAML does not know this one.";
      return { reason, hint: "Write the backslash twice, or leave it out." };
    }
    case "BLOCK_AS_IMPLICIT_KEY":
      if (!/:\s.*:\s/.test(line)) return explainIndentation(source, place);
      return {
        reason: "A colon with a space behind it begins a new value, and this line has two of them.",
        hint: quote,
      };
    case "BAD_INDENT":
    case "MISSING_CHAR":
    case "MULTILINE_IMPLICIT_KEY":
      return explainLine(line) ?? explainIndentation(source, place);
    default:
      return explainLine(line) ?? { reason: "YAML cannot read the line from here on.", hint: quote };
  }
}

/** Explains a line that is no `key: value`, or returns undefined where it is one. */
function explainLine(line: string): Explanation | undefined {
  if (/^- /.test(line)) {
    return {
      reason: "A list item stands here without the key it belongs to.",
      hint: "Indent it under its key, or delete it.",
    };
  }
  const [, crowdedKey, crowded] = /^\s*([A-Za-z]+):([^\s:/].*)$/.exec(line) ?? [];
  if (crowdedKey !== undefined) {
    return { reason: "After the colon of a key comes a space.", hint: `Type: ${crowdedKey}: ${crowded}` };
  }
  const [, key, value] = /^\s*([A-Za-z]+)\s*[=\s]\s*([^:]+)$/.exec(line) ?? [];
  if (key === undefined) return undefined;
  return {
    reason: "The line has no colon, so it is no “key: value”.",
    hint: `Type: ${key}: ${value?.trim()}`,
  };
}

/** Returns what to type for a line `key: value` whose value is meant as one plain text, else undefined. */
function quoteValue(source: Source, line: number): string | undefined {
  const [, key, value] = /^\s*(?:- )?([\w-]+):\s+(.+?)\s*$/.exec(source.lines[line - 1] ?? "") ?? [];
  if (key === undefined || value === undefined) return undefined;
  if (/^["']|^[[{].*[\]}]$|^[|>][+-]?\d?$/.test(value)) return undefined;
  const escaped = value.replace(/\\/g, "\\\\").replace(/"/g, '\\"');
  return `If it is meant as text, put it in quotes: ${key}: "${escaped}"`;
}
