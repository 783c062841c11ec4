// Floor 7. What an answer comes to, and who gave it when.
import type { StudyAnswer } from "../content/study/study.ts";
import type { Format } from "./format.ts";

/** `Dunstan Pelleray agrees`. */
export function describeAnswer({ by, says }: StudyAnswer, { say }: Format): string {
  return say("proposal.answer", { by, says });
}

/** `Ines Valcourt replies, 12 April 2026`, as far as it is known. */
export function describeReply(
  { by, date }: NonNullable<StudyAnswer["reply"]>,
  { say, date: write }: Format,
): string {
  if (date === undefined)
    return by === undefined ? say("proposal.authorReplies") : say("proposal.replies", { by });
  const on = write(date);
  return by === undefined
    ? say("proposal.authorRepliesOn", { date: on })
    : say("proposal.repliesOn", { by, date: on });
}
