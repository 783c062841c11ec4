// Floor 9. What a speaker reads beside the steps: sentence by sentence, with the author's notes and the names of the pictures.
import { nameStill } from "../../views/show/lessonfile.ts";
import type { ShowPage } from "../../views/show/showpage.ts";
import type { Format } from "../../words/format.ts";

/** The script of a show, Markdown. What authors wrote stands in it as text. */
export function formatScript({ title, steps }: Pick<ShowPage, "title" | "steps">, format: Format): string {
  const { say } = format;
  const parts = steps.map(({ anchor, heading, says, speech, note }, index) =>
    [
      `## ${say("still.scriptStep", { number: format.number(index + 1, 0), heading: escapeText(heading) })}`,
      say("still.scriptPicture", { file: `\`${nameStill(index, anchor)}\`` }),
      ...(says === undefined ? [] : [say("still.scriptOn", { text: escapeText(says) })]),
      say("still.scriptSay", { text: escapeText(speech) }),
      ...(note === undefined ? [] : [say("still.scriptNote", { text: escapeText(note) })]),
    ].join("\n\n"),
  );
  return `${[`# ${escapeText(title)}`, say("still.unofficial"), ...parts].join("\n\n")}\n`;
}

/** One line, in which nothing is markup. Source: CommonMark 0.31, backslash escapes. */
function escapeText(text: string): string {
  return text.replace(/\s+/g, " ").replace(/[\\`*_[\]<>#|]/g, "\\$&");
}
