// Floor 7. French: studies among others, and what others said of them.
import type { In } from "../en/all.ts";
import type { proposal as english } from "../en/proposal.ts";

export const proposal: In<typeof english> = {
  "proposal.none": "pas encore d’étude à son sujet",
  "proposal.only": "une proposition pour ce drapeau",
  "proposal.count":
    "{count, plural, =2 {deux propositions pour un même drapeau} =3 {trois propositions pour un même drapeau} =4 {quatre propositions pour un même drapeau} =5 {cinq propositions pour un même drapeau} =6 {six propositions pour un même drapeau} =7 {sept propositions pour un même drapeau} =8 {huit propositions pour un même drapeau} =9 {neuf propositions pour un même drapeau} =10 {dix propositions pour un même drapeau} one {# proposition pour un même drapeau} other {# propositions pour un même drapeau}}",
  "proposal.countShown": "{count}, les {shown} premières montrées",
  "proposal.oneOf":
    "{count, plural, =2 {l’une des deux propositions} =3 {l’une des trois propositions} =4 {l’une des quatre propositions} =5 {l’une des cinq propositions} =6 {l’une des six propositions} =7 {l’une des sept propositions} =8 {l’une des huit propositions} =9 {l’une des neuf propositions} =10 {l’une des dix propositions} one {l’une des # propositions} other {l’une des # propositions}}",
  "proposal.studies": "{count, plural, one {# étude} other {# études}}",
  "proposal.flags": "{count, plural, one {# drapeau sans étude} other {# drapeaux sans étude}}",
  "proposal.answer":
    "{says, select, agree {{by} approuve} disagree {{by} désapprouve} doubt {{by} doute} other {{by} demande}}",
  "proposal.authorReplies": "L’auteur répond",
  "proposal.replies": "{by} répond",
  "proposal.authorRepliesOn": "L’auteur répond, {date}",
  "proposal.repliesOn": "{by} répond, {date}",
  "proposal.decided":
    "{status, select, adopted {Adoptée le {date}.} declined {Refusée le {date}.} other {Retirée le {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {Adoptée le {date} par {by}.} declined {Refusée le {date} par {by}.} other {Retirée le {date} par {by}.}}",
  "proposal.decidedVotes":
    "{status, select, adopted {Adoptée le {date}, {votes}.} declined {Refusée le {date}, {votes}.} other {Retirée le {date}, {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {Adoptée le {date} par {by}, {votes}.} declined {Refusée le {date} par {by}, {votes}.} other {Retirée le {date} par {by}, {votes}.}}",
  "proposal.for": "{count, plural, one {# pour} other {# pour}}",
  "proposal.against": "{count, plural, one {# contre} other {# contre}}",
  "proposal.abstained": "{count, plural, one {# abstention} other {# abstentions}}",
};
