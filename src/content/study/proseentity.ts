// Floor 5. Characters that cannot be seen, written as entities (`&#x202e;`): they go out of the prose as the characters do.
import type MarkdownIt from "markdown-it";
import { replaceInText } from "../../problem/invisible.ts";
import { locate } from "../../problem/locate.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { nameCharacter } from "../text/cleantext.ts";
import type { Study } from "./study.ts";

type Token = ReturnType<MarkdownIt["parse"]>[number];

/**
 * Takes such entities out of the text and the titles of links in a block, before its pieces of text are joined. The first
 * character is then the `markup` of the block, and its `info` how it is typed, or in a title what it is called.
 */
export function dropEntities(block: Token): void {
  const drop = (character: string, typed: string): "" => {
    if (block.info === "") Object.assign(block, { markup: character, info: typed });
    return "";
  };
  const pieces = block.children ?? [];
  for (const [index, piece] of pieces.entries()) {
    const title = piece.attrGet("title");
    if (title !== null)
      piece.attrSet(
        "title",
        replaceInText(title, (found) => drop(found, nameCharacter(found))),
      );
    if (piece.type !== "text_special" || piece.info !== "entity") continue;
    // A joiner is of use between the letters or signs that it joins.
    const before = pieces[index - 1]?.content ?? "";
    const own = piece.content;
    replaceInText(before + own + (pieces[index + 1]?.content ?? ""), (found, at) => {
      if (at >= before.length && at < before.length + own.length) piece.content = drop(found, piece.markup);
      return found;
    });
  }
}

/** Returns what `dropEntities` took out of a block. Problems, warnings: study/direction-control, study/prose-invisible. */
export function checkEntity(
  { type, markup, info, map }: Token,
  study: Pick<Study, "body" | "bodyLine" | "file" | "proseFile">,
): Problem[] {
  if (type !== "inline" || info === "") return [];
  const [first = 0, end = first + 1] = map ?? [];
  const lines = study.body.split("\n").slice(first, end);
  const at = Math.max(
    0,
    lines.findIndex((line) => line.includes(info)),
  );
  const line = lines[at] ?? "";
  const column = Math.max(0, line.indexOf(info)) + 1;
  const isTurning = /[\u202a-\u202e\u2066-\u2069]/.test(markup);
  return [
    report(
      isTurning ? "study/direction-control" : "study/prose-invisible",
      {
        file: study.proseFile ?? study.file,
        ...locate(line, { line: study.bodyLine + first + at, column, length: info.length }),
      },
      {
        reason: `A character that ${isTurning ? "turns the reading direction" : "cannot be seen"} was taken out (${quoteText(info)}).`,
        hint: "Delete it.",
      },
      "warning",
    ),
  ];
}
