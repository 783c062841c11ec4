// Floor 7. German: the page of a study.
import type { In } from "../en/all.ts";
import type { study as english } from "../en/study.ts";

export const study: In<typeof english> = {
  "study.afar": "Von Weitem",
  "study.theStrip": "Der Entfernungsstreifen",
  "study.theSizes": "Die Reihe der Größen",
  "study.contents": "Auf dieser Seite",
  "study.seen": "Für Farbenfehlsichtige und in Grau",
  "study.likeness": "Verwechslungsgefahr?",
  "study.argue": "Dazu Stellung nehmen",
  "study.shown": "{name} steht in <argument>der Begründung</argument>.",
  "study.numbers": "Der Vergleich in Zahlen",
  "study.theSeen": "Was sie sehen",
  "study.unofficial": "inoffizielle Studie",
  "study.allChanges": "Alle einzelnen Änderungen",
  "study.verdictHow": "Wie das Urteil entsteht",
  "study.show": "Schritt für Schritt, zum Vorführen",
  "study.sheets": "Blätter für den Unterricht",
  "study.argueByMail": "Per E-Mail Stellung nehmen",
  "study.argument": "Die Begründung",
  "study.decision": "Entscheidung",
  "study.meaning": "Bedeutung",
  "study.unofficialLead": "Inoffizielle Neuentwurfsstudie.",
};
