// Floor 7. French: the steps of the method that decide a grade. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodGrade as english } from "../en/methodgrade.ts";

export const methodGrade: In<typeof english> = {
  "method.reflectanceText":
    "Un nombre d’écran dit combien de lumière donne une couleur. Nous prenons sa luminance, de 0 à 1, en lumière linéaire :",
  "method.reflectanceCloth":
    "Une étoffe n’est jamais tout à fait noire ni tout à fait blanche, et d’après les nombres d’écran deux couleurs foncées semblent plus faciles à distinguer qu’elles ne le sont. La luminance est donc placée entre l’étoffe la plus noire et la plus blanche, en pour cent :",
  "method.reflectanceRanges":
    "Les matériaux de construction vont d’environ {black} à {white}, les peintures d’un fabricant de {paintBlack} à {paintWhite}. Un degré que l’intervalle plus large changerait est marqué <em>au seuil</em>. Là où une loi fixe l’étoffe, une galerie met 0 et 100, et alors {laws}.",
  "method.law": "{first} sur {second} a un contraste de {contrast}, limite {grade}",
  "method.lawColour": "{colour} {reflectance}",
  "method.near": "Au seuil : étoffe de {black} à {white} (anneau) et de {paintBlack} à {paintWhite} (point)",
  "method.reflectanceSource":
    "Luminance : <wcag>WCAG 2.2</wcag>. sRGB : IEC 61966-2-1. Intervalles : des pages sur les matériaux de construction, le nuancier d’un fabricant de peintures ; lois : telles que d’autres les rapportent ; le tout de seconde main. La droite du noir au blanc : sans source. Notre propre jugement : au seuil.",
  "method.contrastText":
    "Le contraste compare la lumière que rendent deux couleurs. Il est de 0 % quand toutes deux en rendent autant, et d’autant plus grand qu’elles s’écartent :",
  "method.contrastTable": "Ce dont les personnes malvoyantes ont au moins besoin",
  "method.contrastWeak": "moins de 30 %",
  "method.contrastSoft": "de 30 à moins de 45 %",
  "method.contrastClear": "de 45 à moins de 60 %",
  "method.contrastStrong": "60 % et plus",
  "method.needsWeak": "au-dessous de tout palier",
  "method.needsSoft": "grands éléments de bâtiment",
  "method.needsClear": "petits objets isolés : les meubles",
  "method.needsStrong": "petits objets en deux couleurs",
  "method.contrastClose":
    "Un meuble est un petit objet isolé : une limite est donc nette à partir de 45 %. L’exemple publié avec la formule, {reflectances}, a {published} ; ici {computed}.",
  "method.pairs": "Ce que donnent les paires usuelles ; repères à 30, 45 et 60 %",
  "method.pair": "Paire",
  "method.pairContrast": "Contraste",
  "method.pairScale": "Sur une échelle de 0 à 100 pour cent",
  "method.pairRatio": "Rapport",
  "method.contrastSource":
    "Bowman et Sapolinski : AS 1428.1:2009, annexe B ; AS/NZS 1428.4.1, annexe E ; de seconde main. Le pourcentage ne se compare à aucune autre échelle : Boon et autres, <i>Work</i> 70(4), <boon>2021</boon>. Notre propre jugement : qu’un meuble est un petit objet isolé ; les nuances des paires. Quelles paires se lisent nettement : usage courant, sans source.",
  "method.besideText":
    "Trois autres mesures accompagnent le contraste, et aucune ne décide. Le <em>rapport de contraste</em> du web est fait pour les écrans : {first} sur {second} y atteint les 3 pour 1 demandés, et pourtant aucun observateur de drapeaux n’y voit une paire facile à lire. <em>ΔE00</em> dit combien deux couleurs paraissent différentes, teinte comprise. La troisième est la <a>règle de contrariété des couleurs</a>.",
  "method.besidePair":
    "{first} / {second} : rapport de contraste <number>{ratio}</number>, ΔE00 <number>{deltaE00}</number>, contraste <number>{contrast}</number>, limite {grade}",
  "method.besideSource":
    "WCAG 2.2, <ratio>rapport</ratio> et <objects>1.4.11</objects>. Sharma, Wu, Dalal, <sharma>CIEDE2000</sharma>, 2005 ; leurs 34 paires d’essai éprouvent ce programme. Que le rouge sur noir soit difficile à voir : usage courant, sans source.",
};
