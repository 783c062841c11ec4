// Floor 7. Spanish: studies among others, and what others said of them.
import type { In } from "../en/all.ts";
import type { proposal as english } from "../en/proposal.ts";

export const proposal: In<typeof english> = {
  "proposal.none": "aún sin estudio",
  "proposal.only": "una propuesta para esta bandera",
  "proposal.count":
    "{count, plural, =2 {dos propuestas para una bandera} =3 {tres propuestas para una bandera} =4 {cuatro propuestas para una bandera} =5 {cinco propuestas para una bandera} =6 {seis propuestas para una bandera} =7 {siete propuestas para una bandera} =8 {ocho propuestas para una bandera} =9 {nueve propuestas para una bandera} =10 {diez propuestas para una bandera} one {# propuesta para una bandera} other {# propuestas para una bandera}}",
  "proposal.countShown": "{count}, se muestran las {shown} primeras",
  "proposal.oneOf":
    "{count, plural, =2 {una de dos propuestas} =3 {una de tres propuestas} =4 {una de cuatro propuestas} =5 {una de cinco propuestas} =6 {una de seis propuestas} =7 {una de siete propuestas} =8 {una de ocho propuestas} =9 {una de nueve propuestas} =10 {una de diez propuestas} one {una de # propuestas} other {una de # propuestas}}",
  "proposal.studies": "{count, plural, one {# estudio} other {# estudios}}",
  "proposal.flags": "{count, plural, one {# bandera sin estudio} other {# banderas sin estudio}}",
  "proposal.answer":
    "{says, select, agree {{by} está de acuerdo} disagree {{by} no está de acuerdo} doubt {{by} duda} other {{by} pregunta}}",
  "proposal.authorReplies": "Responde el autor",
  "proposal.replies": "Responde {by}",
  "proposal.authorRepliesOn": "Responde el autor, {date}",
  "proposal.repliesOn": "Responde {by}, {date}",
  "proposal.decided":
    "{status, select, adopted {Adoptado el {date}.} declined {Rechazado el {date}.} other {Retirado el {date}.}}",
  "proposal.decidedBy":
    "{status, select, adopted {Adoptado el {date}: {by}.} declined {Rechazado el {date}: {by}.} other {Retirado el {date}: {by}.}}",
  "proposal.decidedVotes":
    "{status, select, adopted {Adoptado el {date}, {votes}.} declined {Rechazado el {date}, {votes}.} other {Retirado el {date}, {votes}.}}",
  "proposal.decidedByVotes":
    "{status, select, adopted {Adoptado el {date}: {by}, {votes}.} declined {Rechazado el {date}: {by}, {votes}.} other {Retirado el {date}: {by}, {votes}.}}",
  "proposal.for": "{count, plural, one {# a favor} other {# a favor}}",
  "proposal.against": "{count, plural, one {# en contra} other {# en contra}}",
  "proposal.abstained": "{count, plural, one {# abstención} other {# abstenciones}}",
};
