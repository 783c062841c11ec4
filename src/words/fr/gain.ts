// Floor 7. French: the chart of what each change does to clarity.
import type { In } from "../en/all.ts";
import type { gain as english } from "../en/gain.ts";

export const gain: In<typeof english> = {
  "gain.title": "Ce que chaque changement fait à la netteté",
  "gain.order": "Les plus grands gains d’abord.",
  "gain.key":
    "Un anneau pour l’original, un point pour le nouveau dessin ; un trait discontinu là où la netteté baisse.",
  "gain.othersListed":
    "{count, plural, one {L’autre étude est dans la liste complète} other {Les # autres études sont dans la liste complète}}",
  "gain.othersOnFront":
    "{count, plural, one {L’autre étude est sur la page d’accueil} other {Les # autres études sont sur la page d’accueil}}",
  "gain.told": "{count, plural, one {# étude} other {# études}} : la netteté {ways}.",
  "gain.rises": "monte dans {count}",
  "gain.falls": "baisse dans {count}",
  "gain.stays": "ne change pas dans {count}",
  "gain.most": "Elle monte le plus dans « {title} », de {before} à {after}.",
  "gain.here": "Dans cette étude, elle va de {before} à {after}.",
};
