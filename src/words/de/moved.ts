// Floor 7. German: pages at addresses whose own page has gone; a heading, and what stands below it.
import type { In } from "../en/all.ts";
import type { moved as english } from "../en/moved.ts";

export const moved: In<typeof english> = {
  "moved.moved": "Diese Seite ist umgezogen",
  "moved.movedTo": "Sie steht jetzt unter einer anderen Adresse.",
  "moved.near": "Diese Seite ist nicht mehr hier",
  "moved.nearTo": "Was ihr am nächsten kommt:",
  "moved.edge": "Diese Kante gibt es in der Studie nicht mehr",
  "moved.edgeTo": "Farben der Zeichnung haben sich seither geändert. Die Kante mit den ähnlichsten Farben:",
  "moved.withdrawn": "Zurückgezogen",
  "moved.withdrawnHow": "Was unter dieser Adresse stand, wird nicht mehr veröffentlicht.",
  "moved.absent": "Diese Studie wird zurzeit nicht gezeigt",
  "moved.absentHow": "Sie liegt im Ordner der Galerie und kehrt an diese Adresse zurück.",
  "moved.claimed": "Diese Studie hat eine andere Adresse",
  "moved.claimedBy": "Mehr als eine Studie gibt an, hier gestanden zu haben:",
  "moved.lastGood":
    "Diese Studie ließ sich aus dem, was jetzt in ihrem Ordner liegt, nicht bauen. Dies ist die Seite, die sie zuletzt hatte.",
};
