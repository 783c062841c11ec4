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
  const { outcome, why } = tellDecision(decision, status, format);
  return outcome === undefined ? why : `${outcome} ${why}`;
}

/** What became of it, where the day is known, and the reason, apart. */
export function tellDecision(
  decision: Decision,
  status: Status,
  format: Format,
): { readonly outcome: string | undefined; readonly why: string } {
  const { why, date, by } = decision;
  if (date === undefined) return { outcome: undefined, why };
  const values = { status, date: format.date(date), by: by ?? "", votes: listVotes(decision, format) };
  const told = values.votes === "" ? "proposal.decided" : "proposal.decidedVotes";
  const toldBy = values.votes === "" ? "proposal.decidedBy" : "proposal.decidedByVotes";
  const outcome = format.say(by === undefined ? told : toldBy, values);
  return { outcome, why: format.piece(capitalise(why)) };
}

/** `11 for, 2 against, and 1 abstained`. */
function listVotes({ for: pro, against, abstained }: Decision, { say, list }: Format): string {
  return list([
    ...(pro === undefined ? [] : [say("proposal.for", { count: pro })]),
    ...(against === undefined ? [] : [say("proposal.against", { count: against })]),
    ...(abstained === undefined ? [] : [say("proposal.abstained", { count: abstained })]),
  ]);
}
