// Floor 8. Ballots → how many chose what of one question, with how far that may be from what all would choose.
import type { Ballot, Vote } from "../../content/vote/ballot.ts";
import { wilsonInterval } from "../../measure/wilsoninterval.ts";
import type { Format } from "../../words/format.ts";

/** One side of a question, `neither` among them, with its count. Percent as text. */
export interface SideCount {
  readonly side: string;
  readonly name: string;
  readonly chosen: number;
  readonly count: string;
  readonly share: string;
  /** `48% to 90%`. */
  readonly between: string;
  /** All three in percent, for a bar. */
  readonly bar: { readonly share: number; readonly low: number; readonly high: number };
}

export interface QuestionCount {
  readonly total: number;
  readonly sides: readonly SideCount[];
  /** What voters said, where it may be shown. */
  readonly words: readonly { readonly side: string; readonly text: string }[];
}

/** Returns the side of a question that a vote is for: `original`, `neither`, or the slug of the study chosen. */
export function sideOf({ choice, study }: Vote): string {
  return choice === "redesign" ? study : choice;
}

/**
 * Counts a question of `studies`, rivals where they are several; undefined where nobody answered it. Of a ballot that answers
 * rivals one by one the first answer counts. `sides` are all that could be chosen, with their names.
 */
export function countQuestion(
  ballots: readonly Ballot[],
  studies: readonly string[],
  sides: readonly { readonly side: string; readonly name: string }[],
  format: Format,
  showWords: boolean,
): QuestionCount | undefined {
  const votes = ballots.flatMap((ballot) => ballot.votes.find(({ study }) => studies.includes(study)) ?? []);
  const total = votes.length;
  if (total === 0) return undefined;
  const nameOf = (side: string) => sides.find((one) => one.side === side)?.name ?? side;
  return {
    total,
    sides: sides.map(({ side, name }) => {
      const chosen = votes.filter((vote) => sideOf(vote) === side).length;
      const [low, high] = wilsonInterval(chosen, total).map((limit) => limit * 100);
      const bar = { share: (100 * chosen) / total, low: low ?? 0, high: high ?? 100 };
      const between = format.say("vote.range", {
        low: format.percent(bar.low),
        high: format.percent(bar.high),
      });
      return {
        side,
        name,
        chosen,
        count: format.number(chosen, 0),
        share: format.percent(bar.share),
        between,
        bar,
      };
    }),
    words: showWords
      ? votes.flatMap((vote) =>
          vote.why === undefined ? [] : [{ side: nameOf(sideOf(vote)), text: vote.why }],
        )
      : [],
  };
}
