// Floor 7. French: pages at addresses whose own page has gone; a heading, and what stands below it.
import type { In } from "../en/all.ts";
import type { moved as english } from "../en/moved.ts";

export const moved: In<typeof english> = {
  "moved.moved": "Cette page a changé d’adresse",
  "moved.movedTo": "Elle est maintenant à une autre adresse.",
  "moved.near": "Cette page n’est plus ici",
  "moved.nearTo": "Ce qui en est le plus proche :",
  "moved.edge": "Cette limite n’est plus dans l’étude",
  "moved.edgeTo": "Des couleurs du dessin ont changé depuis. La limite aux couleurs les plus proches :",
  "moved.withdrawn": "Retirée",
  "moved.withdrawnHow": "Ce qui se trouvait à cette adresse n’est plus publié.",
  "moved.absent": "Cette étude n’est pas montrée pour le moment",
  "moved.absentHow": "Elle est dans le dossier de la galerie et reviendra à cette adresse.",
  "moved.claimed": "Cette étude a une autre adresse",
  "moved.claimedBy": "Plus d’une étude dit avoir été ici :",
  "moved.lastGood":
    "Cette étude n’a pas pu être établie à partir de ce que contient son dossier. Voici la dernière page qu’elle a eue.",
};
