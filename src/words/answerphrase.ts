// Floor 7. What an answer comes to, and who gave it when.
import type { StudyAnswer } from "../content/study/study.ts";
import type { Format } from "./format.ts";

const says: Readonly<Record<StudyAnswer["says"], string>> = {
  agree: "agrees",
  disagree: "disagrees",
  doubt: "doubts",
  ask: "asks",
};

/** `Dunstan Pelleray agrees`. */
export function describeAnswer({ by, says: word }: StudyAnswer): string {
  return `${by} ${says[word]}`;
}

/** `Ines Valcourt replies, 12 April 2026`, as far as it is known. */
export function describeReply({ by, date }: NonNullable<StudyAnswer["reply"]>, format: Format): string {
  const who = by === undefined ? "The author replies" : `${by} replies`;
  return date === undefined ? who : `${who}, ${format.date(date)}`;
}
