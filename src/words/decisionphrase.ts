// Floor 7. A decision in words: what became of a proposal, by whom, when, with how many votes, and why.
import type { Decision, Status } from "../content/study/study.ts";
import type { Format } from "./format.ts";
import { capitalise } from "./phrase.ts";

/**
 * The sentence as its society wrote it, with what else is known before it.
 *
 * Example: `Adopted on 2 May 2026 by the spring meeting, 11 for and 2 against. It reads from the quay.`
 */
export function describeDecision(decision: Decision, status: Status, format: Format): string {
  const { why, date, by } = decision;
  if (date === undefined) return why;
  const votes = listVotes(decision, format);
  const told = `${capitalise(status)} on ${format.date(date)}${by === undefined ? "" : ` by ${by}`}`;
  return `${told}${votes === "" ? "" : `, ${votes}`}. ${capitalise(why)}`;
}

/** `11 for, 2 against, and 1 abstained`. */
function listVotes({ for: pro, against, abstained }: Decision, format: Format): string {
  const parts = [[pro, "for"] as const, [against, "against"] as const, [abstained, "abstained"] as const];
  return format.list(
    parts.flatMap(([count, word]) => (count === undefined ? [] : [`${format.number(count, 0)} ${word}`])),
  );
}
