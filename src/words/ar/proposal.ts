// Floor 7. Arabic: studies among others, and what others said of them.
import type { In } from "../en/all.ts";
import type { proposal as english } from "../en/proposal.ts";

export const proposal: In<typeof english> = {
  "proposal.none": "لا دراسة له بعد",
  "proposal.only": "اقتراح واحد لهذا العلم",
  "proposal.count":
    "{count, plural, =2 {اقتراحان لعلم واحد} =3 {ثلاثة اقتراحات لعلم واحد} =4 {أربعة اقتراحات لعلم واحد} =5 {خمسة اقتراحات لعلم واحد} =6 {ستة اقتراحات لعلم واحد} =7 {سبعة اقتراحات لعلم واحد} =8 {ثمانية اقتراحات لعلم واحد} =9 {تسعة اقتراحات لعلم واحد} =10 {عشرة اقتراحات لعلم واحد} zero {لا اقتراحات لهذا العلم} one {اقتراح واحد لعلم واحد} two {اقتراحان لعلم واحد} few {# اقتراحات لعلم واحد} many {# اقتراحًا لعلم واحد} other {# اقتراح لعلم واحد}}",
  "proposal.countShown": "{count}، المعروض منها أولها حتى {shown}",
  "proposal.oneOf":
    "{count, plural, =2 {واحد من اقتراحين له} =3 {واحد من ثلاثة اقتراحات له} =4 {واحد من أربعة اقتراحات له} =5 {واحد من خمسة اقتراحات له} =6 {واحد من ستة اقتراحات له} =7 {واحد من سبعة اقتراحات له} =8 {واحد من ثمانية اقتراحات له} =9 {واحد من تسعة اقتراحات له} =10 {واحد من عشرة اقتراحات له} zero {اقتراح له} one {الاقتراح الوحيد له} two {واحد من اقتراحين له} few {واحد من # اقتراحات له} many {واحد من # اقتراحًا له} other {واحد من # اقتراح له}}",
  "proposal.studies":
    "{count, plural, zero {لا دراسات} one {دراسة واحدة} two {دراستان} few {# دراسات} many {# دراسة} other {# دراسة}}",
  "proposal.flags":
    "{count, plural, zero {لا أعلام بلا دراسة} one {علم واحد بلا دراسة} two {علمان بلا دراسة} few {# أعلام بلا دراسة} many {# علمًا بلا دراسة} other {# علم بلا دراسة}}",
  "proposal.answer":
    "{says, select, agree {موافقة من {by}} disagree {مخالفة من {by}} doubt {شك من {by}} other {سؤال من {by}}}",
  "proposal.authorReplies": "رد المؤلف",
  "proposal.replies": "رد من {by}",
  "proposal.authorRepliesOn": "رد المؤلف، {date}",
  "proposal.repliesOn": "رد من {by}، {date}",
  "proposal.decided":
    "{status, select, adopted {اعتُمدت في {date}.} declined {رُفضت في {date}.} other {سُحبت في {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {اعتُمدت بقرار من {by} في {date}.} declined {رُفضت بقرار من {by} في {date}.} other {سُحبت بقرار من {by} في {date}.}}",
  "proposal.decidedVotes":
    "{status, select, adopted {اعتُمدت في {date}، {votes}.} declined {رُفضت في {date}، {votes}.} other {سُحبت في {date}، {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {اعتُمدت بقرار من {by} في {date}، {votes}.} declined {رُفضت بقرار من {by} في {date}، {votes}.} other {سُحبت بقرار من {by} في {date}، {votes}.}}",
  "proposal.for":
    "{count, plural, zero {لا صوت مع} one {صوت واحد مع} two {صوتان مع} few {# أصوات مع} many {# صوتًا مع} other {# صوت مع}}",
  "proposal.against":
    "{count, plural, zero {لا صوت ضد} one {صوت واحد ضد} two {صوتان ضد} few {# أصوات ضد} many {# صوتًا ضد} other {# صوت ضد}}",
  "proposal.abstained":
    "{count, plural, zero {لا ممتنع} one {ممتنع واحد} two {ممتنعان} few {# ممتنعين} many {# ممتنعًا} other {# ممتنع}}",
};
