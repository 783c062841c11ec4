// Floor 5. The rules of a decision: it stands once, and fits the status of its study.
import { findNearest } from "../../problem/knownword.ts";
import { type Finding, wrong } from "../yaml/finding.ts";

type Raw = Readonly<Record<string, unknown>>;

/**
 * Returns what is wrong with the decision in a study's front matter, as read from YAML.
 *
 * Problems: study/decision-missing, study/decision-twice, study/decision-open; warning study/votes-against-status.
 */
export function checkDecision(raw: Raw): Finding[] {
  const isDecided = raw.status === "adopted" || raw.status === "declined";
  if (raw.decision !== undefined && raw.decided !== undefined)
    return wrong(
      "study/decision-twice",
      "decision",
      {
        reason: "The decision stands twice: as “decision” and as “decided”.",
        hint: "Keep “decided”, and type the sentence behind its “why”.",
      },
      { on: "key" },
    );
  // A mistyped key is told of itself.
  const isMistyped = Object.keys(raw).some((key) => findNearest(key, ["decision", "decided"]) !== undefined);
  if (isDecided && !isMistyped && raw.decision === undefined && raw.decided === undefined)
    return wrong("study/decision-missing", "status", {
      reason: `A study that is ${raw.status} says why, and “decision” is not there.`,
      hint: "Add a sentence: decision: The lighter wheel reads from the quay.",
    });
  if (raw.decided === undefined) return [];
  if (isDecided) return checkVotes(raw);
  return wrong(
    "study/decision-open",
    "decided",
    {
      reason: `The study is decided, and its status is ${typeof raw.status === "string" ? raw.status : "open"}.`,
      hint: "Type: status: adopted, or: status: declined",
    },
    { on: "key" },
  );
}

/** A warning, as a society may ask for two thirds, or decide otherwise. */
function checkVotes({ status, decided }: Raw): Finding[] {
  const votes = decided as { readonly for?: unknown; readonly against?: unknown } | null;
  const [ayes, noes] = [votes?.for, votes?.against];
  if (typeof ayes !== "number" || typeof noes !== "number") return [];
  if (status === "adopted" ? ayes >= noes : noes >= ayes) return [];
  return wrong(
    "study/votes-against-status",
    "status",
    {
      reason: `The study is ${status}, with ${ayes} for it and ${noes} against it.`,
      hint: "Look whether “for” and “against” stand the wrong way round. Where the larger number does not decide, there is nothing to do.",
    },
    { severity: "warning" },
  );
}
