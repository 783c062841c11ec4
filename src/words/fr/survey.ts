// Floor 7. French: the survey of all flags as they are.
import type { In } from "../en/all.ts";
import type { survey as english } from "../en/survey.ts";

export const survey: In<typeof english> = {
  "survey.title": "Recensement",
  "survey.lede":
    "Chaque drapeau de la galerie tel qu’il est aujourd’hui : à quel point ses limites sont nettes, laquelle est la plus faible, et quelle couleur changer d’abord. Les chiffres ne disent rien de la beauté ni du sens.",
  "survey.flags": "{count, plural, one {# drapeau} other {# drapeaux}}",
  "survey.only": "{count, plural, one {# drapeau} other {# drapeaux}}.",
  "survey.ordered": "{count, plural, one {# drapeau} other {# drapeaux}}, les moins nets d’abord.",
  "survey.description":
    "{count, plural, one {# drapeau} other {# drapeaux}}, les moins nets d’abord : la limite la plus faible de chacun, la couleur à changer d’abord, le meilleur changement d’une couleur.",
  "survey.told":
    "{weak, plural, =0 {Aucun n’a sa limite la plus faible} one {# a sa limite la plus faible} other {# ont leur limite la plus faible}} au-dessous de {limit} de contraste ; {helped, plural, =0 {aucun ne gagnerait} one {# gagnerait} other {# gagneraient}}, par un seul changement de couleur, {points, plural, one {# point} other {# points}} de netteté ou plus.",
  "survey.how": "Comment se fait le recensement",
  "survey.empty": "Il n’y a encore rien à recenser.",
  "survey.more": "{count, plural, one {# drapeau de plus} other {# drapeaux de plus}}",
  "survey.rest": "Les {listed} moins nets sont cités ; les {rest} autres sont dans les fichiers.",
  "survey.failed": "Non mesurés",
  "survey.files": "Fichiers",
  "survey.failedRest": "Et {count} de plus, tous dans le fichier JSON.",
  "survey.csv": "Le recensement, CSV",
  "survey.json": "Le recensement, JSON",
  "survey.pictured": "{count, plural, one {# drapeau} other {# drapeaux}}, les moins nets d’abord",
  "survey.range": "de {least} à {most}",
  "survey.caution": "Les chiffres ne disent rien de la beauté ni du sens.",
  "survey.alt": "Une planche de drapeaux. Recensement : {flags}. Netteté : {number}. {caution}",
  "survey.study": "Étude",
  "survey.withStudy": "Avec une étude",
  "survey.withoutStudy": "Sans étude",
  "survey.none": "Aucun drapeau ne répond à tout cela. Retirez un mot ou un choix, ou montrez tout.",
  "survey.found": "{found} sur {count, plural, one {# drapeau} other {# drapeaux}}",
};
