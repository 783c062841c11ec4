// Floor 7. What became of one edge, in words: made of the numbers and the names on the page, and of nothing else.
import { isClear } from "../colour/contrast.ts";
import { isWhole } from "../measure/percenttext.ts";
import type { Moved } from "./edgemove.ts";
import type { Format } from "./format.ts";
import { gradeIds } from "./gradeword.ts";
import { capitalise } from "./phrase.ts";

/** What became of one edge, in one sentence. */
export function describeEdge(edge: Moved, format: Format): string {
  const { was, is, neighbour = "" } = edge;
  return capitalise(
    format.say(chooseSentence(edge), {
      who: edge.neighbour === undefined ? (was === is ? "same" : "pair") : "one",
      was,
      is,
      neighbour,
      pair: edge.neighbour === undefined ? is : format.say("edgeSaid.pair", { one: is, other: neighbour }),
      where: sayWhere(edge, format),
      move: sayMove(edge, format),
      gradeId: edge.after.grade,
      ...figuresOf(edge, format),
    }),
  );
}

function chooseSentence({ outcome, before, after }: Moved) {
  const isNowClear = isClear(after.grade);
  switch (outcome) {
    case "merged":
      return "edgeSaid.merged";
    case "parted":
      return "edgeSaid.parted";
    case "gained":
      return "edgeSaid.gained";
    case "lost":
      return "edgeSaid.lost";
    case "better":
      return isNowClear ? "edgeSaid.better" : "edgeSaid.betterUnclear";
    case "worse":
      return isNowClear ? "edgeSaid.worse" : "edgeSaid.worseUnclear";
    case "same":
      // To the eye it is what it was; beyond strong its contrast may move far.
      if (before !== undefined && isClear(before.grade) !== isNowClear) return "edgeSaid.hardlyChange";
      return isNowClear ? "edgeSaid.stayClear" : "edgeSaid.stayHard";
  }
}

/** `The change leaves this edge as it is: contrast 81%, strong.` */
export function describeUnchanged(edge: Moved, format: Format): string {
  return format.say("edgeSaid.leftAlone", figuresOf(edge, format));
}

function figuresOf({ before, after }: Moved, { contrast, say }: Format) {
  return {
    contrast: contrast(after.contrast),
    grade: say(gradeIds[after.grade]),
    wasContrast: before === undefined ? "" : contrast(before.contrast),
    wasGrade: before === undefined ? "" : say(gradeIds[before.grade]),
  };
}

/** `contrast 10 to 38, weak to soft`. */
function sayMove(edge: Moved, format: Format): string {
  const { before, after } = edge;
  const figures = figuresOf(edge, format);
  if (before === undefined || before.contrast === after.contrast)
    return format.say("edgeSaid.moveNone", figures);
  return format.say(before.grade === after.grade ? "edgeSaid.moveStill" : "edgeSaid.moveGrade", figures);
}

/** Along how much: of the outline of the focus where the edge is part of it, else of all edge length. */
function sayWhere({ part: fraction, focusPart, goesBeyond }: Moved, { say, share }: Format): string {
  const part = share(fraction);
  if (focusPart < 0.005)
    return isWhole(fraction) ? say("edgeSaid.whereAll") : say("edgeSaid.wherePart", { part });
  const outline = isWhole(focusPart)
    ? say("edgeSaid.whereOutline")
    : say("edgeSaid.whereOutlinePart", { part: share(focusPart) });
  if (!goesBeyond) return outline;
  return isWhole(fraction)
    ? say("edgeSaid.whereAllAndOutline", { outline })
    : say("edgeSaid.whereOutlineAndMore", { outline, part });
}
