// Floor 7. German: what stands around the content of every page, and the page of a missing address.
import type { In } from "../en/all.ts";
import type { frame as english } from "../en/frame.ts";

export const frame: In<typeof english> = {
  "frame.skip": "Zum Inhalt",
  "frame.gallery": "Galerie",
  "frame.studies": "Studien",
  "frame.survey": "Übersicht",
  "frame.method": "Methode",
  "frame.allStudies": "Alle Studien",
  "frame.cautions":
    "Jeder hier gezeigte Neuentwurf ist eine inoffizielle Studie und zur Diskussion gestellt. Gesetze über den Gebrauch von Flaggen sind verschieden: Maßgeblich ist das örtliche Recht, und die Lizenz jeder Zeichnung ist zu achten. Siehe die <cautions>Hinweise</cautions> und für Autoren die <rules>Regeln für Studien und Zeichnungen</rules>.",
  "frame.publishedBy": "Herausgegeben von {society}.",
  "frame.textsUnder": "Texte unter <licence>{name}</licence>.",
  "frame.madeWith":
    "Gemacht mit Counterchange. Gesetzt in Source Serif 4 und Source Sans 3, unter der <licence>Open Font Licence</licence>.",
  "frame.missing": "Hier ist keine Seite",
  "frame.missingText":
    "Unter dieser Adresse gibt es keine Seite. Vielleicht wurde eine Studie aus der Galerie genommen, oder die Adresse ist vertippt.",
  "frame.missingDescription": "Unter dieser Adresse gibt es keine Seite.",
  "frame.moved": "Diese Seite ist umgezogen: {title}.",
};
