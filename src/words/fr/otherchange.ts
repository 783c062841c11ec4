// Floor 7. French: other single changes of a flag, which colour to change first, and what was not tried.
import type { In } from "../en/all.ts";
import type { otherChange as english } from "../en/otherchange.ts";

export const otherChange: In<typeof english> = {
  "otherChange.another": "un autre {name}",
  "otherChange.equal": "{count, plural, one {{names} fait aussi bien} other {{names} font aussi bien}}",
  "otherChange.equalShort": "{names} aussi",
  "otherChange.others": "{count, plural, one {# autre} other {# autres}}",
  "otherChange.lost": "Plus difficile à voir contre {names}.",
  "otherChange.worse": "Moins net contre {names}.",
  "otherChange.merged": "Une seule couleur avec {names}.",
  "otherChange.outlineMerges": "{share} du contour se fondent.",
  "otherChange.confusable": "Se prend pour une couleur du drapeau : {names}.",
  "otherChange.confused": "Les yeux {sights} y voient : {name}.",
  "otherChange.protan": "protans",
  "otherChange.deutan": "deutans",
  "otherChange.tritan": "tritans",
  "otherChange.fromTo": "{before} en {after}",
  "otherChange.unranked":
    "{count, plural, one {Non classé : {changes} ; un tiers ou plus du contour d’un meuble s’y fondrait.} other {Non classés : {changes} ; dans chacun, un tiers ou plus du contour d’un meuble se fondrait.}}",
  "otherChange.place":
    "{place, selectordinal, =1 {Le plus net de {total} changements d’une couleur} one {#er en netteté sur {total} changements d’une couleur} other {#e en netteté sur {total} changements d’une couleur}}{level, plural, =0 {.} one {, à égalité avec un autre.} other {, à égalité avec # autres.}}",
  "otherChange.noneTried": "Aucune des couleurs n’a pu être essayée.",
  "otherChange.allMerge": "Chaque changement essayé fond un tiers ou plus du contour d’un meuble.",
  "otherChange.clear": "Le drapeau est net tel qu’il est, avec une netteté de {clarity}.",
  "otherChange.clearAndNone":
    "Le drapeau est net tel qu’il est, avec une netteté de {clarity} : aucun changement d’une couleur n’apporte cinq points de plus.",
  "otherChange.none":
    "Le drapeau a une netteté de {clarity}, et aucun changement d’une couleur n’apporte cinq points de plus.",
  "otherChange.detail": "Le drapeau dans son ensemble est net, à {clarity} ; seul un détail y gagne.",
  "otherChange.first":
    "À changer d’abord : {colour} ({share} du drapeau). Avec {best} à sa place, la netteté monte de {from} à {to}.",
  "otherChange.firstAlike":
    "{count, plural, =2 {À changer d’abord : {colours} ou {last}. Avec {best} à la place de l’une ou de l’autre, la netteté monte de {from} à {to}.} one {À changer d’abord : {colours} ou {last}. Avec {best} à la place de l’une d’elles, la netteté monte de {from} à {to}.} other {À changer d’abord : {colours} ou {last}. Avec {best} à la place de l’une d’elles, la netteté monte de {from} à {to}.}}",
  "otherChange.firstOfSeveral": "À changer d’abord : {colours} ou {last} ; {moves}.",
  "otherChange.shareFirst": "{colour} ({share} du drapeau)",
  "otherChange.share": "{colour} ({share})",
  "otherChange.moveFirst": "si {best} remplace {colour}, la netteté monte de {from} à {to}",
  "otherChange.move": "si {best} remplace {colour}, à {to}",
  "otherChange.mostGained":
    "Le plus grand gain est là où se touchent {colour} et {other} (contraste {contrast} aujourd’hui).",
  "otherChange.uneven": "Couleur inégale, donc non essayée : {names}.",
  "otherChange.unseen":
    "{distance, plural, one {Invisible à # hauteur de drapeau, donc non essayé : {names}.} other {Invisible à # hauteurs de drapeau, donc non essayé : {names}.}}",
  "otherChange.shared":
    "Visible aussi en transparence, dans un dégradé ou un motif, que les chiffres laissent tels quels : {names}.",
  "otherChange.largest":
    "{all, plural, one {# couleur} other {# couleurs}} : seulement {tried, plural, one {la plus étendue a été essayée} other {les # plus étendues ont été essayées}}, avec les couleurs les unes des autres.",
  "otherChange.palette":
    "{all, plural, one {La palette a # couleur} other {La palette a # couleurs}} : {tried, plural, one {la première a été essayée.} other {les # premières ont été essayées.}}",
};
