// Floor 7. French: the steps of the method beyond one comparison. `em` is an emphasised term, `i` the title of a paper.
import type { In } from "../en/all.ts";
import type { methodBeyond as english } from "../en/methodbeyond.ts";

export const methodBeyond: In<typeof english> = {
  "method.optionsText":
    "Chaque couleur de plus de 0,4 % du drapeau est remplacée, une à la fois : par chaque couleur de la palette de la galerie, par chaque autre couleur du drapeau, et par sa <em>teinte gardée</em>, la même teinte assez éclaircie ou foncée pour apporter {keptHue} de contraste avec les voisines dont elle n’est pas nettement séparée. Aucun degré ne doit baisser pour cela, et la couleur garde sa famille : un rose n’est pas un rouge. En deçà de ΔE*ab {departure} rien n’est un changement, car les drapeaux officiels d’une même nation diffèrent d’autant.",
  "method.optionsOrder":
    "Le plus net vient d’abord, puis le plus fort, la même famille, le plus petit écart. Ce qui fond un tiers du contour d’un meuble n’a pas de rang. Les <em>couleurs à changer d’abord</em> sont au plus les {mostFirst} dont le meilleur remplacement vient à moins de {firstWithin} points du meilleur de tous, si celui-ci gagne {leastGain} ; sans un tel gain, un drapeau de {wholeClear} est net tel qu’il est. Lequel est le plus beau, c’est à l’auteur de le dire.",
  "method.optionsSource":
    "ΔE*ab {departure} : Melgosa et Gómez-Robledo, <i>Óptica Pura y Aplicada</i> 55(2), 2022, qui le proposent ; résumé lu. Clarté de la teinte gardée : <ottosson>Ottosson, 2020</ottosson>. Notre propre jugement : tous les autres chiffres, et l’ordre.",
  "method.surveyText":
    "Le <a>recensement</a> mesure chaque drapeau tel qu’il est aujourd’hui, une fois chacun, quel que soit le nombre de ses études. Le moins net vient d’abord, un drapeau d’une seule couleur en dernier. Un mauvais rang ne dit pas qu’un drapeau devrait changer, ni un bon rang qu’il est bon.",
  "method.surveySource": "Notre propre jugement : l’ordre.",
  "method.likenessText":
    "Un drapeau plus net peut être celui d’un voisin. Chaque nouveau dessin est donc posé sur chaque autre drapeau et nouveau dessin connus ici, sauf son original et les autres propositions pour lui. Les deux sont divisés en {columns} sur {rows} cases de couleur moyenne, comme étoffe, et le chiffre est le ΔE00 moyen des cases : 0 est la même image, et une case qui manque à l’un compte 100. L’autre est essayé aussi en miroir et tête en bas. Au-dessous de {threshold}, l’étude le dit.",
  "method.likenessCare":
    "Les grands champs comptent beaucoup et les petits meubles peu : un petit chiffre est une raison de regarder, et ne prouve rien de son origine. Les dessins gardés pour cela seul sont nommés et non montrés : nous n’avons pas à présumer de leur licence.",
  "method.likenessSource":
    "Notre propre jugement : la grille, la moyenne et {threshold}. Sur les 36 585 paires d’une collection ouverte, 144 sont plus proches, dont 50 sont un même drapeau sous deux noms ; la moitié est à plus de 36.",
  "method.visionText":
    "Beaucoup de gens ont des yeux privés d’une des trois sortes de cônes. Nous recolorons les deux dessins tels que ces yeux les voient, et en gris, et les mesurons de nouveau. Le gris garde chaque contraste ; nous y disons donc de combien diffèrent les deux gris les plus proches.",
  "method.visionSource":
    "Protan, deutan : Machado, Oliveira, Fernandes, <machado>2009</machado>, sévérité 1, en lumière linéaire, ce que l’article ne dit pas clairement. Tritan, que ce modèle n’atteint pas : Brettel, Viénot, Mollon, 1997. Matrices lues dans des réalisations publiées.",
  "method.cautionProposal":
    "Chaque nouveau dessin est une proposition et non un drapeau en usage, à moins que sa décision ne le dise.",
  "method.cautionLaw":
    "Les lois sur les drapeaux diffèrent. Suivez celles de votre pays avant de fabriquer, modifier ou arborer quoi que ce soit de montré ici, et respectez la licence de chaque dessin.",
  "method.cautionEyes":
    "Les images pour d’autres yeux sont des approximations, et non un test de la vue de quiconque.",
  "method.cautionWorth":
    "Le contraste ne dit pas si un drapeau est bon, ce qu’il signifie, ni à qui il appartient.",
  "method.cautionDistance":
    "La distance est un modèle : la brume, l’éblouissement et le vent raccourcissent toute distance.",
  "method.cautionCloth":
    "Les chiffres valent pour le dessin à la lumière du jour. Les teintures diffèrent, et l’étoffe passe, se mouille et fait des plis.",
};
