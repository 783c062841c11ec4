// Floor 7. German: the matrix of all single changes.
import type { In } from "../en/all.ts";
import type { matrix as english } from "../en/matrix.ts";

export const matrix: In<typeof english> = {
  "matrix.notTried": "nicht erprobt",
  "matrix.own": "diese Studie",
  "matrix.note": "Anmerkung {number}",
  "matrix.merges": "verschmilzt",
  "matrix.clearest": "die klarste der Zeile",
  "matrix.title": "Jede einzelne Änderung",
  "matrix.ownHue": "im eigenen Farbton",
  "matrix.studys": "{name} der Studie",
  "matrix.unranked": "ohne Rang: {share} vom Umriss einer Figur verschmelzen",
  "matrix.moreColours":
    "{count, plural, one {# weitere Farbe der Flagge} other {# weitere Farben der Flagge}}",
  "matrix.moreReplacements": "{count, plural, one {# weiterer Ersatz} other {# weitere Ersatzfarben}}",
  "matrix.reading": "Eine Zeile ändert eine Farbe der Flagge, eine Spalte sagt, in welche.",
  "matrix.clarity": "Unter jeder Flagge steht ihre Klarheit.",
  "matrix.clarityToday": "Unter jeder Flagge steht ihre Klarheit; das Original hat {today}.",
  "matrix.bold": "Fett: die klarste der Zeile, mehrere, wo sie gleichauf sind.",
  "matrix.mergesNote": "„verschmilzt“: Zwei Farben werden eine.",
  "matrix.greyNote": "Grau: ohne Rang, weil ein Drittel vom Umriss einer Figur oder mehr verschmelzen würde.",
  "matrix.dash": "Ein Strich: nicht erprobt, oder keine Änderung zu sehen.",
  "matrix.partAlone": "Die Änderung dieser Studie betrifft nur einen Teil und ist nicht darunter.",
  "matrix.left": "Nicht gezeigt: {what}.",
};
