// Floor 7. French: the front page.
import type { In } from "../en/all.ts";
import type { front as english } from "../en/front.ts";

export const front: In<typeof english> = {
  "front.nominate": "Un drapeau mériterait une étude ? <name>Désignez-le, et dites pourquoi</name>",
  "front.empty":
    "Rien n’est encore publié ici. La première étude figurera sur cette page ; d’ici là, <method>la méthode</method> dit comment elle sera mesurée.",
  "front.earlier": "Études précédentes",
  "front.edgeless": "Sans limite à mesurer : <list></list>.",
  "front.more": "{count, plural, one {# de plus} other {# de plus}}",
};
