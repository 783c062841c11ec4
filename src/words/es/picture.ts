// Floor 7. Spanish: link pictures, which sites and chats show when someone posts a link; and records for search.
import type { In } from "../en/all.ts";
import type { picture as english } from "../en/picture.ts";

export const picture: In<typeof english> = {
  "picture.redesign": "Rediseño · estudio no oficial",
  "picture.above": "Arriba: {half}",
  "picture.below": "Abajo: {half}",
  "picture.clarity": "{verdict}: nitidez",
  "picture.oneColour": "Un solo color",
  "picture.contrast": "{outcome}: contraste de este límite",
  "picture.move": "de {before} a {after}",
  "picture.alt":
    "Una bandera {split}, mitad original y mitad rediseño. {title}. {measure} {move}. Estudio no oficial.",
  "picture.altOf":
    "Una bandera {split}, mitad original y mitad rediseño. {title} ({of}). {measure} {move}. Estudio no oficial.",
  "picture.perPale": "partida",
  "picture.perBend": "tronchada",
  "picture.perBendSinister": "tajada",
  "picture.perFess": "cortada",
  "picture.genre": "Estudio no oficial de rediseño de bandera",
  "picture.within": "{title}, en {study}",
};
