// Floor 7. French: the sheet from which an adopted redesign is made as a flag.
import type { In } from "../en/all.ts";
import type { maker as english } from "../en/maker.ts";

export const maker: In<typeof english> = {
  "maker.title": "{title}, fiche pour fabricants",
  "maker.description": "Proportions, construction et couleurs du nouveau dessin adopté, à imprimer.",
  "maker.kind": "Fiche pour fabricants",
  "maker.for": "Pour les fabricants",
  "maker.print":
    "Pour imprimer : la commande d’impression de votre navigateur, A4 ou Letter, en hauteur. Une page.",
  "maker.toStudy": "L’étude",
  "maker.redesign": "Nouveau dessin",
  "maker.outline": "{name} : le nouveau dessin, au trait",
  "maker.proportions": "Hauteur sur largeur <number>{proportions}</number>. Guindant à gauche.",
  "maker.built": "Construction",
  "maker.shape": "Forme",
  "maker.fromHoist": "Du guindant",
  "maker.fromTop": "Du haut",
  "maker.width": "Largeur",
  "maker.height": "Hauteur",
  "maker.rectangle": "Rectangle",
  "maker.line": "Ligne",
  "maker.circle": "Cercle, par son centre",
  "maker.ring": "Anneau, par son centre",
  "maker.across": "{width} de diamètre",
  "maker.hole": "trou de {height}",
  "maker.laid": "Dans l’ordre où elles se posent : ce qui vient après couvre ce qui précède.",
  "maker.none":
    "Aucune forme simple n’a pu être lue dans le dessin. C’est le fichier du dessin qui fait foi.",
  "maker.parts": "Les nombres entiers sont des parties, dont la hauteur compte {parts}.",
  "maker.percent": "Les positions et tailles en % se rapportent à la hauteur, arrondies.",
  "maker.untold":
    "{count, plural, one {# autre forme est omise, parce qu’elle n’est pas simple ou que la place manque : le fichier du dessin fait foi.} other {# autres formes sont omises, parce qu’elles ne sont pas simples ou que la place manque : le fichier du dessin fait foi.}}",
  "maker.colours": "Couleurs",
  "maker.colour": "Couleur",
  "maker.hex": "Hex",
  "maker.reflectance": "Réflectance",
  "maker.others":
    "{count, plural, one {# autre couleur est sur la page de l’étude.} other {# autres couleurs sont sur la page de l’étude.}}",
  "maker.coloursHow":
    "sRGB en octets ; CIELAB sous D65 ; réflectance d’une étoffe dont la teinture répond à l’écran, entre l’étoffe noire et l’étoffe blanche de la galerie.",
  "maker.source": "Sources : IEC 61966-2-1 (sRGB), CIE 15:2004 (CIELAB).",
  "maker.cautions": "Avant de le fabriquer",
  "maker.law":
    "Le droit local prime : sur l’aspect d’un drapeau, sur qui peut le fabriquer et sur qui peut l’arborer.",
  "maker.cloth":
    "Les nuanciers d’étoffes et de teintures font foi. Une couleur d’écran n’est pas une teinture : choisissez sur un nuancier, à la lumière du jour, et gardez entre les couleurs l’écart de clarté qu’elles ont ici.",
  "maker.file": "Là où cette fiche et le fichier du dessin diffèrent, le fichier fait foi.",
};
