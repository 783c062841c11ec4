// Floor 5. The steps of a study for a projector, by name, and what its author says of them: which, in what order, with what notes.
import { findNearest } from "../../problem/knownword.ts";
import { quoteText } from "../../problem/quote.ts";
import { type Finding, wrong } from "../yaml/finding.ts";

/** The steps in their usual order. `tried` is every option that the author tried; `tried-1` is the first of them. */
export const showSteps = [
  "the-flag",
  "what-has-to-be-seen",
  "the-weakest-edge",
  "from-afar",
  "the-colours",
  "tried",
  "before",
  "after",
  "better-and-worse",
  "the-price",
  "to-other-eyes",
  "the-question",
] as const;

/** `steps`: only these, in this order; `without`: all but these; `notes`: step → what the speaker is reminded of. */
export interface ShowPlan {
  readonly steps?: readonly string[];
  readonly without?: readonly string[];
  readonly notes?: Readonly<Record<string, string>>;
}

/**
 * Returns what is wrong with the names in `show`, for a study of so many options.
 *
 * Problems: `study/unknown-step`, `study/step-twice`.
 */
export function checkShow(show: unknown, options: number): Finding[] {
  if (typeof show !== "object" || show === null) return [];
  const { steps, without, notes } = show as Readonly<Record<string, unknown>>;
  const tried = Array.from({ length: options }, (_, index) => `tried-${index + 1}`);
  const known: readonly string[] = [...showSteps, ...tried];
  const kept = textsIn(steps);
  const left = textsIn(without);
  const named = [
    ...kept.map((name, at) => ({ name, path: `show.steps.${at}`, isTwice: kept.indexOf(name) !== at })),
    ...left.map((name, at) => ({
      name,
      path: `show.without.${at}`,
      isTwice: left.indexOf(name) !== at || kept.includes(name),
    })),
    ...(typeof notes === "object" && notes !== null && !Array.isArray(notes) ? Object.keys(notes) : []).map(
      (name) => ({ name, path: `show.notes.${name}`, isTwice: false }),
    ),
  ];
  return named.flatMap(({ name, path, isTwice }): Finding[] => {
    if (!known.includes(name)) return unknownStep(name, path, known);
    if (!isTwice) return [];
    const reason = `The step ${quoteText(name)} stands in “show” a second time.`;
    return wrong("study/step-twice", path, { reason, hint: "Delete one of the two." });
  });
}

function unknownStep(name: string, path: string, known: readonly string[]): Finding[] {
  const near = findNearest(name, known);
  const reason = `There is no step ${quoteText(name)}.`;
  const hint = near === undefined ? `The steps are: ${known.join(", ")}` : `Type: ${near}`;
  return wrong(
    "study/unknown-step",
    path,
    { reason, hint },
    path.startsWith("show.notes.") ? { on: "key" } : {},
  );
}

function textsIn(list: unknown): readonly string[] {
  return Array.isArray(list)
    ? list.map((name: unknown) => (typeof name === "string" ? name : "")).filter(Boolean)
    : [];
}
