// Floor 5. Splits a study file at its two fences, plain lines of three hyphens, and nothing else counts as one.
import type { Outcome, Problem } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import { problemAt, type Source } from "./source.ts";

/** Largest front matter, in bytes. */
const frontMatterBytes = 8 * 1024;

export interface FrontMatter {
  /** The YAML, with an empty line in place of the opening fence, so that lines count as in the file. */
  readonly yaml: string;
  /** Line of the closing fence, from 1. */
  readonly closingLine: number;
  readonly body: string;
  /** Line on which the body begins, from 1. */
  readonly bodyLine: number;
}

/**
 * Splits `source` into front matter and body.
 *
 * Problems: `study/front-matter-missing`, `study/front-matter-language` (`---js` and the like, which other tools
 * run as code), `study/front-matter-unclosed`, `study/front-matter-size` over 8 KB.
 */
export function splitFrontMatter(source: Source): Outcome<FrontMatter> {
  const fail = (problem: Problem): Outcome<FrontMatter> => ({ value: undefined, problems: [problem] });
  const first = (source.lines[0] ?? "").trimEnd();
  if (first !== "---") return fail(wrongOpening(source, first));

  const closing = source.lines.findIndex((line, index) => index > 0 && line.trimEnd() === "---");
  if (closing === -1) return fail(unclosed(source));

  const yaml = ["", ...source.lines.slice(1, closing), ""].join("\n");
  const size = new TextEncoder().encode(yaml).length;
  if (size > frontMatterBytes) {
    return fail(
      problemAt(
        source,
        { line: 1, column: 1, length: 3 },
        {
          rule: "study/front-matter-size",
          reason: `The front matter has ${Math.ceil(size / 1024)} KB; it may have 8 KB.`,
          hint: "Move long texts below the second ---, into the prose.",
        },
      ),
    );
  }
  const body = source.lines.slice(closing + 1).join("\n");
  return { value: { yaml, closingLine: closing + 1, body, bodyLine: closing + 2 }, problems: [] };
}

function wrongOpening(source: Source, first: string): Problem {
  const place = { line: 1, column: 1, length: Math.max(1, first.length) };
  if (/^---\s*[a-z]/i.test(first)) {
    return problemAt(source, place, {
      rule: "study/front-matter-language",
      reason: `The first line is ${quoteText(first)}, but front matter is plain YAML and names no language.`,
      hint: "Make the first line three hyphens and nothing else: ---",
    });
  }
  return problemAt(source, place, {
    rule: "study/front-matter-missing",
    reason: "The file does not begin with front matter.",
    hint: "Make the first line three hyphens: ---\nThen come title, original and change, then a second --- and the prose.",
  });
}

function unclosed(source: Source): Problem {
  return problemAt(
    source,
    { line: 1, column: 1, length: 3 },
    {
      rule: "study/front-matter-unclosed",
      reason: "The front matter that begins here never ends.",
      hint: "Put a line of three hyphens between the front matter and the prose: ---",
    },
  );
}
