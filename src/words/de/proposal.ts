// Floor 7. German: studies among others, and what others said of them.
import type { In } from "../en/all.ts";
import type { proposal as english } from "../en/proposal.ts";

export const proposal: In<typeof english> = {
  "proposal.none": "noch keine Studie dazu",
  "proposal.only": "ein Vorschlag für diese Flagge",
  "proposal.count":
    "{count, plural, =2 {zwei Vorschläge für eine Flagge} =3 {drei Vorschläge für eine Flagge} =4 {vier Vorschläge für eine Flagge} =5 {fünf Vorschläge für eine Flagge} =6 {sechs Vorschläge für eine Flagge} =7 {sieben Vorschläge für eine Flagge} =8 {acht Vorschläge für eine Flagge} =9 {neun Vorschläge für eine Flagge} =10 {zehn Vorschläge für eine Flagge} one {# Vorschlag für eine Flagge} other {# Vorschläge für eine Flagge}}",
  "proposal.countShown": "{count}, die ersten {shown} gezeigt",
  "proposal.oneOf":
    "{count, plural, =2 {einer von zwei Vorschlägen dafür} =3 {einer von drei Vorschlägen dafür} =4 {einer von vier Vorschlägen dafür} =5 {einer von fünf Vorschlägen dafür} =6 {einer von sechs Vorschlägen dafür} =7 {einer von sieben Vorschlägen dafür} =8 {einer von acht Vorschlägen dafür} =9 {einer von neun Vorschlägen dafür} =10 {einer von zehn Vorschlägen dafür} one {einer von # Vorschlägen dafür} other {einer von # Vorschlägen dafür}}",
  "proposal.studies": "{count, plural, one {# Studie} other {# Studien}}",
  "proposal.flags": "{count, plural, one {# Flagge ohne Studie} other {# Flaggen ohne Studie}}",
  "proposal.answer":
    "{says, select, agree {{by} stimmt zu} disagree {{by} widerspricht} doubt {{by} zweifelt} other {{by} fragt}}",
  "proposal.authorReplies": "Antwort der Autoren",
  "proposal.replies": "Antwort von {by}",
  "proposal.authorRepliesOn": "Antwort der Autoren, {date}",
  "proposal.repliesOn": "Antwort von {by}, {date}",
  "proposal.decided":
    "{status, select, adopted {Angenommen am {date}.} declined {Abgelehnt am {date}.} other {Zurückgezogen am {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {Angenommen am {date}: {by}.} declined {Abgelehnt am {date}: {by}.} other {Zurückgezogen am {date}: {by}.}}",
  "proposal.decidedVotes":
    "{status, select, adopted {Angenommen am {date}, {votes}.} declined {Abgelehnt am {date}, {votes}.} other {Zurückgezogen am {date}, {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {Angenommen am {date}: {by}, {votes}.} declined {Abgelehnt am {date}: {by}, {votes}.} other {Zurückgezogen am {date}: {by}, {votes}.}}",
  "proposal.for": "{count, plural, one {# dafür} other {# dafür}}",
  "proposal.against": "{count, plural, one {# dagegen} other {# dagegen}}",
  "proposal.abstained": "{count, plural, one {# enthalten} other {# enthalten}}",
};
