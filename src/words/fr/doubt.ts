// Floor 7. French: what makes the figures of a drawing less certain.
import type { In } from "../en/all.ts";
import type { doubt as english } from "../en/doubt.ts";

export const doubt: In<typeof english> = {
  "doubt.joined":
    "Le dessin a plus de couleurs qu’il n’en est mesuré séparément : {count, plural, one {celle qui se voit le moins est mesurée avec une voisine plus visible, ou dans le groupe « {name} ».} other {les # qui se voient le moins sont mesurées avec une voisine plus visible, ou ensemble, sous le nom « {name} ».}}",
  "doubt.faint":
    "{count, plural, one {Une forme se voit à moins de la moitié de sa force et n’est pas mesurée.} other {# formes se voient à moins de la moitié de leur force et ne sont pas mesurées.}}",
  "doubt.inexact":
    "Seuls {share} du dessin ont pu être distingués exactement ; ses chiffres sont moins sûrs.",
  "doubt.nearLimit": "À peine visibles à cette distance : des parties en {names}.",
  "doubt.effect": "Le dessin de l’auteur contient ce qui n’est ni montré ici ni mesuré : {looks}.",
};
