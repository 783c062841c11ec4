// Floor 7. German: other single changes of a flag, which colour to change first, and what was not tried.
import type { In } from "../en/all.ts";
import type { otherChange as english } from "../en/otherchange.ts";

export const otherChange: In<typeof english> = {
  "otherChange.another": "ein anderes {name}",
  "otherChange.equal": "{count, plural, one {{names} leistet dasselbe} other {{names} leisten dasselbe}}",
  "otherChange.equalShort": "ebenso {names}",
  "otherChange.others": "{count, plural, one {# andere} other {# andere}}",
  "otherChange.lost": "Schwerer zu sehen gegen {names}.",
  "otherChange.worse": "Weniger klar gegen {names}.",
  "otherChange.merged": "Eine Farbe geworden: {names}.",
  "otherChange.outlineMerges": "{share} des Umrisses verschmelzen.",
  "otherChange.confusable": "Zu verwechseln mit einer Farbe der Flagge: {names}.",
  "otherChange.confused": "{sights} Sehende halten es für {name}.",
  "otherChange.protan": "protan",
  "otherChange.deutan": "deutan",
  "otherChange.tritan": "tritan",
  "otherChange.fromTo": "{after} statt {before}",
  "otherChange.unranked":
    "{count, plural, one {Ohne Rang: {changes}; dadurch verschmölze ein Drittel vom Umriss einer Figur oder mehr.} other {Ohne Rang: {changes}; durch jede verschmölze ein Drittel vom Umriss einer Figur oder mehr.}}",
  "otherChange.place":
    "{place, selectordinal, =1 {Am klarsten von {total} einzelnen Änderungen} other {Platz # von {total} einzelnen Änderungen nach Klarheit}}{level, plural, =0 {.} one {, gleichauf mit einer anderen.} other {, gleichauf mit # anderen.}}",
  "otherChange.noneTried": "Keine der Farben konnte erprobt werden.",
  "otherChange.allMerge":
    "Durch jede erprobte Änderung verschmilzt ein Drittel vom Umriss einer Figur oder mehr.",
  "otherChange.clear": "Die Flagge ist klar, wie sie ist, mit einer Klarheit von {clarity}.",
  "otherChange.clearAndNone":
    "Die Flagge ist klar, wie sie ist, mit einer Klarheit von {clarity}: Keine einzelne Änderung bringt fünf Punkte mehr.",
  "otherChange.none":
    "Die Flagge hat eine Klarheit von {clarity}, und keine einzelne Änderung bringt fünf Punkte mehr.",
  "otherChange.detail": "Die Flagge als Ganzes ist klar, mit {clarity}; nur eine Einzelheit gewinnt.",
  "otherChange.first":
    "Zuerst zu ändern: {colour} ({share} der Flagge); dort hebt {best} die Klarheit von {from} auf {to}.",
  "otherChange.firstAlike":
    "{count, plural, =2 {Zuerst zu ändern: {colours} oder {last}; an einer der beiden Stellen hebt {best} die Klarheit von {from} auf {to}.} one {Zuerst zu ändern: {colours} oder {last}; an einer dieser Stellen hebt {best} die Klarheit von {from} auf {to}.} other {Zuerst zu ändern: {colours} oder {last}; an einer dieser Stellen hebt {best} die Klarheit von {from} auf {to}.}}",
  "otherChange.firstOfSeveral": "Zuerst zu ändern: {colours} oder {last}; {moves}.",
  "otherChange.shareFirst": "{colour} ({share} der Flagge)",
  "otherChange.share": "{colour} ({share})",
  "otherChange.moveFirst": "{best} statt {colour} hebt die Klarheit von {from} auf {to}",
  "otherChange.move": "{best} statt {colour} auf {to}",
  "otherChange.mostGained": "Am meisten gewinnt die Kante {colour} / {other} (Kontrast heute {contrast}).",
  "otherChange.uneven": "Keine einheitliche Farbe, darum nicht erprobt: {names}.",
  "otherChange.unseen":
    "{distance, plural, one {Aus # Flaggenhöhe nicht zu sehen, darum nicht erprobt: {names}.} other {Aus # Flaggenhöhen nicht zu sehen, darum nicht erprobt: {names}.}}",
  "otherChange.shared":
    "Auch durchscheinend oder in einem Verlauf oder Muster zu sehen, was die Zahlen lassen, wie es ist: {names}.",
  "otherChange.largest":
    "{all, plural, one {# Farbe} other {# Farben}}: Nur {tried, plural, one {die größte wurde} other {die # größten wurden}} erprobt, mit den Farben der jeweils anderen.",
  "otherChange.palette":
    "{all, plural, one {Die Palette hat # Farbe} other {Die Palette hat # Farben}}: {tried, plural, one {Die erste wurde erprobt.} other {Die ersten # wurden erprobt.}}",
};
