// Floor 7. French: what stands around the content of every page, and the page of a missing address.
import type { In } from "../en/all.ts";
import type { frame as english } from "../en/frame.ts";

export const frame: In<typeof english> = {
  "frame.skip": "Aller au contenu",
  "frame.gallery": "Galerie",
  "frame.studies": "Études",
  "frame.survey": "Recensement",
  "frame.method": "Méthode",
  "frame.allStudies": "Toutes les études",
  "frame.cautions":
    "Chaque nouveau dessin montré ici est une étude non officielle, proposée à la discussion. Les lois sur l’usage des drapeaux diffèrent : suivez celles de votre pays, et respectez la licence de chaque dessin. Voir les <cautions>précautions</cautions> et, pour les auteurs, les <rules>règles des études et des dessins</rules>.",
  "frame.publishedBy": "Publié par {society}.",
  "frame.textsUnder": "Textes sous <licence>{name}</licence>.",
  "frame.madeWith":
    "Réalisé avec Counterchange. Composé en Source Serif 4 et Source Sans 3, sous l’<licence>Open Font Licence</licence>.",
  "frame.missing": "Aucune page ici",
  "frame.missingText":
    "Il n’y a pas de page à cette adresse. Une étude a pu être retirée de la galerie, ou l’adresse mal saisie.",
  "frame.missingDescription": "Il n’y a pas de page à cette adresse.",
  "frame.moved": "Cette page a changé d’adresse : {title}.",
};
