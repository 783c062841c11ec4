// Floor 5. How readers answer: the `answer:` of gallery.yaml → a mail address, or a form whose address takes what it is about.

import { findNearest } from "../../problem/knownword.ts";
import type { Advice } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";

/** Where an answer goes. A form's template holds `{url}` and the other words of {@link answerWords}. */
export type Answer =
  | { readonly way: "mail"; readonly address: string }
  | { readonly way: "form"; readonly template: string };

/** What a form's address may have filled in, each with what it stands for. */
export const answerWords = {
  url: "the address of the page, with its stamp",
  title: "the title of the study",
  edge: "the edge, on its own page; nothing on the page of a study",
  numbers: "the change and what was measured",
  answer: "the beginning of a file in the study’s folder answers, to be filled in",
} as const;

const known = Object.keys(answerWords);
const example = "https://forum.example/new?title={title}&text={url}";

/** Source: HTML, “valid email address”, with a dot asked for in the domain. */
const mailAddress =
  /^[a-z0-9.!#$%&'*+/=?^_`{|}~-]{1,64}@(?:[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?\.)+[a-z]{2,63}$/i;

/**
 * Reads the value of `answer:`, or of another `key` of its kind: a mail address, or an address that begins with `https://` and may hold placeholders behind
 * its host. Anything else comes back as the reason and the hint of a problem.
 */
export function parseAnswer(text: string, key: "answer" | "nominate" = "answer"): Answer | Advice {
  if (mailAddress.test(text)) return { way: "mail", address: text };
  if (/^https:\/\//i.test(text)) return parseForm(text, key);
  const quoted = quoteText(text);
  const inner = /^mailto:([^?]*)/i.exec(text)?.[1] ?? "";
  if (mailAddress.test(inner)) {
    const reason = `“${key}” is ${quoted}; the page makes the link, and needs the address alone.`;
    return { reason, hint: `Type: ${key}: ${inner}` };
  }
  if (/^http:\/\//i.test(text)) {
    const reason = `“${key}” is ${quoted}; only an address that begins with https:// is linked.`;
    return { reason, hint: `Type, if the host has it: ${key}: ${text.replace(/^http/i, "https")}` };
  }
  const scheme = /^[a-z][a-z0-9+.-]*:/i.exec(text)?.[0];
  const reason =
    scheme === undefined
      ? `“${key}” is ${quoted}, which is neither a mail address nor an address that begins with https://.`
      : `“${key}” begins with “${scheme}”; only a mail address or https:// is linked.`;
  return { reason, hint: `Type, for example: ${key}: editor@flags.example\nor: ${key}: ${example}` };
}

function parseForm(template: string, key: string): ReturnType<typeof parseAnswer> {
  const words = [...template.matchAll(/\{([^{}]*)\}/g)].map(([, word]) => word ?? "");
  const unknown = words.find((word) => !known.includes(word));
  if (unknown !== undefined) {
    const near = findNearest(unknown, known);
    const list = known.map((word) => `{${word}}`).join(", ");
    return {
      reason: `“${key}” has the placeholder ${quoteText(`{${unknown}}`)}, which nothing is filled into.`,
      hint: near === undefined ? `There are: ${list}` : `Type “{${near}}”. There are: ${list}`,
    };
  }
  if (/[{}]/.test(template.replace(/\{[^{}]*\}/g, ""))) {
    const reason = `“${key}” is ${quoteText(template)}, where a brace stands alone.`;
    return { reason, hint: `Close each placeholder: ${key}: ${example}` };
  }
  if (!isFixedHost(template)) {
    const reason = `“${key}” is ${quoteText(template)}, which is no web address with its placeholders behind the host.`;
    return { reason, hint: `Type, for example: ${key}: ${example}` };
  }
  return { way: "form", template };
}

/** Whether host and port are the same whatever is filled in, and nobody's name or password stands before them. */
function isFixedHost(template: string): boolean {
  if (/[\s\\<>"]/.test(template)) return false;
  const [one, other] = ["a", "b"].map((word) => template.replace(/\{[^{}]*\}/g, word));
  if (one === undefined || other === undefined || !URL.canParse(one) || !URL.canParse(other)) return false;
  const [first, second] = [new URL(one), new URL(other)];
  return first.origin === second.origin && first.username === "" && first.password === "";
}
