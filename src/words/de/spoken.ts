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
  "spoken.edges": "{count, plural, one {Von {all} Kante: {moves}.} other {Von {all} Kanten: {moves}.}}",
  "spoken.better":
    "{count, plural, one {{edges} wird leichter zu sehen} other {{edges} werden leichter zu sehen}}",
  "spoken.worse":
    "{count, plural, one {{edges} wird schwerer zu sehen} other {{edges} werden schwerer zu sehen}}",
  "spoken.betterAndWorse": "{better} und {worse}",
  "spoken.noneMoves": "keine wird leichter oder schwerer zu sehen",
  "spoken.price": "Der Preis: {losses}.",
  "spoken.moreLosses":
    "{count, plural, one {und {edges} weitere wird schwerer zu sehen} other {und {edges} weitere werden schwerer zu sehen}}",
  "spoken.merged": "{one} und {other} verschmelzen zu einer Farbe",
  "spoken.parted":
    "{newOne} und {newOther} trennen sich, und die Kante zwischen ihnen ist {grade} ({contrast})",
  "spoken.lost":
    "{how, select, still {zwischen {one} und {other} war die Kante {wasGrade} ({wasContrast}); jetzt ist sie noch immer {grade} ({contrast})} only {zwischen {one} und {other} war die Kante {wasGrade} ({wasContrast}); jetzt ist sie nur noch {grade} ({contrast})} other {zwischen {one} und {other} war die Kante {wasGrade} ({wasContrast}); jetzt ist sie {grade} ({contrast})}}",
  "spoken.lostRenamed":
    "{how, select, still {zwischen {one} und {other} war die Kante {wasGrade} ({wasContrast}); jetzt, zwischen {newOne} und {newOther}, ist sie noch immer {grade} ({contrast})} only {zwischen {one} und {other} war die Kante {wasGrade} ({wasContrast}); jetzt, zwischen {newOne} und {newOther}, ist sie nur noch {grade} ({contrast})} other {zwischen {one} und {other} war die Kante {wasGrade} ({wasContrast}); jetzt, zwischen {newOne} und {newOther}, ist sie {grade} ({contrast})}}",
};
