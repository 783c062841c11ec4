// Floor 5. words.yaml → messages of a society's own in place of ours.
import { join } from "node:path";
import { findNearest } from "../../problem/knownword.ts";
import { hasError, type Outcome } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { readOwn } from "../disk/packagefile.ts";
import { checkInvisible } from "../study/invisiblevalue.ts";
import { listValues } from "../text/message.ts";
import { readOptional } from "../text/textsource.ts";
import { type Finding, placeFindings, wrong } from "../yaml/finding.ts";
import { parseYaml } from "../yaml/readyaml.ts";

export const wordsFile = "words.yaml";

/** Longest message, in characters. */
const longest = 1000;

/** Messages by their ids. */
type Messages = Readonly<Record<string, string>>;

/**
 * Reads words.yaml of the content folder `root`, shown as `shown`; none where there is no such file. A message that is wrong is
 * left out alone: ours stands in its place.
 *
 * Problems: those of `readOptional`, `parseYaml` and `checkInvisible`; `words/unknown`, `words/message`, `words/values`.
 */
export async function loadWords(root: string, shown: string): Promise<Outcome<Messages>> {
  const { value: source, problems } = await readOptional(root, wordsFile, shown);
  if (source === undefined) return { value: undefined, problems };
  const yaml = parseYaml(source, source.text, "edges.where: Where the edges are");
  if (yaml.value === undefined || hasError(yaml.problems))
    return { value: undefined, problems: yaml.problems };
  const { value: typed } = yaml.value;
  const ours = await readOurs();
  const findings = [
    ...checkInvisible(typed),
    ...Object.entries(typed).flatMap(([id, message]) => checkMessage(id, message, ours)),
  ];
  const bad = new Set(findings.map(({ path }) => path));
  const good = Object.entries(typed).filter(([id]) => !bad.has(id));
  return {
    value: Object.fromEntries(good) as Messages,
    problems: [...yaml.problems, ...placeFindings(source, yaml.value, source.lines.length, findings)],
  };
}

/** Our messages in English, as the schema for editors has them. */
async function readOurs(): Promise<Messages> {
  const bytes = await readOwn(join(import.meta.dirname, "../schema/words.schema.json"));
  const { properties } = JSON.parse(bytes.toString("utf8")) as {
    readonly properties: Readonly<Record<string, { readonly description: string }>>;
  };
  return Object.fromEntries(Object.entries(properties).map(([id, { description }]) => [id, description]));
}

function checkMessage(id: string, message: unknown, ours: Messages): Finding[] {
  const english = Object.hasOwn(ours, id) ? ours[id] : undefined;
  if (english === undefined) {
    const near = findNearest(id, Object.keys(ours));
    const reason = `There is no message ${quoteText(id)}.`;
    const hint = near === undefined ? "Delete the line." : `Type: ${near}`;
    return wrong("words/unknown", id, { reason, hint }, { on: "key" });
  }
  const hint = `In English it is: ${english}`;
  if (typeof message !== "string" || message === "" || message.length > longest) {
    const reason = `${quoteText(id)} is no text of 1 to ${longest} characters.`;
    return wrong("words/message", id, { reason, hint });
  }
  try {
    const [has, needs] = [listValues(message), listValues(english)];
    if (has.join() === needs.join()) return [];
    const reason = `${quoteText(id)} has ${nameValues(has)} in it, and needs ${nameValues(needs)}.`;
    return wrong("words/values", id, { reason, hint });
  } catch {
    const reason = `${quoteText(id)} cannot be read: a brace, a tag or an apostrophe before one is without its end, or a plural has no “other”.`;
    return wrong("words/message", id, { reason, hint });
  }
}

function nameValues(names: readonly string[]): string {
  return names.length === 0 ? "no value" : names.join(", ");
}
