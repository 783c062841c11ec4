// Floor 7. French: what has to be seen, the emblem or charge of a flag, from where the flag is seen, and how far that lasts.
import type { In } from "../en/all.ts";
import type { focus as english } from "../en/focus.ts";

export const focus: In<typeof english> = {
  "focus.none":
    "Aucun emblème trouvé : rien ne doit se voir avant le reste, et aucune limite ne compte double. C’est un fait, non un défaut.",
  "focus.notGuessed":
    "Un meuble se fond dans une zone de sa propre couleur. Il n’a pas été deviné, et rien ne compte double. Pour le désigner, écrivez dans l’étude :",
  "focus.fullDrawing": "Mesuré sur le dessin entier, et non à distance.",
  "focus.fromAway":
    "Mesuré tel qu’on le voit à {away} hauteurs de drapeau : un drapeau haut d’un mètre, à {away} mètres. Les parties plus fines que {finest} de sa hauteur sont attribuées à ce qui les borde. C’est un modèle de l’acuité.",
  "focus.afar": "Ce qui reste de loin",
  "focus.afarDescription": "{lasting} Netteté de ce qui doit se voir : {steps}.",
  "focus.step": "à {distance}, {is}",
  "focus.stepMove": "à {distance}, de {was} à {is}",
  "focus.afarCaption":
    "Il tient jusqu’à {lasts}, par sa seule taille : il doit en rester {left}, et son plus grand morceau doit couvrir {arcminutes, plural, one {# minute d’arc} other {# minutes d’arc}}, la taille d’une lettre que lit une acuité de 10/10.",
  "focus.noEmblem": "aucun emblème trouvé",
  "focus.lastsUnder":
    "{distance, plural, one {moins de # hauteur de drapeau} other {moins de # hauteurs de drapeau}}",
  "focus.lasts": "{distance, plural, one {# hauteur de drapeau} other {# hauteurs de drapeau}}",
  "focus.lastsOrMore":
    "{distance, plural, one {# hauteur de drapeau ou plus} other {# hauteurs de drapeau ou plus}}",
  "focus.nothingLeft": "rien ne reste",
  "focus.tooSmall":
    "{distance, plural, one {Ce qui doit se voir est trop petit pour être reconnu à # hauteur de drapeau, la plus courte distance essayée, quelles que soient ses couleurs.} other {Ce qui doit se voir est trop petit pour être reconnu à # hauteurs de drapeau, la plus courte distance essayée, quelles que soient ses couleurs.}}",
  "focus.largeEnough":
    "{distance, plural, one {Ce qui doit se voir est assez grand pour être reconnu jusqu’à # hauteur de drapeau, quelles que soient ses couleurs.} other {Ce qui doit se voir est assez grand pour être reconnu jusqu’à # hauteurs de drapeau, quelles que soient ses couleurs.}}",
  "focus.largeEnoughAlways":
    "{distance, plural, one {Ce qui doit se voir est assez grand pour être reconnu à # hauteur de drapeau, la plus grande distance essayée.} other {Ce qui doit se voir est assez grand pour être reconnu à # hauteurs de drapeau, la plus grande distance essayée.}}",
};
