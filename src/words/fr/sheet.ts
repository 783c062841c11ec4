// Floor 7. French: sheets for a class, printed on paper: a handout, a worksheet and the answers for the teacher.
import type { In } from "../en/all.ts";
import type { sheet as english } from "../en/sheet.ts";

export const sheet: In<typeof english> = {
  "sheet.title": "{title}, fiches pour la classe",
  "sheet.description":
    "Polycopié, fiche de travail et réponses, à imprimer. Étude non officielle de drapeau redessiné.",
  "sheet.kind": "Fiches pour la classe",
  "sheet.print":
    "Pour imprimer : la commande d’impression de votre navigateur, A4 ou Letter, en hauteur. Chaque partie occupe sa propre page.",
  "sheet.toStudy": "L’étude",
  "sheet.toSeries": "La série",
  "sheet.contents": "Contenu",
  "sheet.handout": "Polycopié",
  "sheet.worksheet": "Fiche de travail",
  "sheet.answers": "Réponses",
  "sheet.redesign": "Nouveau dessin, étude non officielle",
  "sheet.questions": "Trois questions",
  "sheet.ruler":
    "Le contraste est l’écart de clarté entre deux couleurs qui se touchent. Anneau : l’original. Point : le nouveau dessin.",
  "sheet.left":
    "{count, plural, one {# autre limite est sur la page de l’étude.} other {# autres limites sont sur la page de l’étude.}}",
  "sheet.noRuler": "Une seule couleur : aucune limite à mesurer.",
  "sheet.hatched": "En hachures, pour l’impression en gris",
  "sheet.hatchedHow":
    "Chaque couleur a ses hachures, d’après Silvester Petra Sancta, Rome 1638. Les nuances d’une couleur les partagent.",
  "sheet.originalInLines": "Original en hachures",
  "sheet.redesignInLines": "Nouveau dessin en hachures",
  "sheet.inOutlines": "{flag}, au trait",
  "sheet.name": "Nom",
  "sheet.change": "Changez une couleur. Coloriez le drapeau, la nouvelle couleur à sa place.",
  "sheet.own": "Les couleurs du drapeau",
  "sheet.palette": "Des couleurs au choix",
  "sheet.guess":
    "Estimez le contraste partout où deux couleurs se touchent : un anneau pour l’original, un point pour votre drapeau.",
  "sheet.reason": "Je change <line></line> en <line></line>, parce que",
  "sheet.price": "Ce qui y perd, et pourquoi je l’accepte :",
  "sheet.yours": "Aucune étude de ce drapeau ne figure ici : à vous de la faire.",
  "sheet.teacher": "Pour l’enseignant",
  "sheet.others": "Autres changements",
  "sheet.onWorksheet": "La fiche de travail",
  "sheet.opinion":
    "Sur la fiche de travail, aucun choix n’est juste ou faux. Ce qui compte est une raison qui nomme une limite.",
  "sheet.signs": "Couleurs en hachures",
  "sheet.signsSource":
    "Des lignes qui tiennent lieu de couleurs. Source : Silvester Petra Sancta, « Tesserae gentilitiae », Rome 1638 ; rapporté dans A. C. Fox-Davies, « A Complete Guide to Heraldry », 1909, chapitre VII. Orange et brun : convention ultérieure, sur laquelle les livres diffèrent ; sans source. Le gris et le rose n’ont pas de lignes et restent gris : notre propre choix.",
  "sheet.red": "rouge (gueules)",
  "sheet.blue": "bleu (azur)",
  "sheet.green": "vert (sinople)",
  "sheet.black": "noir (sable)",
  "sheet.purple": "violet (pourpre)",
  "sheet.yellow": "jaune (or)",
  "sheet.white": "blanc (argent)",
  "sheet.orange": "orange (tanné), usage tardif",
  "sheet.brown": "brun, usage tardif",
};
