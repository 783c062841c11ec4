// Floor 7. French: the table of the survey, what can be done with flags chosen in it, and its picture of the whole field.
import type { In } from "../en/all.ts";
import type { surveyTable as english } from "../en/surveytable.ts";

export const surveyTable: In<typeof english> = {
  "surveyTable.caption": "Chaque drapeau tel qu’il est.",
  "surveyTable.captionOrdered": "Chaque drapeau tel qu’il est, les moins nets d’abord.",
  "surveyTable.captionHeads":
    "Assez grand : la moitié de ce qui doit se voir reste à cette distance, et son plus grand morceau couvre 5 minutes d’arc. Aucun emblème trouvé : le drapeau n’a que des champs.",
  "surveyTable.choose": "Choisir",
  "surveyTable.flag": "Drapeau",
  "surveyTable.focus": "Netteté de ce qui doit se voir",
  "surveyTable.lasts": "Assez grand jusqu’à",
  "surveyTable.weakest": "Limite la plus faible",
  "surveyTable.first": "Couleur à changer d’abord",
  "surveyTable.best": "Meilleur changement d’une couleur",
  "surveyTable.chooseOne": "Choisir {name}",
  "surveyTable.study": "Étude : <a>{title}</a>",
  "surveyTable.named": "Désigné par les lecteurs.",
  "surveyTable.noEmblem": "aucun emblème trouvé",
  "surveyTable.ofContrast": "de contraste",
  "surveyTable.ofClarity": "de netteté",
  "surveyTable.or": "ou",
  "surveyTable.noFirst": "aucune",
  "surveyTable.noBest": "aucun",
  "surveyTable.chosen": "{count, plural, one {{number} drapeau choisi} other {{number} drapeaux choisis}}",
  "surveyTable.onlyChosen": "Ne montrer que ceux-ci",
  "surveyTable.list": "Liste pour commencer des études",
  "surveyTable.series": "Fichier pour commencer une série",
  "surveyTable.chooseNone": "N’en choisir aucun",
  "surveyTable.showAll": "Montrer tous les drapeaux",
  "surveyTable.listHead":
    "Drapeaux choisis dans le recensement : {gallery}. Tapez les lignes qui commencent par counterchange dans le dossier qui contient flags/.",
  "surveyTable.seriesTitle": "Drapeaux choisis dans le recensement",
  "surveyTable.seriesNote":
    "Pour une série qui existe déjà : copiez les lignes du premier au dernier - sous son « studies: ».",
  "surveyTable.seriesClosing": "Laquelle de leurs couleurs changeriez-vous, et en quoi ?",
  "field.title": "Tout le champ",
  "field.about": "Chaque drapeau à sa netteté d’aujourd’hui ; souligné là où une étude en traite.",
  "field.past": "Passer l’image",
  "field.without":
    "{count, plural, one {# d’une seule couleur n’a ni limite ni place ici.} other {# d’une seule couleur n’ont ni limite ni place ici.}}",
  "field.flag": "{name}, netteté {clarity}",
  "field.least": "Le moins net : {name}, netteté {clarity}",
  "field.weakest": "La plus faible : {one} / {other}, contraste {contrast}",
};
