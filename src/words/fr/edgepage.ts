// Floor 7. French: the page of one edge.
import type { In } from "../en/all.ts";
import type { edgepage as english } from "../en/edgepage.ts";

export const edgepage: In<typeof english> = {
  "edgepage.place": "Sur le drapeau ; le cadre est montré en grand",
  "edgepage.numbers": "La limite en chiffres",
  "edgepage.elsewhere": "Les deux mêmes couleurs dans d’autres études",
  "edgepage.study": "Étude",
  "edgepage.elsewhereNote":
    "Deux couleurs de même nom ne sont pas forcément la même : comparez l’étoffe, non le mot.",
  "edgepage.siblings": "Limites de cette étude",
  "edgepage.nearLine": "{near} : une autre étoffe donnerait un autre degré. <why>Pourquoi</why>",
  "edgepage.how":
    "Comment se calcule le <contrast>contraste</contrast>, et <beside>ce qui l’accompagne</beside>.",
  "edgepage.locator": "Où se trouve la limite",
  "edgepage.locatorSays":
    "Le drapeau d’origine en teintes pâles, avec les lignes relevées là où se touchent {one} et {other}.",
  "edgepage.contrast": "contraste",
  "edgepage.difference": "écart de couleur",
  "edgepage.sides": "L’original d’abord, puis le nouveau dessin.",
  "edgepage.seenNote":
    "Le gris garde le contraste. L’écart de couleur est ΔE00 : plus il est grand, mieux on distingue. Ce sont des approximations de la forme la plus forte de chaque déficience, et non un test de la vue de quiconque. <how>Comment elles sont faites</how>",
  "edgepage.noEdge": "pas de limite",
  "edgepage.all": "Toutes sur une seule règle",
  "edgepage.of": "Une limite de l’étude <study>{title}</study>",
  "edgepage.becomes": "{was} devient {is}",
  "edgepage.description": "Une limite d’une étude non officielle de drapeau redessiné, {outcome}.",
  "edgepage.title": "{edge}, dans {study}",
  "edgepage.placeAlt": "{label}, l’endroit où se touchent {one} et {other}",
  "edgepage.unofficial": "Nouveau dessin, étude non officielle",
  "edgepage.bothNear": "Les deux degrés sont au seuil",
  "edgepage.originalNear": "Le degré de l’original est au seuil",
  "edgepage.redesignNear": "Le degré du nouveau dessin est au seuil",
};
