// Floor 7. French: other single changes of a flag.
import type { In } from "../en/all.ts";
import type { options as english } from "../en/options.ts";

export const options: In<typeof english> = {
  "options.caption": "Le meilleur remplacement de chaque couleur",
  "options.byColour": "Le meilleur pour chaque couleur",
  "options.all": "Tous à la fois",
  "options.how":
    "Chaque couleur du drapeau est essayée avec la palette, avec les autres couleurs du drapeau et avec la nuance nette la plus proche de sa propre teinte. Les chiffres les ordonnent ; la beauté est l’affaire de l’auteur. <how>Comment se classent les changements</how>",
  "options.tried": "Aussi essayés par l’auteur",
  "options.changed": "Couleur changée",
  "options.best": "Meilleur remplacement",
  "options.ofFocus": "De ce qui doit se voir",
  "options.worse": "Ce qui y perd",
  "options.share": "{share} du drapeau",
  "options.none": "Aucun qui laisse à chaque meuble son contour.",
  "options.bestLabel": "Meilleur :",
  "options.worseLabel": "Y perd :",
  "options.nothing": "Rien.",
  "options.beside": "à côté de <study>{title}</study>",
  "options.title": "Autres changements d’une couleur",
  "options.description": "Tout autre changement d’une couleur à côté de {title}, mesuré.",
  "options.standing": "Cette étude : {standing}",
  "options.whole": "L’original a une netteté de {clarity} : aucun changement ne peut l’accroître.",
  "options.clearest": "Le plus net : {was} en {is}, {clarity}.",
  "options.clearestTried": "Le plus net, essayé par l’auteur : {was} en {is}, {clarity}.",
  "options.clearestTriedInPart": "Le plus net, essayé par l’auteur : {was} en {is} dans {part}, {clarity}.",
  "options.clearerTried": "Plus net encore, essayé par l’auteur : {was} en {is}, {clarity}.",
  "options.clearerTriedInPart":
    "Plus net encore, essayé par l’auteur : {was} en {is} dans {part}, {clarity}.",
  "options.onePart": "une partie",
  "options.noneLevel": "Aucun changement n’aide ; à égalité :",
  "options.noneNearest": "Aucun changement n’aide ; le plus proche :",
  "options.triedHas": "{name}, essayé par l’auteur, a {clarity}",
  "options.option": "Variante",
  "options.triedAlt": "Le drapeau où {is} remplace {was}",
  "options.triedAltInPart": "Le drapeau où {is} remplace {was} dans {part}",
  "options.changeInPart": "{before} devient {after} dans {part}.",
  "options.figure": "Netteté {clarity}",
  "options.figureAndFocus": "Netteté {clarity}, de ce qui doit se voir {focus}",
  "options.strengthRises":
    "la netteté ne bouge pas, mais la force, ce dont les limites dépassent le net, monte de {was} à {is}",
  "options.strengthFalls":
    "la netteté ne bouge pas, mais la force, ce dont les limites dépassent le net, baisse de {was} à {is}",
  "options.verdict": "{verdict}.",
  "options.verdictWhy": "{verdict} : {why}.",
};
