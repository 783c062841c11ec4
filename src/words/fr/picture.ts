// Floor 7. French: link pictures, which sites and chats show when someone posts a link; and records for search.
import type { In } from "../en/all.ts";
import type { picture as english } from "../en/picture.ts";

export const picture: In<typeof english> = {
  "picture.redesign": "Nouveau dessin · étude non officielle",
  "picture.above": "En haut : {half}",
  "picture.below": "En bas : {half}",
  "picture.clarity": "{verdict} : netteté",
  "picture.oneColour": "Une seule couleur",
  "picture.contrast": "{outcome} : contraste de cette limite",
  "picture.move": "de {before} à {after}",
  "picture.alt":
    "Un drapeau {split}, moitié original et moitié nouveau dessin. {title}. {measure} {move}. Étude non officielle.",
  "picture.altOf":
    "Un drapeau {split}, moitié original et moitié nouveau dessin. {title} ({of}). {measure} {move}. Étude non officielle.",
  "picture.perPale": "parti",
  "picture.perBend": "tranché",
  "picture.perBendSinister": "taillé",
  "picture.perFess": "coupé",
  "picture.genre": "Étude non officielle de drapeau redessiné",
  "picture.within": "{title}, dans {study}",
};
