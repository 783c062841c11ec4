// Floor 7. English: what a speaker says of a change, with numbers in words. All counts are counts of edges.

export const spoken = {
  /** `near`: a part in words, or `spoken.about`. */
  "spoken.percent": "{near} ({percent})",
  "spoken.about": "about {part}",
  /** Parts of an area. */
  "spoken.none": "none",
  "spoken.almostNone": "almost none",
  "spoken.twentieth": "one part in twenty",
  "spoken.fifteenth": "one part in fifteen",
  "spoken.tenth": "a tenth",
  "spoken.eighth": "an eighth",
  "spoken.sixth": "a sixth",
  "spoken.fifth": "a fifth",
  "spoken.quarter": "a quarter",
  "spoken.third": "a third",
  "spoken.twoFifths": "two fifths",
  "spoken.half": "half",
  "spoken.threeFifths": "three fifths",
  "spoken.twoThirds": "two thirds",
  "spoken.threeQuarters": "three quarters",
  "spoken.fourFifths": "four fifths",
  "spoken.nineTenths": "nine tenths",
  "spoken.almostAll": "almost all",
  "spoken.all": "all",
  /** How many edges. */
  "spoken.count":
    "{count, plural, =0 {none} =1 {one} =2 {two} =3 {three} =4 {four} =5 {five} =6 {six} =7 {seven} =8 {eight} =9 {nine} =10 {ten} one {#} other {#}}",
  /** `all`: a `spoken.count`, of which `count` is the number. `moves`: one of the clauses below. */
  "spoken.edges": "{count, plural, one {Of {all} edge, {moves}.} other {Of {all} edges, {moves}.}}",
  /** `edges`: a `spoken.count`. */
  "spoken.better": "{count, plural, one {{edges} gets easier to see} other {{edges} get easier to see}}",
  "spoken.worse": "{count, plural, one {{edges} gets harder to see} other {{edges} get harder to see}}",
  "spoken.betterAndWorse": "{better} and {worse}",
  "spoken.noneMoves": "none gets easier or harder to see",
  /** `losses`: the clauses below, with semicolons. */
  "spoken.price": "The price: {losses}.",
  /** The end of the list. */
  "spoken.moreLosses":
    "{count, plural, one {and {edges} more gets harder to see} other {and {edges} more get harder to see}}",
  /** `one`, `other`, `newOne`, `newOther`: names of colours. `grade`, `wasGrade`: weak, soft, clear or strong, in words. */
  "spoken.merged": "{one} and {other} merge into one colour",
  "spoken.parted": "{newOne} and {newOther} part, and the edge between them is {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {where {one} meets {other}, the edge was {wasGrade} ({wasContrast}); now it is still {grade} ({contrast})} only {where {one} meets {other}, the edge was {wasGrade} ({wasContrast}); now it is only {grade} ({contrast})} other {where {one} meets {other}, the edge was {wasGrade} ({wasContrast}); now it is {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {where {one} meets {other}, the edge was {wasGrade} ({wasContrast}); now, {newOne} beside {newOther}, it is still {grade} ({contrast})} only {where {one} meets {other}, the edge was {wasGrade} ({wasContrast}); now, {newOne} beside {newOther}, it is only {grade} ({contrast})} other {where {one} meets {other}, the edge was {wasGrade} ({wasContrast}); now, {newOne} beside {newOther}, it is {grade} ({contrast})}}",
} as const;
