// Floor 7. Spanish: the page of a study.
import type { In } from "../en/all.ts";
import type { study as english } from "../en/study.ts";

export const study: In<typeof english> = {
  "study.afar": "De lejos",
  "study.theStrip": "La tira de distancias",
  "study.theSizes": "La fila de tamaños",
  "study.contents": "En esta página",
  "study.seen": "Para lectores daltónicos, y en gris",
  "study.likeness": "¿Podría confundirse?",
  "study.argue": "Discutir esto",
  "study.shown": "{name} está en <argument>el argumento</argument>.",
  "study.numbers": "La comparación en cifras",
  "study.theSeen": "Lo que ellos ven",
  "study.unofficial": "estudio no oficial",
  "study.allChanges": "Todos los cambios de un color",
  "study.verdictHow": "Cómo se llega al veredicto",
  "study.show": "Paso a paso, para proyectar",
  "study.sheets": "Hojas para la clase",
  "study.argueByMail": "Discutir esto por correo",
  "study.argument": "El argumento",
  "study.decision": "Decisión",
  "study.meaning": "Significado",
  "study.unofficialLead": "Estudio no oficial de rediseño.",
};
