// Floor 7. English: studies among others, and what others said of them.

export const proposal = {
  /** Counts of studies that propose a change for one and the same flag. `count` to choose by, `shown` a number. */
  "proposal.none": "no study of it yet",
  "proposal.only": "one proposal for this flag",
  "proposal.count":
    "{count, plural, =2 {two proposals for one flag} =3 {three proposals for one flag} =4 {four proposals for one flag} =5 {five proposals for one flag} =6 {six proposals for one flag} =7 {seven proposals for one flag} =8 {eight proposals for one flag} =9 {nine proposals for one flag} =10 {ten proposals for one flag} one {# proposals for one flag} other {# proposals for one flag}}",
  /** `count`: the message before. */
  "proposal.countShown": "{count}, the first {shown} shown",
  /** Beside the name of a flag. */
  "proposal.oneOf":
    "{count, plural, =2 {one of two proposals for it} =3 {one of three proposals for it} =4 {one of four proposals for it} =5 {one of five proposals for it} =6 {one of six proposals for it} =7 {one of seven proposals for it} =8 {one of eight proposals for it} =9 {one of nine proposals for it} =10 {one of ten proposals for it} one {one of # proposals for it} other {one of # proposals for it}}",
  /** What a series holds: one of these, or both as a list. */
  "proposal.studies": "{count, plural, one {# study} other {# studies}}",
  "proposal.flags": "{count, plural, one {# flag without a study} other {# flags without a study}}",
  /** `says`, to choose by: the person agrees, disagrees, doubts or asks; `by` is the name of a person. */
  "proposal.answer":
    "{says, select, agree {{by} agrees} disagree {{by} disagrees} doubt {{by} doubts} other {{by} asks}}",
  "proposal.authorReplies": "The author replies",
  "proposal.replies": "{by} replies",
  "proposal.authorRepliesOn": "The author replies, {date}",
  "proposal.repliesOn": "{by} replies, {date}",
  /** What a society decided. `status`, to choose by, is adopted, declined or withdrawn. A sentence of the society follows. */
  "proposal.decided":
    "{status, select, adopted {Adopted on {date}.} declined {Declined on {date}.} other {Withdrawn on {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {Adopted on {date} by {by}.} declined {Declined on {date} by {by}.} other {Withdrawn on {date} by {by}.}}",
  /** `votes`: a list of the three below. */
  "proposal.decidedVotes":
    "{status, select, adopted {Adopted on {date}, {votes}.} declined {Declined on {date}, {votes}.} other {Withdrawn on {date}, {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {Adopted on {date} by {by}, {votes}.} declined {Declined on {date} by {by}, {votes}.} other {Withdrawn on {date} by {by}, {votes}.}}",
  "proposal.for": "{count, plural, one {# for} other {# for}}",
  "proposal.against": "{count, plural, one {# against} other {# against}}",
  "proposal.abstained": "{count, plural, one {# abstained} other {# abstained}}",
} as const;
