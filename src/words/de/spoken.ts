// Floor 7. German: what a speaker says of a change, with numbers in words. All counts are counts of edges.
import type { In } from "../en/all.ts";
import type { spoken as english } from "../en/spoken.ts";

export const spoken: In<typeof english> = {
  "spoken.percent": "{near} ({percent})",
  "spoken.about": "etwa {part}",
  "spoken.none": "nichts",
  "spoken.almostNone": "fast nichts",
  "spoken.twentieth": "ein Zwanzigstel",
  "spoken.fifteenth": "ein Fünfzehntel",
  "spoken.tenth": "ein Zehntel",
  "spoken.eighth": "ein Achtel",
  "spoken.sixth": "ein Sechstel",
  "spoken.fifth": "ein Fünftel",
  "spoken.quarter": "ein Viertel",
  "spoken.third": "ein Drittel",
  "spoken.twoFifths": "zwei Fünftel",
  "spoken.half": "die Hälfte",
  "spoken.threeFifths": "drei Fünftel",
  "spoken.twoThirds": "zwei Drittel",
  "spoken.threeQuarters": "drei Viertel",
  "spoken.fourFifths": "vier Fünftel",
  "spoken.nineTenths": "neun Zehntel",
  "spoken.almostAll": "fast alles",
  "spoken.all": "alles",
  "spoken.count":
    "{count, plural, =0 {keine} =1 {eine} =2 {zwei} =3 {drei} =4 {vier} =5 {fünf} =6 {sechs} =7 {sieben} =8 {acht} =9 {neun} =10 {zehn} one {#} other {#}}",
  "spoken.edges":
    "{count, plural, one {Die Flagge hat {all} Kante: {moves}.} other {Von {all} Kanten: {moves}.}}",
  "spoken.better":
    "{count, plural, one {{edges} wird besser sichtbar} other {{edges} werden besser sichtbar}}",
  "spoken.worse":
    "{count, plural, one {{edges} wird schlechter sichtbar} other {{edges} werden schlechter sichtbar}}",
  "spoken.betterAndWorse": "{better} und {worse}",
  "spoken.noneMoves": "keine wird besser oder schlechter sichtbar",
  "spoken.price": "Der Preis: {losses}.",
  "spoken.moreLosses":
    "{count, plural, one {und {edges} weitere wird schlechter sichtbar} other {und {edges} weitere werden schlechter sichtbar}}",
  "spoken.merged": "{one} und {other} verschmelzen zu einer Farbe",
  "spoken.parted":
    "{newOne} und {newOther} trennen sich, und die Kante zwischen ihnen ist {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt ist sie noch immer {grade} ({contrast})} only {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt ist sie nur noch {grade} ({contrast})} other {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt ist sie {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt sind es {newOne} und {newOther}, und sie ist noch immer {grade} ({contrast})} only {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt sind es {newOne} und {newOther}, und sie ist nur noch {grade} ({contrast})} other {wo {one} und {other} aneinanderstoßen, war die Kante {wasGrade} ({wasContrast}); jetzt sind es {newOne} und {newOther}, und sie ist {grade} ({contrast})}}",
};
