// Floor 7. Spanish: both flags at sizes that stand for distances.
import type { In } from "../en/all.ts";
import type { sizes as english } from "../en/sizes.ts";

export const sizes: In<typeof english> = {
  "sizes.title": "A un brazo de distancia",
  "sizes.caption":
    "Vista a 60 cm, cada una es tan grande como la bandera a la distancia que lleva debajo, en una pantalla o papel de 96 píxeles por pulgada.",
  "sizes.says": "Ambas banderas tan pequeñas como se ven a distancia, a un brazo: {distances}.",
  "sizes.distance": "{distance} alturas de bandera",
  "sizes.alt": "{label}, tan grande como a {distance}",
};
