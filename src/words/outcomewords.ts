// Floor 7. What became of one edge, in words: made of the numbers and the names on the page, and of nothing else.
import { isClear } from "../colour/contrast.ts";
import { isWhole } from "../measure/percenttext.ts";
import type { Moved } from "./edgemove.ts";
import type { Format } from "./format.ts";
import { capitalise } from "./phrase.ts";

/** What became of one edge, in one sentence. */
export function describeEdge(edge: Moved, format: Format): string {
  const { outcome } = edge;
  if (outcome === "merged") return sayMerged(edge, format);
  if (outcome === "parted") return sayParted(edge, format);
  if (outcome === "gained" || outcome === "better") return sayBetter(edge, format);
  if (outcome === "lost" || outcome === "worse") return sayWorse(edge, format);
  return sayKept(edge, format);
}

/** The outcome of an edge whose two colours are what they were. */
export const unchangedWord = "Unchanged";

/** `The change leaves this edge as it is: contrast 81%, strong.` */
export function describeUnchanged({ after }: Moved, format: Format): string {
  return `The change leaves this edge as it is: contrast ${format.contrast(after.contrast)}, ${after.grade}.`;
}

/** An edge that is to the eye what it was; beyond strong its contrast may move far. */
function sayKept(edge: Moved, format: Format): string {
  const { before, after } = edge;
  const pair = edge.neighbour === undefined ? edge.is : `${edge.is} and ${edge.neighbour}`;
  const isCrossing = before !== undefined && isClear(before.grade) !== isClear(after.grade);
  const kept = isCrossing ? "hardly change" : isClear(after.grade) ? "stay clear" : "stay hard to tell apart";
  return `${capitalise(pair)} ${kept} over ${sayWhere(edge, format)}: ${sayMove(edge, format)}.`;
}

function sayBetter(edge: Moved, format: Format): string {
  const { outcome, after } = edge;
  const [subject, against, than] = sayPair(edge);
  const where = sayWhere(edge, format);
  if (outcome === "gained") {
    return `${subject} now ${stand(edge)}${against} over ${where}: contrast ${format.contrast(after.contrast)}, ${after.grade}, where ${than} had ${sayBefore(edge, format)}.`;
  }
  if (isClear(after.grade))
    return `${subject} ${stand(edge)}${against} more than ${than} did, over ${where}: ${sayMove(edge, format)}.`;
  return `${subject} ${verb(edge, "is", "are")} easier to tell ${apart(edge)} than ${than} ${verb(edge, "was", "were")}, over ${where}, but not clear: ${sayMove(edge, format)}.`;
}

function sayWorse(edge: Moved, format: Format): string {
  const { outcome, after } = edge;
  const [subject, against, than] = sayPair(edge);
  const where = sayWhere(edge, format);
  if (outcome === "lost") {
    return `${subject} no longer ${stand(edge)}${against} over ${where}: contrast ${format.contrast(after.contrast)}, ${after.grade}, where ${than} had ${sayBefore(edge, format)}.`;
  }
  if (isClear(after.grade))
    return `${subject} ${stand(edge)}${against} less than ${than} did, over ${where}: ${sayMove(edge, format)}.`;
  return `${subject} ${verb(edge, "is", "are")} harder still to tell ${apart(edge)} than ${than} ${verb(edge, "was", "were")}, over ${where}: ${sayMove(edge, format)}.`;
}

function sayMerged(edge: Moved, format: Format): string {
  const pair = edge.neighbour === undefined ? edge.is : `${edge.is} and ${edge.neighbour}`;
  const before = edge.before === undefined ? "" : `, which had a contrast of ${sayBefore(edge, format)},`;
  return `${capitalise(pair)} become one colour to the eye over ${sayWhere(edge, format)}: the line between them${before} is gone.`;
}

function sayParted(edge: Moved, format: Format): string {
  const pair = edge.neighbour === undefined ? edge.is : `${edge.is} and ${edge.neighbour}`;
  return `${capitalise(pair)} were one colour and now meet in a ${edge.after.grade} edge, over ${sayWhere(edge, format)}: contrast ${format.contrast(edge.after.contrast)}.`;
}

/** Subject, what it stands against, and what it is compared with. */
function sayPair({ was, is, neighbour }: Moved): readonly [string, string, string] {
  return neighbour === undefined
    ? [capitalise(is), "", was === is ? "they" : was]
    : [capitalise(is), ` from ${neighbour}`, was];
}

function verb({ neighbour }: Moved, one: string, two: string): string {
  return neighbour === undefined ? two : one;
}

function stand(edge: Moved): string {
  return edge.neighbour === undefined ? "stand apart" : "stands out";
}

function apart({ neighbour }: Moved): string {
  return neighbour === undefined ? "apart" : `from ${neighbour}`;
}

function sayBefore({ before }: Moved, format: Format): string {
  return before === undefined ? "" : `${format.contrast(before.contrast)}, ${before.grade}`;
}

/** `contrast 10 to 38, weak to soft`. */
function sayMove({ before, after }: Moved, format: Format): string {
  const to = format.contrast(after.contrast);
  if (before === undefined || before.contrast === after.contrast) return `contrast ${to}, ${after.grade}`;
  const grades = before.grade === after.grade ? `still ${after.grade}` : `${before.grade} to ${after.grade}`;
  return `contrast ${format.contrast(before.contrast)} to ${to}, ${grades}`;
}

/** Along how much: of the outline of the focus where the edge is part of it, else of all edge length. */
function sayWhere({ part, focusPart, goesBeyond }: Moved, format: Format): string {
  const outline = isWhole(focusPart)
    ? "the whole outline of what has to be seen"
    : `${format.share(focusPart)} of the outline of what has to be seen`;
  if (focusPart < 0.005)
    return isWhole(part) ? "every line of the flag" : `${format.share(part)} of all edge length`;
  if (!goesBeyond) return outline;
  return isWhole(part)
    ? `every line of the flag, ${outline} included`
    : `${outline} and more, ${format.share(part)} of all edge length`;
}
