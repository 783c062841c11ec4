// Floor 7. French: the definitions of the method. `em` is an emphasised term, `i` the title of a book; `move` stands for an
import type { In } from "../en/all.ts";
import type { methodTerm as english } from "../en/methodterm.ts";

export const methodTerm: In<typeof english> = {
  "method.numbersText":
    "Une limite compte dans la mesure où son contraste approche de {clear}, et pleinement à partir de là : 30 / 45 = 67 %. La netteté est la moyenne de toutes les limites, chacune pesée par sa longueur et, une fois encore, par la partie qui borde ce qui doit se voir :",
  "method.numbersClose":
    "Un drapeau dont toutes les limites sont nettes a donc 100 %, et une longue limite faible coûte plus qu’une courte. Un drapeau d’une seule couleur n’a ni limite ni netteté.",
  "method.numbersSource": "Notre propre jugement : la somme, et que ce qui doit se voir compte double.",
  "method.strength": "Force",
  "method.strengthMeans": "la même somme jusqu’à {strong} ; elle ordonne ce que la netteté laisse à égalité",
  "method.weakest": "Limite la plus faible",
  "method.weakestMeans": "la limite de moindre contraste, les plus courtes laissées de côté",
  "method.clearShare": "Part des limites nettes",
  "method.clearShareMeans":
    "la part de longueur nette ou forte ; elle saute à un seul palier, elle ne décide donc de rien",
  "method.outcomesText": "Ce qu’un changement fait d’une limite :",
  "method.gained": "Gagnée, perdue",
  "method.gainedMeans":
    "elle devient nette, ou ne l’est plus, et bouge de {contrastStep} points ou plus : <move></move>",
  "method.better": "Meilleure, pire",
  "method.betterMeans":
    "elle bouge d’autant sans devenir nette ni cesser de l’être : <move></move> ; rien ne compte au-dessus de {strong}",
  "method.same": "Égale",
  "method.sameMeans": "elle bouge de moins : <move></move>",
  "method.merged": "Fondue",
  "method.mergedMeans": "ses deux couleurs viennent si près l’une de l’autre qu’elles comptent pour une",
  "method.parted": "Séparée",
  "method.partedMeans": "elle est nouvelle, parce qu’une partie seulement d’une couleur a changé",
  "method.outcomesPrice":
    "Le <em>prix</em> d’un changement, ce sont les limites perdues, pires, fondues, ou séparées sans être nettes. Le verdict suit la netteté en pour cent entiers et, à égalité, la force :",
  "method.clearer": "Plus net",
  "method.clearerMeans":
    "en hausse de {leastMove, plural, one {# point} other {# points}} ou plus, sans prix : <move></move>",
  "method.atAPrice": "Plus net, mais à un prix",
  "method.atAPriceMeans": "en hausse de {largeMove} points ou plus, le prix dit avec elle : <move></move>",
  "method.lessClear": "Moins net",
  "method.lessClearMeans":
    "en baisse de {largeMove} points ou plus : <move></move> ; ou de {leastMove} sans rien de gagné, de meilleur, ni de séparé et net",
  "method.mixed": "Partagé",
  "method.mixedMeans": "des gains et un prix, la netteté entre les deux : <move></move>",
  "method.noGain": "Sans gain",
  "method.noGainMeans": "chaque limite reste égale, ou rien de ce qui précède ne convient",
  "method.outcomesSource":
    "Notre propre jugement : les paliers de {contrastStep}, {leastMove} et {largeMove} points. Une limite fondue garde sa longueur, car les formes restent, et compte pour un contraste de 0 %. Les chiffres montrés sont arrondis, ceux qui décident ne le sont pas.",
  "method.wordsText":
    "Les phrases se composent selon des règles, à partir des seuls chiffres et noms de la page. Elles parlent d’abord de ce qui doit se voir, et des limites faibles avant les fortes. Un <em>liseré</em> est une ligne étroite d’une troisième couleur qui en sépare deux autres ; tant qu’on le voit, ses propres limites comptent, et les mots disent ce qu’il fait pour la paire.",
  "method.wordsSource":
    "Ce qu’est un liseré : usage courant, sans source. Notre propre jugement, à quoi nous le reconnaissons : une largeur moyenne de moins de 8 % de la hauteur du drapeau, deux côtés de longueurs égales à un tiers près, entre des couleurs qui se touchent sur un cinquième au plus.",
  "method.hue": "La teinte seule",
  "method.hueMeans":
    "faible avec un ΔE00 de 20 ou plus, et de moins de 10 en gris : disparaît au crépuscule, à l’impression en gris et pour bien des yeux daltoniens",
  "method.tincture": "Émail",
  "method.tinctureMeans":
    "ni métal (blanc, jaune) sur métal, ni couleur (rouge, bleu, vert, noir, violet) sur couleur. Exempts : les parties du champ qui touchent toutes deux le bord, les liserés ; les fourrures aussi, non reconnues ici",
  "method.colours": "Couleurs",
  "method.coloursMeans":
    "celles de plus de 0,5 % de la surface, les nuances voisines comptant pour une ; les guides en conseillent deux ou trois",
  "method.factsSource":
    "A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, chapitre VII ; exemptions : usage courant, sans source. <good>Good Flag, Bad Flag</good>, North American Vexillological Association, 2006, troisième principe ; <i>Guiding Principles of Flag Design</i>, Joint Commission on Vexillographic Principles, 2014, 3.1. Notre propre jugement : la teinte seule, les 0,5 %.",
};
