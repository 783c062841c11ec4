// Floor 8. “Argue with this”: the link by which a reader answers, with the address and the numbers already in it.
import type { Answer } from "../../content/gallery/answerlink.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { formatCanonical } from "../address.ts";

export interface AnswerView {
  readonly href: string;
  readonly way: Answer["way"];
  /** What happens on the way, to stand behind the link. */
  readonly words: string;
}

/** What an answer is about. `stamped` is the address of the page with its stamp; `numbers` are lines of text. */
export interface Answered {
  readonly title: string;
  readonly edge: string | undefined;
  readonly stamped: string;
  readonly numbers: readonly string[];
  /** Whether it ends with the beginning of a file for the study's folder answers. */
  readonly isFiled?: boolean;
}

/** The link for one page, or undefined where the gallery takes no answers. */
export function presentAnswer(
  answer: Answer | undefined,
  about: Answered,
  format: Format,
): AnswerView | undefined {
  if (answer === undefined) return undefined;
  const { way } = answer;
  if (way === "mail") {
    const words = format.say("answer.byMail", { address: answer.address });
    return { href: formatMail(answer.address, about, format), way, words };
  }
  const href = fillForm(answer.template, about, format);
  return { href, way, words: format.say(describeFilled(answer.template), { host: new URL(href).host }) };
}

/** The link by which a reader names a flag that needs a study, or undefined where the gallery takes none. */
export function presentNominate(
  { nominate, title, address }: Gallery,
  format: Format,
): AnswerView | undefined {
  const { say } = format;
  const about = {
    title: say("answer.flagFor", { gallery: title }),
    edge: undefined,
    stamped: formatCanonical(address, "/survey/") ?? title,
    numbers: [say("answer.flag"), say("answer.why")],
  };
  return presentAnswer(nominate, about, format);
}

/** Promises no more than the form's address takes along. */
function describeFilled(template: string) {
  const [url, numbers] = ["{url}", "{numbers}"].map((placeholder) => template.includes(placeholder));
  if (url) return numbers ? "answer.atWithBoth" : "answer.atWithAddress";
  return numbers ? "answer.atWithNumbers" : "answer.at";
}

/**
 * Source: RFC 6068, section 2: each part percent-encoded as UTF-8; section 5: a line ends with `%0D%0A`. An address keeps
 * its `@`.
 */
function formatMail(
  address: string,
  { title, edge, stamped, numbers, isFiled }: Answered,
  format: Format,
): string {
  const subject = edge === undefined ? title : format.say("picture.within", { title: edge, study: title });
  const body = [subject, stamped, "", ...numbers, "", ...(isFiled ? formatBlock(edge, format) : []), ""].join(
    "\r\n",
  );
  const to = encode(address).replace("%40", "@");
  return `mailto:${to}?subject=${encode(subject)}&body=${encode(body)}`;
}

/** What can be saved as a file in the study's folder answers just as it is. */
function formatBlock(edge: string | undefined, { say }: Format): readonly string[] {
  const about = edge === undefined ? [] : [`edge: ${JSON.stringify(edge)}`];
  return ["---", `by: ${say("answer.reader")}`, ...about, "says: ask", "---", say("answer.question")];
}

/** The gallery's settings are checked: each placeholder is known and stands behind the host. */
function fillForm(
  template: string,
  { title, edge = "", stamped, numbers }: Answered,
  format: Format,
): string {
  const filled = new Map([
    ["url", stamped],
    ["title", title],
    ["edge", edge],
    ["numbers", numbers.join("\n")],
    ["answer", formatBlock(edge === "" ? undefined : edge, format).join("\n")],
  ]);
  return template.replace(/\{(\w+)\}/g, (whole, word: string) => {
    const text = filled.get(word);
    return text === undefined ? whole : encode(text);
  });
}

/** Half a surrogate pair has no UTF-8, and would throw. */
function encode(text: string): string {
  return encodeURIComponent(text.replace(/\p{Surrogate}/gu, "\ufffd"));
}
