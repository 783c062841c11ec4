// Floor 7. French: what a speaker says of a change, with numbers in words. All counts are counts of edges.
import type { In } from "../en/all.ts";
import type { spoken as english } from "../en/spoken.ts";

export const spoken: In<typeof english> = {
  "spoken.percent": "{near} ({percent})",
  "spoken.about": "environ {part}",
  "spoken.none": "rien",
  "spoken.almostNone": "presque rien",
  "spoken.twentieth": "un vingtième",
  "spoken.fifteenth": "un quinzième",
  "spoken.tenth": "un dixième",
  "spoken.eighth": "un huitième",
  "spoken.sixth": "un sixième",
  "spoken.fifth": "un cinquième",
  "spoken.quarter": "un quart",
  "spoken.third": "un tiers",
  "spoken.twoFifths": "deux cinquièmes",
  "spoken.half": "la moitié",
  "spoken.threeFifths": "trois cinquièmes",
  "spoken.twoThirds": "deux tiers",
  "spoken.threeQuarters": "trois quarts",
  "spoken.fourFifths": "quatre cinquièmes",
  "spoken.nineTenths": "neuf dixièmes",
  "spoken.almostAll": "presque la totalité",
  "spoken.all": "la totalité",
  "spoken.count":
    "{count, plural, =0 {aucune} =1 {une} =2 {deux} =3 {trois} =4 {quatre} =5 {cinq} =6 {six} =7 {sept} =8 {huit} =9 {neuf} =10 {dix} one {#} other {#}}",
  "spoken.edges": "{count, plural, one {Sur {all} limite, {moves}.} other {Sur {all} limites, {moves}.}}",
  "spoken.better":
    "{count, plural, one {{edges} devient plus facile à voir} other {{edges} deviennent plus faciles à voir}}",
  "spoken.worse":
    "{count, plural, one {{edges} devient plus difficile à voir} other {{edges} deviennent plus difficiles à voir}}",
  "spoken.betterAndWorse": "{better} et {worse}",
  "spoken.noneMoves": "aucune ne devient plus facile ou plus difficile à voir",
  "spoken.price": "Le prix : {losses}.",
  "spoken.moreLosses":
    "{count, plural, one {et {edges} autre devient plus difficile à voir} other {et {edges} autres deviennent plus difficiles à voir}}",
  "spoken.merged": "{one} et {other} se fondent en une seule couleur",
  "spoken.parted": "{newOne} et {newOther} se séparent, et la limite entre les deux est {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; elle est toujours {grade} ({contrast})} only {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; elle n’est plus que {grade} ({contrast})} other {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; elle est maintenant {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; entre {newOne} et {newOther}, elle est toujours {grade} ({contrast})} only {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; entre {newOne} et {newOther}, elle n’est plus que {grade} ({contrast})} other {là où se touchent {one} et {other}, la limite était {wasGrade} ({wasContrast}) ; entre {newOne} et {newOther}, elle est maintenant {grade} ({contrast})}}",
};
