// Floor 5. What is wrong with YAML by its words alone: signs that it may not hold, features that are refused, and what is
// opened and never closed. Each is the cause of errors that need no message of their own.
import type { Advice, Place, Problem } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { control, nameCharacter } from "../text/cleantext.ts";
import { reportIn, type Source } from "../text/textsource.ts";
import { findOddQuote, quoteValue } from "./innerquote.ts";
import type { Token } from "./yamltoken.ts";

/** Returns a problem for each line indented with a tab and each control character, before YAML sees the text. */
export function findForbidden(source: Source, yaml: string): Problem[] {
  return yaml.split("\n").flatMap((text, index) => {
    const line = index + 1;
    const tab = /^ *\t+/.exec(text)?.[0];
    const problems: Problem[] = [];
    if (tab !== undefined) {
      const column = tab.indexOf("\t") + 1;
      const place = { line, column, length: tab.length - column + 1 };
      const reason = "The line is indented with a tab; YAML allows only spaces there.";
      const hint = "Put two spaces in place of each tab.";
      problems.push(reportIn("study/yaml-tab", [source, place], { reason, hint }));
    }
    const found = text.search(control);
    if (found !== -1) {
      const reason = `An invisible control character (${nameCharacter(text.slice(found))}) stands in the line.`;
      const hint = "Type the line again by hand; copying brought the character along.";
      problems.push(reportIn("study/yaml-control", [source, { line, column: found + 1 }], { reason, hint }));
    }
    return problems;
  });
}

/** What is said of a tag, anchor, alias, merge key or second document. */
function describeToken(source: Source, { line }: Place, { kind, text }: Token): Advice {
  if (kind === "second document") {
    const hint = isFenced(source) ? "Delete the lines ---." : "Delete the line.";
    return { reason: `${quoteText(text)} would begin a second YAML document.`, hint };
  }
  if (kind === "merge key")
    return { reason: "“<<” is a YAML merge key, which is not used here.", hint: "Write every key out." };
  const hint = quoteValue(source.lines[line - 1] ?? "") ?? "Write the value out in plain text.";
  return { reason: `${quoteText(text)} is a YAML ${kind}, which is not used here.`, hint };
}

/** A gallery.yaml between lines of three hyphens, as they stand in study.md. */
function isFenced({ file, lines }: Source): boolean {
  return file.endsWith("gallery.yaml") && lines[0]?.trim() === "---";
}

/** Returns the problem of a value that begins with # and has no quotes, with the line as it should be typed. */
export function describeBareHash(source: Source, place: Place, token: Token): Problem {
  const line = source.lines[place.line - 1] ?? "";
  const quoted = line.replace(/([:,-]\s+|[[{]\s*|^\s*)(#[^\s#,:{}[\]]+)/g, '$1"$2"').trim();
  return reportIn("study/quote-hash", [source, place], {
    reason: `Without quotes, # begins a comment, and ${quoteText(token.text)} is lost.`,
    hint: `Put it in quotes: ${quoted}`,
  });
}

/** What is said of a bracket or a quote that is opened and not closed on its line. */
function describeOpen(source: Source, { line, column }: Place, { kind, text }: Token): Advice {
  const sign = text.charAt(0);
  const close = sign === "[" ? "]" : sign === "{" ? " }" : sign;
  const whole = source.lines[line - 1] ?? "";
  const inner = kind === "open quote" ? findOddQuote(whole, column) : undefined;
  if (inner !== undefined) return inner;
  const own = whole.trim();
  return {
    reason: `The ${kind === "open quote" ? "quote" : "bracket"} ${sign} is opened here and never closed.`,
    hint: own.endsWith(sign) ? `Close it with ${close.trim()}` : `Close it: ${own}${close}`,
  };
}

/** Returns a problem for the first word on each line that we refuse to use. */
export function describeFeatures(
  source: Source,
  tokens: readonly Token[],
  at: (token: Token) => Place,
): Problem[] {
  const lines = new Set<number>();
  return tokens.flatMap((token) => {
    const place = at(token);
    if (/^(?:bare|open) /.test(token.kind) || lines.has(place.line)) return [];
    lines.add(place.line);
    return [reportIn("study/yaml-feature", [source, place], describeToken(source, place, token))];
  });
}

/** Returns the likely causes of YAML that cannot be read: hashes, brackets and quotes. */
export function describeCauses(
  source: Source,
  tokens: readonly Token[],
  at: (token: Token) => Place,
): Problem[] {
  const hashes = tokens.filter(({ kind }) => kind === "bare hash");
  if (hashes.length > 0) return hashes.map((token) => describeBareHash(source, at(token), token));
  const open = tokens.filter(({ kind }) => kind.startsWith("open "));
  return open.slice(0, 1).map((token) => {
    const place = { ...at(token), length: 1 };
    return reportIn("study/yaml-syntax", [source, place], describeOpen(source, place, token));
  });
}
