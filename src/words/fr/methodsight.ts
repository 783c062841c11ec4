// Floor 7. French: the steps of the method from a drawing to its lines. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodSight as english } from "../en/methodsight.ts";

export const methodSight: In<typeof english> = {
  "method.edgesText":
    "Nous dessinons le drapeau haut de {pixels} pixels, moins s’il est très large, et numérotons ses couleurs. Nous relevons la ligne partout où deux d’entre elles se touchent. Toutes les lignes entre les deux mêmes couleurs font une <em>limite</em> ; sa longueur se dit en hauteurs du drapeau : au travers d’un drapeau 2:3, elle est de 1,5.",
  "method.edgesLimits":
    "Le bord du drapeau n’est pas une limite. Une forme qui se voit à moins de la moitié de sa force (opacité 0,4) est laissée de côté ; toute autre compte comme opaque. Une limite de moins de {edge} de la longueur totale est citée, mais n’est jamais la plus faible et ne change aucun verdict.",
  "method.edgesSource":
    "Vérifié sur des drapeaux dont une loi fixe la géométrie : les parts concordent à 0,2 point près, les longueurs à 1 %, avec des pointes fines à 3 %. Notre propre jugement : la taille de l’image, la moitié de la force, {edge} de toute la longueur.",
  "method.distanceText":
    "Un drapeau est fait pour être vu de loin. Cette galerie mesure à {distance} hauteurs de drapeau ; de là, la partie la plus fine qu’un œil distingue, une minute d’arc, est de {finest} d’une hauteur de drapeau. Les parties plus fines sont attribuées à leurs voisines avant le relevé des limites : un contour mince disparaît, un large reste. Une partie à moins de 10 % de ce seuil donne un avertissement.",
  "method.distanceNone":
    "Cette galerie mesure le dessin entier. À une distance, qu’elle peut choisir, les parties trop fines pour être distinguées vont à leurs voisines.",
  "method.distanceFocus":
    "<em>Ce qui doit se voir</em>, ce sont les meubles : des parties qui ne touchent aucun bord, avec tout ce qu’elles enferment, et qui remplissent 0,2 % du drapeau ou plus. Au-delà de 35 %, elles font un champ encadré, et nous regardons à l’intérieur ; le trou d’un anneau n’en est pas un. Un morceau d’un dixième de cette surface est un <em>meuble</em> à part. Les auteurs peuvent le désigner eux-mêmes, et le doivent là où un meuble se fond dans un champ de sa propre couleur, car nous ne devinons pas. Un drapeau sans meuble n’en est pas moins bon.",
  "method.distanceSame":
    "Une couleur à moins de {same} d’une plus étendue (<a>ΔE00</a>) compte avec elle. Les parts des couleurs valent pour le dessin entier.",
  "method.distanceSource":
    "Une minute d’arc : acuité de 10/10, ISO 8596, de seconde main. C’est un modèle : une ligne forte et isolée peut encore se remarquer. Notre propre jugement : la distance et tous les pourcentages, ΔE00 {same}, le dixième.",
  "method.lastingText":
    "À chaque distance nous posons deux questions. Ce qui doit se voir est-il net ? Ses propres limites y ont une <a>netteté</a>. Est-il assez grand ? Il doit rester au moins {left} de sa surface, et son plus grand morceau doit couvrir {span} minutes d’arc, comme une lettre que lit une acuité de 10/10.",
  "method.lastingLast":
    "Il <em>tient jusqu’à</em> la dernière distance à laquelle il est assez grand. C’est affaire de taille : aucun changement de couleur n’y fait rien. Les images sont floues comme l’œil les a ; aucun chiffre n’en est tiré.",
  "method.lastingTable": "Ce qu’une distance fait d’un drapeau, en pour cent de sa hauteur",
  "method.lastingFrom": "Hauteurs de drapeau",
  "method.lastingFinest": "Partie la plus fine",
  "method.lastingBlur": "Flou",
  "method.lastingSource":
    "{span} minutes d’arc : ISO 8596, de seconde main. Notre propre jugement : les {left}, et de l’exiger du plus grand morceau. Flou, 0,5 minute d’arc d’écart type : Levi et autres, <i>Vision Research</i> 30, 1990, <levi>résumé</levi> ; une gaussienne n’est pas une lentille : Strasburger et autres, <strasburger>2018</strasburger>.",
};
