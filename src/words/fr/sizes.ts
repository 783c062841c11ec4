// Floor 7. French: both flags at sizes that stand for distances.
import type { In } from "../en/all.ts";
import type { sizes as english } from "../en/sizes.ts";

export const sizes: In<typeof english> = {
  "sizes.title": "À bout de bras",
  "sizes.caption":
    "Vu à 60 cm, chacun est aussi grand que le drapeau à la distance inscrite dessous, sur un écran ou un papier de 96 pixels par pouce.",
  "sizes.says": "Les deux drapeaux aussi petits qu’ils paraissent de loin, à bout de bras : {distances}.",
  "sizes.distance": "{distance} hauteurs de drapeau",
  "sizes.alt": "{label}, aussi grand qu’à {distance}",
};
