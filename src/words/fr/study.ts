// Floor 7. French: the page of a study.
import type { In } from "../en/all.ts";
import type { study as english } from "../en/study.ts";

export const study: In<typeof english> = {
  "study.afar": "De loin",
  "study.theStrip": "La bande des distances",
  "study.theSizes": "La rangée des tailles",
  "study.contents": "Sur cette page",
  "study.seen": "Pour les lecteurs daltoniens, et en gris",
  "study.likeness": "Pourrait-on le confondre ?",
  "study.argue": "En discuter",
  "study.shown": "{name} se trouve dans <argument>l’argument</argument>.",
  "study.numbers": "La comparaison en chiffres",
  "study.theSeen": "Ce qu’ils voient",
  "study.unofficial": "étude non officielle",
  "study.allChanges": "Tous les changements d’une couleur",
  "study.verdictHow": "Comment se rend le verdict",
  "study.show": "Pas à pas, pour un projecteur",
  "study.sheets": "Fiches pour la classe",
  "study.argueByMail": "En discuter par courriel",
  "study.argument": "L’argument",
  "study.decision": "Décision",
  "study.meaning": "Signification",
  "study.unofficialLead": "Étude non officielle de drapeau redessiné.",
};
