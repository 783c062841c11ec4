// Floor 7. German: link pictures, which sites and chats show when someone posts a link; and records for search.
import type { In } from "../en/all.ts";
import type { picture as english } from "../en/picture.ts";

export const picture: In<typeof english> = {
  "picture.redesign": "Neuentwurf · inoffizielle Studie",
  "picture.above": "Oben: {half}",
  "picture.below": "Unten: {half}",
  "picture.clarity": "{verdict}: Klarheit",
  "picture.oneColour": "Eine Farbe",
  "picture.contrast": "{outcome}: Kontrast dieser Kante",
  "picture.move": "von {before} auf {after}",
  "picture.alt":
    "Eine Flagge, {split}, halb Original, halb Neuentwurf. {title}. {measure} {move}. Inoffizielle Studie.",
  "picture.altOf":
    "Eine Flagge, {split}, halb Original, halb Neuentwurf. {title} ({of}). {measure} {move}. Inoffizielle Studie.",
  "picture.perPale": "gespalten",
  "picture.perBend": "schrägrechts geteilt",
  "picture.perBendSinister": "schräglinks geteilt",
  "picture.perFess": "geteilt",
  "picture.genre": "Inoffizielle Neuentwurfsstudie einer Flagge",
  "picture.within": "{title}, in {study}",
};
