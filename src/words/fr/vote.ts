// Floor 7. French: the vote on a series, flag by flag.
import type { In } from "../en/all.ts";
import type { vote as english } from "../en/vote.ts";

export const vote: In<typeof english> = {
  "vote.title": "Vote : {series}",
  "vote.description":
    "Original ou nouveau dessin ? Un vote sur {series}, drapeau par drapeau, avant qu’aucun chiffre ne se voie.",
  "vote.on": "Un vote sur <a>{series}</a>",
  "vote.heading": "Lequel hisseriez-vous ?",
  "vote.how":
    "Le drapeau tel qu’il est, et ce qui est proposé à sa place. Avant votre choix, rien ne dit lequel est lequel, et aucun chiffre n’est montré.",
  "vote.unscripted":
    "Pour voter sur cette page, il faut un script, que ce navigateur n’exécute pas. Dans une salle, on s’en passe : imprimez la page, montrez les drapeaux un à un et cochez une case par main levée. Chaque question dit à la fin lequel est lequel.",
  "vote.questions": "Questions",
  "vote.back": "Retour",
  "vote.next": "Suite",
  "vote.place": "{number} sur {count}",
  "vote.flag": "Drapeau {number}",
  "vote.alt": "Un drapeau : {paints}",
  "vote.neither": "Aucun des deux",
  "vote.original": "L’original",
  "vote.redesign": "Le nouveau dessin",
  "vote.redesignOf": "Le nouveau dessin « {title} »",
  "vote.unofficial": "{name}, une étude non officielle",
  "vote.cautionOne":
    "L’un d’eux est le drapeau tel qu’il est ; ce qui est proposé est une étude non officielle.",
  "vote.cautionMany":
    "L’un d’eux est le drapeau tel qu’il est ; ce qui est proposé, ce sont des études non officielles.",
  "vote.why": "Pourquoi ? (facultatif)",
  "vote.choose": "C’est mon choix",
  "vote.missing": "Choisissez d’abord un drapeau, ou aucun des deux.",
  "vote.told": "Lequel est lequel, et les chiffres",
  "vote.which": "{flag} : lequel est lequel",
  "vote.headFlag": "Drapeau",
  "vote.headChosen": "Choisi, sur {count, plural, one {# votant} other {# votants}}",
  "vote.own": "votre choix",
  "vote.range": "de {low} à {high}",
  "vote.study": "L’étude",
  "vote.verdictOf": "{name} : {sentence}",
  "vote.said": "<quiet>{side} :</quiet> <said></said>",
  "vote.ballot": "Votre bulletin",
  "vote.answer": "{flag} : {choice}",
  "vote.answerWhy": "{flag} : {choice}, « {why} »",
  "vote.unanswered": "{flag} : sans réponse",
  "vote.kept":
    "Il reste dans ce seul navigateur, sous un numéro tiré au sort, et personne n’en sait rien tant que vous ne le remettez pas.",
  "vote.copy": "Copier cette ligne",
  "vote.copied": "Copié.",
  "vote.refused": "Le navigateur ne l’a pas permis ; sélectionnez la ligne et copiez-la.",
  "vote.save": "Enregistrer en tableau (CSV)",
  "vote.mail": "Envoyer par courriel",
  "vote.form": "Envoyer par un formulaire",
  "vote.anew": "Commencer un autre bulletin",
  "vote.letter": "Un bulletin sur {series}",
  "vote.room": "Pour une classe ou une réunion",
  "vote.same":
    "<same>Le même ordre pour tous</same> · <own>Un ordre à soi</own>. Avec le premier, tous ceux qui l’ouvrent voient A et B comme vous les voyez ; avec le second, chacun les voit dans un ordre tiré au sort.",
  "vote.paper":
    "Imprimée, cette page est une feuille de pointage : les drapeaux, des cases pour les mains levées et, en dernière page, lequel est lequel.",
  "vote.ballots":
    "{count, plural, one {# bulletin est revenu.} other {# bulletins sont revenus.}} À côté de chaque part figure l’intervalle où, avec 95 % de confiance, se trouverait celle de tous si les votants avaient été tirés au sort (intervalle de Wilson) ; ceux qui sont venus d’eux-mêmes ne l’ont pas été.",
  "vote.noBallots": "Aucun bulletin n’est encore revenu.",
  "vote.key": "Pour la personne qui compte : lequel est lequel",
  "vote.sides": "{flag} : <sides></sides>",
};
