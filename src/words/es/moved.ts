// Floor 7. Spanish: pages at addresses whose own page has gone; a heading, and what stands below it.
import type { In } from "../en/all.ts";
import type { moved as english } from "../en/moved.ts";

export const moved: In<typeof english> = {
  "moved.moved": "Esta página se ha trasladado",
  "moved.movedTo": "Está ahora en otra dirección.",
  "moved.near": "Esta página ya no está aquí",
  "moved.nearTo": "Lo más cercano:",
  "moved.edge": "Este límite ya no está en el estudio",
  "moved.edgeTo": "Los colores del dibujo han cambiado desde entonces. El límite de colores más cercanos:",
  "moved.withdrawn": "Retirado",
  "moved.withdrawnHow": "Lo que había en esta dirección ya no se publica.",
  "moved.absent": "Este estudio no se muestra por ahora",
  "moved.absentHow": "Está en la carpeta de la galería y volverá a esta dirección.",
  "moved.claimed": "Este estudio tiene otra dirección",
  "moved.claimedBy": "Más de un estudio dice haber estado aquí:",
  "moved.lastGood":
    "Este estudio no pudo construirse con lo que hay ahora en su carpeta. Esta es su última página buena.",
};
