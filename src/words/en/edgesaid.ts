// Floor 7. English: what became of one edge.

/**
 * Values that all of these may have. `pair`, `is`, `was`, `neighbour`: names of colours, such as “dark red”. `who` says which
 * sentence is right: `one` is one colour beside its neighbour, `pair` two colours that both changed and had other names (`was`),
 * `same` two that kept their names. `where`: an `edgeSaid.where…`. `move`: an `edgeSaid.move…`. `grade` and `wasGrade`: weak, soft,
 * clear or strong, in words; `contrast` and `wasContrast` in percent. The first letter is made a capital.
 */
export const edgeSaid = {
  "edgeSaid.unchanged": "Unchanged",
  "edgeSaid.leftAlone": "The change leaves this edge as it is: contrast {contrast}, {grade}.",
  "edgeSaid.hardlyChange": "{pair} hardly change over {where}: {move}.",
  "edgeSaid.stayClear": "{pair} stay clear over {where}: {move}.",
  "edgeSaid.stayHard": "{pair} stay hard to tell apart over {where}: {move}.",
  "edgeSaid.gained":
    "{who, select, one {{is} now stands out from {neighbour} over {where}: contrast {contrast}, {grade}, where {was} had {wasContrast}, {wasGrade}.} same {{is} now stand apart over {where}: contrast {contrast}, {grade}, where they had {wasContrast}, {wasGrade}.} other {{is} now stand apart over {where}: contrast {contrast}, {grade}, where {was} had {wasContrast}, {wasGrade}.}}",
  "edgeSaid.better":
    "{who, select, one {{is} stands out from {neighbour} more than {was} did, over {where}: {move}.} same {{is} stand apart more than they did, over {where}: {move}.} other {{is} stand apart more than {was} did, over {where}: {move}.}}",
  "edgeSaid.betterUnclear":
    "{who, select, one {{is} is easier to tell from {neighbour} than {was} was, over {where}, but not clear: {move}.} same {{is} are easier to tell apart than they were, over {where}, but not clear: {move}.} other {{is} are easier to tell apart than {was} were, over {where}, but not clear: {move}.}}",
  "edgeSaid.lost":
    "{who, select, one {{is} no longer stands out from {neighbour} over {where}: contrast {contrast}, {grade}, where {was} had {wasContrast}, {wasGrade}.} same {{is} no longer stand apart over {where}: contrast {contrast}, {grade}, where they had {wasContrast}, {wasGrade}.} other {{is} no longer stand apart over {where}: contrast {contrast}, {grade}, where {was} had {wasContrast}, {wasGrade}.}}",
  "edgeSaid.worse":
    "{who, select, one {{is} stands out from {neighbour} less than {was} did, over {where}: {move}.} same {{is} stand apart less than they did, over {where}: {move}.} other {{is} stand apart less than {was} did, over {where}: {move}.}}",
  "edgeSaid.worseUnclear":
    "{who, select, one {{is} is harder still to tell from {neighbour} than {was} was, over {where}: {move}.} same {{is} are harder still to tell apart than they were, over {where}: {move}.} other {{is} are harder still to tell apart than {was} were, over {where}: {move}.}}",
  "edgeSaid.merged":
    "{pair} become one colour to the eye over {where}: the line between them, which had a contrast of {wasContrast}, {wasGrade}, is gone.",
  /** `gradeId`: weak, soft, clear or strong, never translated, to choose by. */
  "edgeSaid.parted":
    "{pair} were one colour and now meet in {gradeId, select, weak {a weak edge} soft {a soft edge} clear {a clear edge} other {a strong edge}}, over {where}: contrast {contrast}.",
  /** Two names of colours that meet. */
  "edgeSaid.pair": "{one} and {other}",
  "edgeSaid.moveNone": "contrast {contrast}, {grade}",
  "edgeSaid.moveStill": "contrast {wasContrast} to {contrast}, still {grade}",
  "edgeSaid.moveGrade": "contrast {wasContrast} to {contrast}, {wasGrade} to {grade}",
  "edgeSaid.whereAll": "every line of the flag",
  "edgeSaid.wherePart": "{part} of all edge length",
  /** What has to be seen: the charge or emblem of the flag. Its outline is the edges around it. */
  "edgeSaid.whereOutline": "the whole outline of what has to be seen",
  "edgeSaid.whereOutlinePart": "{part} of the outline of what has to be seen",
  /** `outline`: one of the two before. */
  "edgeSaid.whereAllAndOutline": "every line of the flag, {outline} included",
  "edgeSaid.whereOutlineAndMore": "{outline} and more, {part} of all edge length",
} as const;
