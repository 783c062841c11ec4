// Floor 9. What a speaker reads beside the steps: sentence by sentence, with the author's notes and the names of the pictures.
import { nameStill } from "../../views/show/lessonfile.ts";
import type { ShowPage } from "../../views/show/showpage.ts";
import { unofficial } from "../pictures/unofficial.ts";

/** The script of a show, Markdown. What authors wrote stands in it as text. */
export function formatScript({ title, steps }: Pick<ShowPage, "title" | "steps">): string {
  const parts = steps.map(({ anchor, heading, says, speech, note }, index) =>
    [
      `## ${index + 1}. ${escapeText(heading)}`,
      `Picture: \`${nameStill(index, anchor)}\``,
      ...(says === undefined ? [] : [`On it: ${escapeText(says)}`]),
      `Say: ${escapeText(speech)}`,
      ...(note === undefined ? [] : [`Note: ${escapeText(note)}`]),
    ].join("\n\n"),
  );
  return `${[`# ${escapeText(title)}`, unofficial, ...parts].join("\n\n")}\n`;
}

/** One line, in which nothing is markup. Source: CommonMark 0.31, backslash escapes. */
function escapeText(text: string): string {
  return text.replace(/\s+/g, " ").replace(/[\\`*_[\]<>#|]/g, "\\$&");
}
