// Floor 7. French: studies among others, and what others said of them.
import type { In } from "../en/all.ts";
import type { proposal as english } from "../en/proposal.ts";

export const proposal: In<typeof english> = {
  "proposal.none": "pas encore d’étude à son sujet",
  "proposal.only": "une proposition pour ce drapeau",
  "proposal.count":
    "{count, plural, =2 {deux propositions pour un drapeau} =3 {trois propositions pour un drapeau} =4 {quatre propositions pour un drapeau} =5 {cinq propositions pour un drapeau} =6 {six propositions pour un drapeau} =7 {sept propositions pour un drapeau} =8 {huit propositions pour un drapeau} =9 {neuf propositions pour un drapeau} =10 {dix propositions pour un drapeau} one {# proposition pour un drapeau} other {# propositions pour un drapeau}}",
  "proposal.countShown": "{count}, les {shown} premières montrées",
  "proposal.oneOf":
    "{count, plural, =2 {l’une de deux propositions} =3 {l’une de trois propositions} =4 {l’une de quatre propositions} =5 {l’une de cinq propositions} =6 {l’une de six propositions} =7 {l’une de sept propositions} =8 {l’une de huit propositions} =9 {l’une de neuf propositions} =10 {l’une de dix propositions} one {l’une de # propositions} other {l’une de # propositions}}",
  "proposal.studies": "{count, plural, one {# étude} other {# études}}",
  "proposal.flags": "{count, plural, one {# drapeau sans étude} other {# drapeaux sans étude}}",
  "proposal.answer":
    "{says, select, agree {{by} approuve} disagree {{by} désapprouve} doubt {{by} doute} other {{by} demande}}",
  "proposal.authorReplies": "Réponse de l’auteur",
  "proposal.replies": "Réponse de {by}",
  "proposal.authorRepliesOn": "Réponse de l’auteur, {date}",
  "proposal.repliesOn": "Réponse de {by}, {date}",
  "proposal.decided":
    "{status, select, adopted {Adoptée le {date}.} declined {Refusée le {date}.} other {Retirée le {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {Adoptée le {date} : {by}.} declined {Refusée le {date} : {by}.} other {Retirée le {date} : {by}.}}",
  "proposal.decidedVotes":
    "{status, select, adopted {Adoptée le {date}, {votes}.} declined {Refusée le {date}, {votes}.} other {Retirée le {date}, {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {Adoptée le {date} : {by}, {votes}.} declined {Refusée le {date} : {by}, {votes}.} other {Retirée le {date} : {by}, {votes}.}}",
  "proposal.for": "{count, plural, one {# pour} other {# pour}}",
  "proposal.against": "{count, plural, one {# contre} other {# contre}}",
  "proposal.abstained": "{count, plural, one {# abstention} other {# abstentions}}",
};
