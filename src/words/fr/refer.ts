// Floor 7. French: how to cite a study, and the stamp of its state.
import type { In } from "../en/all.ts";
import type { refer as english } from "../en/refer.ts";

export const refer: In<typeof english> = {
  "refer.heading": "Citer cette étude",
  "refer.copyText": "Copier le texte",
  "refer.copyBibtex": "Copier le BibTeX",
  "refer.copied": "Copié.",
  "refer.notCopied": "Le navigateur ne l’a pas permis.",
  "refer.bibtexAndStamp": "BibTeX, et à quoi sert le cachet",
  "refer.stamp":
    "Cachet <stamp></stamp> : une marque brève du dessin, du changement et de la mesure. Qui suivra plus tard <link>une adresse qui le contient</link> apprendra si ce qui est mesuré a changé depuis. Le texte d’une étude peut changer sans que le cachet change.",
  "refer.changed":
    "<strong>Cette étude a changé depuis.</strong> Le lien que vous avez suivi valait pour un état antérieur, au cachet <came></came>. Ce qui est montré ici porte maintenant le cachet <now></now>.",
  "refer.study": "étude non officielle de drapeau redessiné",
  "refer.edge": "une limite d’une étude non officielle de drapeau redessiné",
  "refer.series": "série d’études non officielles de drapeaux redessinés",
  "refer.title": "« {title} »",
};
