// Floor 5. What others answered to a study: the keys of an answer, in the study or in a file of its own, and their checks.
import { z } from "zod";
import type { ComparedEdge } from "../../measure/comparison.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { type Finding, type KeyGuide, wrong } from "../yaml/finding.ts";
import { line, prose } from "../yaml/textvalue.ts";
import { findNamedEdge } from "./prosecheck.ts";
import type { Study, StudyAnswer } from "./study.ts";

const day = () => line(40).describe("Year, month and day with hyphens.").exactOptional();
const says = ["agree", "disagree", "doubt", "ask"] as const;

/** The keys of a file in answers/, whose text stands below them. */
const keys = {
  by: line(100).describe("Who answers."),
  date: day(),
  edge: line(200).describe("The edge it is about, by its two colours: white / navy.").exactOptional(),
  option: line(200).describe("The other single change it is about: black to orange.").exactOptional(),
  says: z.enum(says).describe("What it comes to."),
  link: line(500).describe("Where more is said: an address that begins with https://.").exactOptional(),
  reply: z
    .strictObject({
      by: line(100).describe("Who replies.").exactOptional(),
      date: day(),
      text: prose(2000).describe("The reply, in Markdown."),
    })
    .describe("What the author says to it.")
    .exactOptional(),
};

export const answerSchema = z.strictObject(keys);

/** An item of `answers:` in a study. */
export const answerItem = z.strictObject({ ...keys, text: prose(2000).describe("The answer, in Markdown.") });

const examples: KeyGuide["examples"] = {
  by: "by: Dunstan Pelleray",
  date: "date: 2026-04-11",
  edge: "edge: white / navy",
  option: "option: black to orange",
  says: "says: doubt",
  link: "link: https://forum.example/77",
  reply: "reply: { text: So do I. }",
  "reply.by": "by: Ines Valcourt",
  "reply.date": "date: 2026-04-12",
  "reply.text": "text: So do I.",
};

/** Names and examples for messages of a file in answers/. */
export const answerGuide: KeyGuide = { whole: "An answer", examples };

/** The same for `answers:` in a study. */
export const answerExamples: KeyGuide["examples"] = {
  answers: "answers: [{ by: Dunstan Pelleray, says: doubt, text: I cannot see it. }]",
  "answers.*": "- { by: Dunstan Pelleray, says: doubt, text: I cannot see it. }",
  "answers.*.text": "text: I cannot see it.",
  ...Object.fromEntries(Object.entries(examples).map(([key, line]) => [`answers.*.${key}`, line])),
};

/** Returns what is wrong with the link of an answer, where it is text. */
export function checkAnswerLink(path: string, link: unknown): Finding[] {
  if (typeof link !== "string" || link === "" || (/^https:\/\/[^\s<>"]+$/.test(link) && URL.canParse(link)))
    return [];
  return wrong("study/answer-link", path, {
    reason: `“link” is ${quoteText(link)}, which is no address that begins with https://.`,
    hint: "Type, for example: link: https://forum.example/77",
  });
}

/** Returns the warning `study/answer-edge` for each answer about an edge that the flag does not have. */
export function checkAnswered(
  { answers = [] }: Pick<Study, "answers">,
  edges: readonly ComparedEdge[],
): readonly Problem[] {
  return answers.flatMap(({ edge, at }: StudyAnswer) => {
    if (edge === undefined || findNamedEdge(edge, edges) !== undefined) return [];
    const known = edges
      .filter(({ contrast: [before] }) => before !== null)
      .map(({ names }) => names[0].join(" / "));
    return report(
      "study/answer-edge",
      at,
      {
        reason: `The flag has no edge ${quoteText(edge)}, so the answer stands with the study as a whole.`,
        hint: known.length === 0 ? "Delete the line." : `The edges are: ${known.slice(0, 8).join(", ")}`,
      },
      "warning",
    );
  });
}
